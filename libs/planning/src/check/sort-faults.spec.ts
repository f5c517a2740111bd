import { describe, expect, it } from 'vitest';
import type { Fault } from '../flight-plan.js';
import type { StandingFlight } from '../scenario.js';
import { tinyTerritory } from '../tiny-territory.js';
import { checkFlights } from './check-flights.js';
import { sortFaults } from './sort-faults.js';

const toNor = (id: string, state: StandingFlight['state'], drums: number): StandingFlight => ({
  id,
  state,
  date: '2031-03-03',
  aircraft: 'T1',
  from: 'HOM',
  stops: [{ place: 'NOR', drums }],
  to: 'HOM',
});
const soft = {
  surfaceReports: [{ place: 'NOR', state: 'soft' as const, at: '2031-03-03T04:00Z', by: 'helper' }],
};
const wheres = (faults: readonly Fault[]) => faults.map(({ where }) => where);

describe('faults of a plan and faults for a decision', () => {
  it('frozen flights: an approved flight to a strip gone soft needs a decision, and is no fault of the plan', () => {
    const approved = toNor('F1', 'approved', 4);
    const scenario = tinyTerritory({ ...soft, flights: [approved] });
    const flights = [approved, toNor('P01', 'offered', 4)];
    const sorted = sortFaults(scenario, flights, checkFlights(scenario, flights));
    expect(wheres(sorted.forDecision)).toEqual(['F1, Mon 3 Mar, HOM-NOR']);
    expect(wheres(sorted.ofThePlan)).toEqual(['P01, Mon 3 Mar, HOM-NOR']);
  });

  it('a fault of a frozen flight and a new one together is the fault of the plan', () => {
    const approved = toNor('F1', 'approved', 4);
    const places = tinyTerritory().places.map((place) =>
      place.code === 'NOR' ? { ...place, landingCapacityDrumsPerDay: 5 } : place,
    );
    const scenario = tinyTerritory({ places, flights: [approved] });
    const flights = [approved, toNor('P01', 'offered', 2)];
    expect(wheres(sortFaults(scenario, flights, checkFlights(scenario, flights)).ofThePlan)).toEqual([
      'NOR, Mon 3 Mar',
    ]);
  });
});
