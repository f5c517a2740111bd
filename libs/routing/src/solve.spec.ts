import { describe, expect, it } from 'vitest';
import { checkPlan } from './check-plan.js';
import type { Progress } from './plan.js';
import { solve } from './solve.js';
import { handRule } from './solvers/hand-rule.js';
import { plain } from './testing/plain-problem.js';

const options = { seed: 1, budget: { iterations: 50 }, clock: () => 0 };

describe('solve', () => {
  it('gives a checked plan with its cost, and no bound where no method proves one', async () => {
    const outcome = await solve(plain, options);
    if (outcome.status !== 'solved') throw new Error('expected a plan');
    expect(checkPlan(plain, outcome.plan)).toEqual({ faults: [], cost: outcome.cost });
    expect(outcome.proof).toMatchObject({
      objective: outcome.cost.total,
      bound: null,
      gap: null,
      iterations: 50,
    });
  });

  it('tells what the best plan costs in money apart from what is counted for shortages', async () => {
    const told: Progress[] = [];
    const stores = plain.stores.map((store) => ({ ...store, minimum: store.minimum + 1_000 }));
    const outcome = await solve({ ...plain, stores }, { ...options, onProgress: (each) => told.push(each) });
    if (outcome.status !== 'solved') throw new Error('expected a plan');
    const { total, travel, packs } = outcome.cost;
    expect(told.at(-1)).toMatchObject({ best: total, bestMoney: travel + packs });
    expect(total).toBeGreaterThan(travel + packs);
  });

  it('says why there is no plan', async () => {
    const crews = plain.crews.map((crew) => ({ ...crew, dutyHours: [0, 0, 0] }));
    expect(await solve({ ...plain, crews }, options)).toMatchObject({ status: 'infeasible' });
  });

  it('does not search on when the plan meets the bound', async () => {
    const cost = checkPlan(plain, handRule(plain)).cost.total;
    const methods = { bound: async () => ({ bound: cost }) };
    const outcome = await solve(plain, { ...options, methods });
    expect(outcome).toMatchObject({ proof: { gap: 0, iterations: 0 } });
  });

  it("throws on a method's plan that breaks a rule, however cheap", async () => {
    const trip = { vehicle: 0, day: 0, route: 0, drops: [5], crew: -1 };
    const broken = { trips: [trip, trip, trip], bookedDrops: [[0]], bookedCrews: [0] };
    const stores = plain.stores.map((store) => ({ ...store, opening: 0 }));
    const methods = { polish: async () => ({ plan: broken, bound: null }) };
    await expect(solve({ ...plain, stores }, { ...options, methods })).rejects.toThrow(/breaks a rule/);
  });
});
