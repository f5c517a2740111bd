import { solve } from '@drumline/routing';
import { highsMethods } from '@drumline/routing/milp';
import { hours, kilograms, litres } from '@drumline/units';
import { describe, expect, it } from 'vitest';
import { planScenario } from '../plan-scenario.js';
import type { Scenario } from '../scenario.js';
import { tinyDrums, tinyPlace, tinyTerritory } from '../tiny-territory.js';
import { buildProblem } from './build-problem.js';

/** NOR lies so far north that in December it is light for less than two hours; HOM has light for six. */
const december = (changes: Partial<Scenario> = {}): Scenario =>
  tinyTerritory({
    firstDay: '2030-12-10',
    asOf: '2030-12-10T05:00Z',
    places: [tinyPlace('HOM', 60), tinyPlace('NOR', 67), tinyPlace('SOU', 58.67)],
    stripLimits: tinyTerritory().stripLimits.filter(({ place }) => place !== 'SOU'),
    caches: [{ ...tinyTerritory().caches[0]!, minimumLitres: litres(1200), capacityDrums: 20 }],
    drums: tinyDrums('HOM', 20, 300),
    helicopterTasks: [],
    ...changes,
  });

/** To NOR and back: 50 NM at 125 kt and three minutes, twice, and two turn-rounds. */
const oneFlight = 2 * (50 / 125 + 0.05 + 0.5);

describe('hours away from the base', () => {
  it('are those of the flying day where the strips are light as long as the base', () => {
    expect(buildProblem(tinyTerritory(), 'minimum').problem.vehicles[0]!.dutyHours).toEqual(
      Array(5).fill(10),
    );
  });

  it('of one aircraft and one pilot hold one flight where the strip is light for one, not the two that fit into the day of the base', () => {
    const { vehicles, crews } = buildProblem(december(), 'minimum').problem;
    for (const { dutyHours } of [vehicles[0]!, crews[0]!])
      for (const away of dutyHours) {
        expect(away).toBeGreaterThan(oneFlight);
        expect(away).toBeLessThan(2 * oneFlight);
      }
  });

  it('of a pilot are those of the base on a day with a booked flight, which has hours of its own', () => {
    const empty = { passengers: 0, passengersKg: kilograms(0), freightKg: kilograms(0) };
    const booked: Scenario['bookedFlights'][number] = {
      id: 'X',
      date: '2030-12-11',
      aircraft: 'T1',
      configuration: 'drums',
      purpose: 'mail',
      legs: [
        { ...empty, from: 'HOM', to: 'NOR' },
        { ...empty, from: 'NOR', to: 'HOM' },
      ],
      heldHours: hours(2),
    };
    const { crews } = buildProblem(december({ bookedFlights: [booked] }), 'minimum').problem;
    expect(crews[0]!.dutyHours[1]).toBeGreaterThan(2 * oneFlight);
    expect(crews[0]!.dutyHours[2]).toBeLessThan(2 * oneFlight);
  });
});

describe('a first plan', () => {
  const planned = async (scenario: Scenario) => {
    const outcome = await planScenario(
      scenario,
      { endTarget: 'minimum', weather: null, isOver: () => false },
      (problem, effort, from) =>
        solve(problem, {
          seed: 1,
          clock: () => 0,
          budget: { iterations: 200 },
          ...(from && { from }),
          ...(effort === 'full' && { methods: highsMethods() }),
        }),
    );
    if (outcome.status !== 'solved') throw new Error(outcome.reasons.join(' '));
    return outcome.plan;
  };

  it('of one cache in winter is two flights on two days, proven: the drum that waits a day could not come sooner', async () => {
    const { flights, proof } = await planned(december());
    expect(flights.map(({ date, drums }) => [date, drums])).toEqual([
      ['2030-12-10', 4],
      ['2030-12-11', 2],
    ]);
    expect(proof.bound).toBeCloseTo(proof.objective, -1);
  });

  it('with a second aircraft for the one pilot is the same, and proven', async () => {
    const [aircraft] = tinyTerritory().aircraft;
    const { flights, proof } = await planned(
      december({ aircraft: [aircraft!, { ...aircraft!, tail: 'T2' }] }),
    );
    expect(flights).toHaveLength(2);
    expect(new Set(flights.map(({ date }) => date)).size).toBe(2);
    expect(proof.bound).toBeCloseTo(proof.objective, -1);
  });
});
