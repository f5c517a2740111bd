import { findPositions, planningDrums } from '@drumline/loading';
import { inches, pounds } from '@drumline/units';
import * as fc from 'fast-check';
import { expect, it } from 'vitest';
import { flightLoads } from '../problem/flight-loads.js';
import { territoryOf } from '../problem/territory.js';
import type { Scenario, StandingFlight } from '../scenario.js';
import { tinyTerritory } from '../tiny-territory.js';
import { checkBalance } from './check-balance.js';
import { checkPlaces } from './check-places.js';
import { checkWeights } from './check-weights.js';
import { survey } from './survey.js';

const flight = (drums: number): StandingFlight => ({
  id: 'F1',
  state: 'offered',
  date: '2031-03-03',
  aircraft: 'T1',
  from: 'HOM',
  stops: [{ place: 'NOR', drums }],
  to: 'HOM',
});
const weight = (min: number, max: number) => fc.integer({ min, max }).map(pounds);
const territory = fc
  .record({
    maxTakeoffLb: weight(5000, 7000),
    maxLandingLb: weight(4800, 6800),
    maxZeroFuelLb: weight(4300, 6500),
    fuelCapacityLb: weight(500, 900),
    takeoffLb: weight(4600, 7000),
    landingLb: weight(4600, 6800),
    soft: fc.boolean(),
    closedWhenSoft: fc.boolean(),
    forwardIn: fc.integer({ min: 130, max: 138 }).map(inches),
    aftIn: fc.integer({ min: 139, max: 146 }).map(inches),
    tipArmIn: fc.option(fc.integer({ min: 139, max: 148 }).map(inches)),
    floorLb: weight(390, 405),
  })
  .map((drawn): Scenario => {
    const tiny = tinyTerritory();
    const { takeoffLb, landingLb, soft, closedWhenSoft, forwardIn, aftIn, floorLb, ...limits } = drawn;
    const [type] = tiny.aircraftTypes;
    return {
      ...tiny,
      surfaceReports: soft ? [{ place: 'NOR', state: 'soft', at: '2031-03-03T04:00Z', by: 'helper' }] : [],
      stripLimits: tiny.stripLimits.map((line) => ({
        ...line,
        takeoffLb,
        landingLb,
        whenSoft: closedWhenSoft ? 'closed' : line.whenSoft,
      })),
      aircraftTypes: [
        {
          ...type!,
          ...limits,
          envelope: [3800, 9000].map((weightLb) => ({ weightLb: pounds(weightLb), forwardIn, aftIn })),
          configurations: type!.configurations.map((cabin) => ({
            ...cabin,
            drumPositions: cabin.drumPositions.map((place, index) =>
              index === 3 ? { ...place, limitLb: floorLb } : place,
            ),
          })),
        },
      ],
    };
  });

const faultsOf = (scenario: Scenario, drums: number) => {
  const surveyed = survey(scenario, [flight(drums)]);
  return [checkPlaces, checkWeights, checkBalance].flatMap((check) => check(surveyed));
};

it('drums on a leg: what the loading rules allow has no fault, and one drum over a limit has one', () => {
  fc.assert(
    fc.property(territory, (scenario) => {
      const { loadOf } = flightLoads(scenario, territoryOf(scenario));
      const { load } = loadOf('T', ['HOM', 'NOR', 'HOM'], 0);
      const [outbound] = load.legs;
      for (let drums = 0; load.flyable && drums <= outbound!.drums; drums++)
        expect(faultsOf(scenario, drums)).toEqual([]);
      // Balance is no ladder: where two drums do not balance, three may.
      const others = outbound!.limits.filter(({ name }) => name !== 'balance').map((limit) => limit.drums);
      expect(faultsOf(scenario, Math.min(...others) + 1)).not.toEqual([]);
    }),
    { numRuns: 300 },
  );
});

it('drums on a leg: drums for which positions are found balance for the checker too', () => {
  fc.assert(
    fc.property(territory, fc.integer({ min: 1, max: 4 }), (scenario, drums) => {
      const { loadOf } = flightLoads(scenario, territoryOf(scenario));
      const { load, request } = loadOf('T', ['HOM', 'NOR', 'HOM'], 0);
      const cabin = { type: request.type, configuration: request.configuration, fuel: load, cargo: [] };
      const { found } = findPositions(cabin, planningDrums([drums, 0], request.drum));
      if (found) expect(checkBalance(survey(scenario, [flight(drums)]))).toEqual([]);
    }),
    { numRuns: 300 },
  );
});
