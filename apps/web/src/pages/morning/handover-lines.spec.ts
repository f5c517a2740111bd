import { describe, expect, it } from 'vitest';
import { handoverLines } from './handover-words.js';
import type { Morning } from './morning-read.js';
import { calendar, flight } from './testing/morning-parts.js';
import { quietMorning } from './testing/quiet-morning.js';

describe('what is handed over', () => {
  it('says the state of a flight, and no empty sentence where there is none', () => {
    const low = { place: 'XMAR', date: '2027-06-16', litres: 150, criticalLitres: 200 };
    const flights = [flight('F05', '2027-06-15', '2027-06-15T07:30:00Z')];
    const entries = { since: quietMorning.since, silence: null, items: [] };
    const lines = handoverLines(
      {
        morning: { ...quietMorning, flights, belowCritical: [low] as Morning['belowCritical'] },
        entries,
        said: [],
      },
      calendar,
    );
    expect(lines.map(({ words }) => words)).toEqual([
      expect.stringMatching(/^F05, B1 XALD-XLOR, 07:30\. Offered\. 6 drums/),
      expect.stringMatching(/^XMAR below critical, Wed 16\. 150 L usable/),
    ]);
  });
});
