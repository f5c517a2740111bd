import type { CacheProjection } from '@drumline/stock';
import { cents, litres } from '@drumline/units';
import { describe, expect, it } from 'vitest';
import type { PlannedFlight } from '../flight-plan.js';
import { describeFlights } from '../flights/describe-flights.js';
import type { StandingFlight } from '../scenario.js';
import { tinyTerritory } from '../tiny-territory.js';
import { comparePlans } from './compare-plans.js';

const scenario = tinyTerritory({
  aircraft: [
    { tail: 'T1', type: 'T', home: 'HOM', absences: [] },
    { tail: 'T2', type: 'T', home: 'HOM', absences: [] },
  ],
});

const to = (
  id: string,
  place: string,
  day: number,
  changes: Partial<StandingFlight> = {},
): StandingFlight => ({
  id,
  state: 'offered',
  date: `2031-03-0${2 + day}`,
  aircraft: 'T1',
  from: 'HOM',
  stops: [{ place, drums: 2 }],
  to: 'HOM',
  ...changes,
});
const plan = (...flights: readonly StandingFlight[]) => describeFlights(scenario, flights, 'minimum');
const ids = (flights: readonly PlannedFlight[]) => flights.map(({ id }) => id);
const pairs = (changes: readonly { before: PlannedFlight; after: PlannedFlight }[]) =>
  changes.map(({ before, after }) => `${before.id}>${after.id}`);

describe('the differences of two plans', () => {
  it('a flight on the same day, aircraft and route is the same, whatever its number', () => {
    const difference = comparePlans(plan(to('F1', 'NOR', 1)), plan(to('P7', 'NOR', 1)));
    expect(pairs(difference.same)).toEqual(['F1>P7']);
    expect([...difference.removed, ...difference.added, ...difference.moved]).toEqual([]);
  });

  it('another day or aircraft is a move, to the nearest day of the same route', () => {
    const before = plan(to('F1', 'NOR', 1), to('F2', 'NOR', 4));
    const after = plan(to('P1', 'NOR', 5), to('P2', 'NOR', 1, { aircraft: 'T2' }));
    expect(pairs(comparePlans(before, after).moved).sort()).toEqual(['F1>P2', 'F2>P1']);
  });

  it('a take-off that crews know by its flight number is moved when it is hours off, not by a few minutes', () => {
    const at = (departs: '08:00' | '08:10' | '11:41') => plan(to('F1', 'NOR', 1, { departs }));
    expect(pairs(comparePlans(at('08:00'), at('11:41')).moved)).toEqual(['F1>F1']);
    expect(pairs(comparePlans(at('08:00'), at('08:10')).same)).toEqual(['F1>F1']);
  });

  it('another route is a flight removed and a flight added', () => {
    const difference = comparePlans(plan(to('F1', 'NOR', 1)), plan(to('P1', 'SOU', 1)));
    expect(ids(difference.removed)).toEqual(['F1']);
    expect(ids(difference.added)).toEqual(['P1']);
  });

  it('other drums on the same flight are told apart from a move', () => {
    const more = to('P1', 'NOR', 1, { stops: [{ place: 'NOR', drums: 3 }] });
    const difference = comparePlans(plan(to('F1', 'NOR', 1)), plan(more));
    expect(pairs(difference.drumsChanged)).toEqual(['F1>P1']);
    expect(difference.same).toEqual([]);
  });

  it('frozen flights: an approved flight is matched by its id, not by its likeness', () => {
    const before = plan(to('F1', 'NOR', 1, { state: 'approved' }), to('F2', 'NOR', 1, { aircraft: 'T2' }));
    const after = plan(to('F1', 'NOR', 1, { state: 'approved', aircraft: 'T2' }), to('P1', 'NOR', 1));
    expect(pairs(comparePlans(before, after).moved)).toContain('F1>F1');
  });

  it('no flight is told twice: one that keeps its number is not the same and added at once', () => {
    const three = { stops: [{ place: 'NOR', drums: 3 }] };
    const difference = comparePlans(
      plan(to('F12', 'NOR', 1)),
      plan(to('F12', 'NOR', 1, three), to('P08', 'NOR', 1)),
    );
    expect(pairs(difference.drumsChanged)).toEqual(['F12>F12']);
    expect(ids(difference.added)).toEqual(['P08']);
    expect(difference.same).toEqual([]);
  });

  it('an idea and a new flight with the same number of the planner are not taken for one flight', () => {
    const difference = comparePlans(
      plan(to('P01', 'NOR', 4), to('P02', 'NOR', 1)),
      plan(to('P01', 'NOR', 1), to('P02', 'NOR', 4)),
    );
    expect(pairs(difference.same).sort()).toEqual(['P01>P02', 'P02>P01']);
  });

  it('another pilot on the same flight is told, and the flight stays the same', () => {
    const before = plan(to('F1', 'NOR', 1, { pilot: 'P1' }), to('F2', 'SOU', 2, { pilot: 'P1' }));
    const after = plan(to('F1', 'NOR', 1, { pilot: 'P2' }), to('F2', 'SOU', 2, { pilot: 'P1' }));
    const difference = comparePlans(before, after);
    expect(pairs(difference.same)).toEqual(['F1>F1', 'F2>F2']);
    expect(pairs(difference.pilotChanged)).toEqual(['F1>F1']);
    expect(difference.totals.after).toEqual(difference.totals.before);
  });

  it('of two alike the pair with the same drums is the same', () => {
    const three = { stops: [{ place: 'NOR', drums: 3 }] };
    const before = plan(to('F1', 'NOR', 1), to('F2', 'NOR', 1, three));
    const after = plan(to('P1', 'NOR', 1, three), to('P2', 'NOR', 1));
    expect(pairs(comparePlans(before, after).same).sort()).toEqual(['F1>P2', 'F2>P1']);
  });

  it('totals count drums, litres, block hours, the three costs and the drums of each base', () => {
    const { totals } = comparePlans(plan(), plan(to('P1', 'NOR', 1), to('P2', 'SOU', 1)));
    expect(totals.before).toMatchObject({ flights: 0, drums: 0, drumsFromBase: [] });
    expect(totals.after).toMatchObject({
      flights: 2,
      drums: 4,
      litres: 800,
      drumsFromBase: [{ place: 'HOM', drums: 4 }],
    });
    // HOM-NOR-HOM is 0.9 h, HOM-SOU-HOM 1.38 h at 900.00 an hour, and four landings at 5.00.
    expect(totals.after.cost.flight).toBe(cents(81_000 + 124_200 + 2_000));
    expect(totals.after.cost).toMatchObject({ fuel: 120_000, handling: 3_600 });
    expect(totals.after.blockHours).toBeCloseTo(2.28, 9);
  });

  it('the lowest level of a cache is that of the end of a day, before and after', () => {
    const { lowest } = comparePlans(plan(), plan(to('P1', 'NOR', 1)));
    // NOR opens with 800 L and gives 500 L on day 2.
    expect(lowest.find(({ place }) => place === 'NOR')).toEqual({
      place: 'NOR',
      beforeLitres: 300,
      afterLitres: 700,
      minimumLitres: 400,
      criticalLitres: 200,
    });
  });
});

it('a cache that only one plan knows is not compared', () => {
  const cache = { place: 'NEW', usable: [litres(1), litres(1)] } as unknown as CacheProjection;
  expect(comparePlans({ flights: [], caches: [cache] }, { flights: [], caches: [] }).lowest).toEqual([]);
});
