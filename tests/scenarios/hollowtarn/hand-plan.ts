import { readFileSync } from 'node:fs';
import type { Scenario, StandingFlight } from '@drumline/planning';

/** The invented territory as it stands in `seeds/`. */
export const hollowtarn = (changes: Partial<Scenario> = {}): Scenario => ({
  ...(JSON.parse(
    readFileSync(new URL('../../../seeds/hollowtarn.json', import.meta.url), 'utf8'),
  ) as Scenario),
  ...changes,
});

/** The hand plan made again on day 2, when XLOR and XHAS are reported soft: day, aircraft, base, strip, drums. */
const replan: readonly (readonly [string, number, string, string, string, number])[] = [
  ['S01', 1, 'A1', 'XMER', 'XKNA', 4],
  ['S02', 1, 'A2', 'XMER', 'XLOR', 5],
  ['S03', 1, 'A2', 'XMER', 'XESK', 5],
  ['S04', 1, 'C1', 'XALD', 'XESK', 5],
  ['S05', 2, 'A1', 'XMER', 'XLOR', 4],
  ['S06', 2, 'A1', 'XMER', 'XLOR', 2],
  ['S07', 2, 'A2', 'XMER', 'XGAN', 4],
  ['S08', 2, 'A2', 'XMER', 'XESK', 5],
  ['S09', 3, 'A1', 'XMER', 'XLOR', 4],
  ['S10', 4, 'A1', 'XMER', 'XISK', 4],
  ['S11', 5, 'A1', 'XMER', 'XFAL', 5],
  ['S12', 5, 'A1', 'XMER', 'XFAL', 3],
  ['S13', 6, 'A1', 'XMER', 'XKNA', 4],
  ['S14', 6, 'A1', 'XMER', 'XFAL', 5],
  ['S15', 6, 'A2', 'XMER', 'XISK', 4],
  ['S16', 8, 'A1', 'XMER', 'XISK', 4],
  ['S17', 8, 'A1', 'XMER', 'XKNA', 4],
];

export const softReplan: readonly StandingFlight[] = replan.map(
  ([id, day, aircraft, base, place, drums]) => ({
    id,
    state: 'offered',
    date: `2027-06-${13 + day}`,
    aircraft,
    from: base,
    stops: [{ place, drums }],
    to: base,
  }),
);

/** Radio of the second morning. */
export const softMorning: Pick<Scenario, 'asOf' | 'surfaceReports'> = {
  asOf: '2027-06-15T06:52Z',
  surfaceReports: ['XLOR', 'XHAS'].map((place) => ({
    place,
    state: 'soft' as const,
    at: '2027-06-15T06:50Z',
    by: 'strip helper',
    untilDate: '2027-06-16',
  })),
};
