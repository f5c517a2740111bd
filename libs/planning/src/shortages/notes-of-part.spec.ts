import { solve } from '@drumline/routing';
import { describe, expect, it } from 'vitest';
import { asStandingFlight } from '../flights/as-standing-flight.js';
import { describeFlights } from '../flights/describe-flights.js';
import { planScenario } from '../plan-scenario.js';
import { tinyTerritory } from '../tiny-territory.js';
import type { Solver } from './find-blockers.js';
import { notesOfPart } from './notes-of-part.js';

const weather = { fortnights: 50, seed: 1 };
const scenario = tinyTerritory({
  weather: [{ place: 'NOR', morningCancel: 0.2, afternoonCancel: 0.5 }],
});
const solver: Solver = (problem) => solve(problem, { seed: 1, budget: { iterations: 50 }, clock: () => 0 });

const found = async () => {
  const outcome = await planScenario(
    scenario,
    { endTarget: 'minimum', weather, isOver: () => false },
    solver,
  );
  if (outcome.status === 'infeasible') throw new Error(outcome.reasons.join(' '));
  return outcome.plan;
};

describe('a plan of which only some lines are taken', () => {
  it('with all of them says what the whole plan says', async () => {
    const plan = await found();
    const whole = describeFlights(scenario, plan.flights.map(asStandingFlight), 'minimum');
    expect(notesOfPart(scenario, plan, whole, weather)).toEqual({
      shortages: plan.shortages,
      remarks: plan.remarks,
    });
  });

  it('without the flight to NOR cannot keep NOR, says why, and expects fewer drums', async () => {
    const plan = await found();
    expect(plan.shortages).toEqual([]);
    const rest = plan.flights.filter(({ stops }) => stops.every(({ place }) => place !== 'NOR'));
    const part = describeFlights(scenario, rest.map(asStandingFlight), 'minimum');
    const { shortages, remarks } = notesOfPart(scenario, plan, part, weather);
    expect(shortages.map(({ place, level, blockedBy }) => [place, level, blockedBy])).toEqual([
      ['NOR', 'below minimum', 'the lines that are left out'],
    ]);
    const drums = rest.reduce((sum, flight) => sum + flight.drums, 0);
    expect(remarks.join(' ')).toContain(`of ${drums} drum`);
    expect(plan.remarks.join(' ')).not.toContain(`of ${drums} drum`);
  });
});
