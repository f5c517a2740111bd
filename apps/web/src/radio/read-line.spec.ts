import { describe, expect, it } from 'vitest';
import { readLine } from './read-line.js';

const setting = {
  places: ['XLOR', 'XHAS', 'XALD', 'XGAN', 'YGAN'].map((code) => ({ code, name: code })),
  now: '2027-06-15T06:55:00Z', // a Tuesday
  timeZone: 'Etc/GMT',
  speaker: '',
};
const read = (line: string) => readLine(line, setting);

describe('a radio report in one line', () => {
  it('place, surface, time, who', () => {
    expect(read('LOR soft 0652 helper')).toEqual([
      {
        kind: 'surface',
        report: { place: 'XLOR', state: 'soft', at: '2027-06-15T06:52Z', by: 'strip helper, by radio' },
        who: 'strip helper',
        doubts: [],
      },
    ]);
  });

  it('two strips in one breath, and how long it will hold', () => {
    expect(read('lor SOFT 6:52 helper until Thu; XHAS closed RW2')).toMatchObject([
      { report: { place: 'XLOR', untilDate: '2027-06-17' } },
      { report: { place: 'XHAS', state: 'closed', at: '2027-06-15T06:55Z', by: 'RW2, by radio' } },
    ]);
    expect(read('LOR soft until 17 helper')).toMatchObject([
      { report: { untilDate: '2027-06-17', by: 'strip helper, by radio' } },
    ]);
  });

  it('is asked about when the time is still to come', () => {
    expect(read('LOR soft 1910')).toMatchObject([
      {
        report: { at: '2027-06-14T19:10Z' },
        doubts: ['19:10 is still to come today: it is kept as 19:10 yesterday.'],
      },
    ]);
  });

  it('where the line names nobody, who was asked for speaks: of each report by itself', () => {
    const line = readLine('LOR soft 0652, HAS dry 0640 RW2', { ...setting, speaker: 'J. Holm' });
    expect(line).toMatchObject([
      { report: { by: 'J. Holm, by radio' }, who: null },
      { report: { by: 'RW2, by radio' }, who: 'RW2' },
    ]);
    expect(read('LOR soft 0652')).toMatchObject([{ report: { by: 'not said who, by radio' } }]);
    expect(read('LOR soft 0652 unknown')).toMatchObject([{ report: { by: 'not said who, by radio' } }]);
  });

  it.each([
    ['ZZZ soft', 'ZZZ is no strip, pad or base. The line begins with one: LOR soft 0652 helper.'],
    ['GAN soft', 'GAN may be XGAN or YGAN: write the whole code.'],
    ['LOR wet', '"wet" is no surface. It is dry, damp, soft or closed.'],
    ['LOR', 'XLOR: say how the surface is, dry, damp, soft or closed.'],
    ['LOR soft 2575', '2575 is no time of day: write 0652.'],
    ['LOR soft until Xmas', '"until Xmas" names no day of the next week: write Wed, or 17.'],
  ])('%s: what is wrong, and what to write', (line, words) => {
    expect(read(line)).toEqual([{ kind: 'fault', words }]);
  });

  it('an empty line says nothing', () => {
    expect(read('  ')).toEqual([]);
  });
});
