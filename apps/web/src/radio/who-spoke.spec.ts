import { describe, expect, it } from 'vitest';
import { readLine } from './read-line.js';

const read = (line: string) =>
  readLine(line, {
    places: ['XLOR', 'XGAN'].map((code) => ({ code, name: code })),
    now: '2027-06-15T06:55:00Z',
    timeZone: 'Etc/GMT',
    speaker: '',
  });

describe('what a radio line does not understand is asked about, never taken for who spoke', () => {
  it.each([
    ['LOR soft dry 0640 helper', 'XLOR: two surfaces, "dry" behind the first: which? Write one of them.'],
    [
      'LOR soft 10 kt helper',
      '"10 kt" is not understood: a report has strip, surface, time, who spoke, and until when. Wind and the rest are not kept here: leave it out.',
    ],
    [
      'GAN closed 0640 helper until Wed 14:00',
      '"until Wed 14:00": a report holds to the end of a day. Write until Wed; the time it was said stands before until.',
    ],
    [
      'LOR soft 0640 helper 0645',
      '"0645" is a second time of day: which? A report has one, and holds to the end of the day behind until.',
    ],
    [
      'lor soft 0640 ruts',
      '"ruts" is not understood: a report has strip, surface, time, who spoke, and until when. If it is who spoke, write by ruts.',
    ],
    [
      'LOR SOFT 10KT WET HELPER',
      '"10KT WET" is not understood: a report has strip, surface, time, who spoke, and until when. Wind and the rest are not kept here: leave it out.',
    ],
  ])('%s', (line, words) => {
    expect(read(line)).toEqual([{ kind: 'fault', words }]);
  });

  it.each([
    ['LOR soft 0640 strip helper', 'strip helper'],
    ['LOR SOFT 0640 HELPER', 'strip helper'],
    ['LOR soft 0640 Å. O’Dell-Vik', 'Å. O’Dell-Vik'],
    ['LOR soft 0640 J. Holm by radio', 'J. Holm'],
    ['lor soft 0640 by j. holm', 'j. holm'],
    ['LOR soft 0640 RW2', 'RW2'],
  ])('%s: %s', (line, who) => {
    expect(read(line)).toMatchObject([{ who, report: { by: `${who}, by radio` } }]);
  });
});

it.each([
  ['LOR soft 0640 survey camp', 'survey camp, by radio'],
  ['LOR soft 0640 crew of A1', 'crew of A1, by radio'],
  ['LOR soft 0640 A1 crew until Wed', 'A1 crew, by radio'],
  ['LOR soft 0640 helper at GAN', 'helper at GAN, by radio'],
])('whoever a page names as speaker may be written without by: %s', (line, by) => {
  expect(read(line)).toMatchObject([{ kind: 'surface', report: { by } }]);
});

it.each(['LOR soft 0640 muddy camp', 'LOR soft 0640 of A1', 'LOR soft 0640 crew of ruts'])(
  'what names nobody is still asked about: %s',
  (line) => {
    expect(read(line)).toMatchObject([{ kind: 'fault' }]);
  },
);
