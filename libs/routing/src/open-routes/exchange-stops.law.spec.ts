import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { randomFrom } from '../random.js';
import { randomOpenProblem } from '../testing/random-open-problem.js';
import { checkOpenPlan } from './check-open-plan.js';
import { StopExchanger } from './exchange-stops.js';
import { flattenOpen } from './flat-open-problem.js';
import type { OpenPlan, OpenProblem } from './open-problem.js';
import { type OpenState, stateOfPlan } from './open-state.js';

/** Every site served on every day with what it draws, spread over the vehicles in turn. */
const dailyRounds = ({ days, sites, fleet }: OpenProblem): OpenPlan => ({
  routes: Array.from({ length: days }, (_, day) =>
    Array.from({ length: fleet.vehicles }, (_, vehicle) => ({
      day,
      stops: sites
        .map(({ demand }, site) => ({ site, quantity: demand[day] }))
        .filter(({ site }) => site % fleet.vehicles === vehicle),
    })),
  ).flat(),
});

/** By the checker, which shares nothing with the state. */
const travelOf = (problem: OpenProblem, state: OpenState) =>
  checkOpenPlan(problem, state.toPlan()).cost.travel;

describe('exchange of stops between routes', () => {
  it('never makes a plan dearer, keeps every delivery, and its running cost is what the plan costs', () => {
    let cheaper = 0;
    fc.assert(
      fc.property(fc.integer(), (seed) => {
        const size = { sites: 9, days: 2, demand: 4, vehicles: 3 };
        const problem = randomOpenProblem(randomFrom(seed), size);
        const flat = flattenOpen(problem);
        const state = stateOfPlan(flat, dailyRounds(problem));
        const travel = travelOf(problem, state);
        const before = { travel, money: state.money, over: state.overTotal, quantity: [...state.quantity] };
        const exchanger = new StopExchanger(flat, state);
        for (let slot = 0; slot < flat.days * flat.vehicles; slot++) exchanger.improve(slot, 1e6);
        const after = stateOfPlan(flat, state.toPlan());
        expect([...after.quantity]).toEqual(before.quantity);
        expect(state.money).toBeCloseTo(after.money, 3);
        expect(state.overTotal).toBe(after.overTotal);
        expect(state.overTotal).toBeLessThanOrEqual(before.over);
        expect(before.travel - travelOf(problem, state)).toBeCloseTo(before.money - state.money, 3);
        if (state.overTotal === before.over) {
          expect(state.money).toBeLessThanOrEqual(before.money + 1e-6);
          if (state.money < before.money - 1) cheaper++;
        }
      }),
      { numRuns: 100 },
    );
    expect(cheaper).toBeGreaterThan(20);
  });
});
