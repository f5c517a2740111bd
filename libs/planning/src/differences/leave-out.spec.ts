import { describe, expect, it } from 'vitest';
import { describeFlights } from '../flights/describe-flights.js';
import type { StandingFlight } from '../scenario.js';
import { tinyTerritory } from '../tiny-territory.js';
import { comparePlans } from './compare-plans.js';
import { openLines, withoutLines } from './leave-out.js';
import { lowestLevel } from './lowest-level.js';

const scenario = tinyTerritory({
  aircraft: [
    { tail: 'T1', type: 'T', home: 'HOM', absences: [] },
    { tail: 'T2', type: 'T', home: 'HOM', absences: [] },
  ],
});
const to = (id: string, place: string, day: number, aircraft = 'T1'): StandingFlight => ({
  id,
  state: 'offered',
  date: `2031-03-0${2 + day}`,
  aircraft,
  from: 'HOM',
  stops: [{ place, drums: 2 }],
  to: 'HOM',
});
const described = (flights: readonly StandingFlight[]) => describeFlights(scenario, flights, 'minimum');

// F1 is removed, F2 changes its aircraft, P1 is added, P2 is an idea: flights are offered up to day 3.
const standing = [to('F1', 'NOR', 1), to('F2', 'SOU', 2), to('F3', 'NOR', 3)];
const before = described(standing);
const after = described([
  to('P3', 'SOU', 2, 'T2'),
  to('F3', 'NOR', 3),
  to('P1', 'SOU', 1),
  { ...to('P2', 'NOR', 5), stops: ['NOR', 'SOU'].map((place) => ({ place, drums: 1 })) },
]);
const difference = comparePlans(before, after);
const lines = openLines(difference, new Set(standing.map(({ id }) => id)), '2031-03-05');
const without = (...keys: readonly string[]) =>
  withoutLines(
    after.flights,
    standing,
    lines.filter(({ key }) => keys.includes(key)),
  )
    .map(({ id, aircraft }) => `${id} ${aircraft}`)
    .sort();

describe('lines of a list of differences that can be left out', () => {
  it('are those on which a flight is offered, taken away or changed; ideas and flights that stay are none', () => {
    expect(lines).toEqual([
      { key: 'F1', planned: null, standing: 'F1' },
      { key: 'P3', planned: 'P3', standing: 'F2' },
      { key: 'P1', planned: 'P1', standing: null },
    ]);
  });

  it('left out, a removed flight stays', () => {
    expect(without('F1')).toEqual(['F1 T1', 'F3 T1', 'P1 T1', 'P2 T1', 'P3 T2']);
  });

  it('left out, a moved flight stays where it was, and does not fly twice', () => {
    expect(without('P3')).toEqual(['F2 T1', 'F3 T1', 'P1 T1', 'P2 T1']);
  });

  it('left out, an added flight does not come', () => {
    expect(without('P1')).toEqual(['F3 T1', 'P2 T1', 'P3 T2']);
  });

  it('all of them left out, what stood stands, beside the ideas', () => {
    expect(without('F1', 'P3', 'P1')).toEqual(['F1 T1', 'F2 T1', 'F3 T1', 'P2 T1']);
  });
});

it('the lowest level of a cache is that of the end of a day: a low opening is nothing that a flight can change', () => {
  expect(lowestLevel({ usable: [100, 500, 300, 300] as never })).toEqual({ litres: 300, day: 2 });
});
