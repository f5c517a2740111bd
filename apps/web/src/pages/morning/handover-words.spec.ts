import { describe, expect, it } from 'vitest';
import { calendarOf } from '../../api/index.js';
import { handoverLines } from './handover-words.js';
import type { Morning } from './morning-read.js';
import type { PaperEntries } from './paper/paper-read.js';
import { quietMorning } from './testing/quiet-morning.js';

const calendar = calendarOf(new Date('2027-06-16T14:10:00Z'), 'Etc/GMT');
const quiet: Morning = {
  ...quietMorning,
  ...{ asOf: '2027-06-16T14:10:00Z', today: '2027-06-16', since: '2027-06-15T17:00:00Z' },
};

type Entry = PaperEntries['items'][number];
const entry = (what: string, writtenAt: string, rest: Partial<Entry> = {}): Entry => ({
  ...({ what, flight: 'F07', means: 'paper', by: 'FW1', enteredBy: 'K. Aske' } as Entry),
  writtenAt: `2027-06-15T${writtenAt}:00Z`,
  enteredAt: '2027-06-16T14:02:00Z',
  ...rest,
});

const handedOver = (items: readonly Entry[], morning: Partial<Morning> = {}) =>
  handoverLines(
    {
      morning: { ...quiet, ...morning },
      entries: { since: '2027-06-15T17:00:00Z', silence: null, items: [...items] },
      said: [],
    },
    calendar,
  ).map(({ words }) => words);

describe('what is handed over of entries made late', () => {
  it('says once for a flight how they came, from whom, and who entered them when', () => {
    expect(handedOver([entry('off', '17:20'), entry('down at XESK', '18:05')])).toEqual([
      'F07: off Tue 17:20; down at XESK Tue 18:05 (paper, FW1; entered 14:02 by K. Aske)',
    ]);
  });

  it('says it again where another one wrote or entered it', () => {
    const radio = entry('down at XESK', '18:05', { means: 'radio', by: 'RW1' });
    expect(handedOver([entry('off', '17:20'), radio])).toEqual([
      'F07: off Tue 17:20 (paper, FW1; entered 14:02 by K. Aske); down at XESK Tue 18:05 (radio, RW1; entered 14:02 by K. Aske)',
    ]);
  });

  it('is told as entered late, not as from paper: a crew may have said it by radio', () => {
    const items = [entry('off', '17:20', { means: 'radio' })];
    const entries = { since: '2027-06-15T17:00:00Z', silence: null, items };
    expect(handoverLines({ morning: quiet, entries, said: [] }, calendar).map(({ kind }) => kind)).toEqual([
      'entered late',
    ]);
  });

  it('leaves nothing out: what does not fit stands on the next line of the same flight', () => {
    const many = Array.from({ length: 30 }, (_, at) => entry(`drum ${at} left at XESK`, '18:05'));
    const lines = handedOver(many);
    expect(lines.length).toBeGreaterThan(1);
    for (const line of lines) expect(line).toMatch(/^F07: .*\(paper, FW1; entered 14:02 by K\. Aske\)$/);
    for (const { what } of many) expect(lines.join('\n')).toContain(`${what} Tue 18:05`);
  });
});
