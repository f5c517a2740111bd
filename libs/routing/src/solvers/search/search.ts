import type { Plan } from '../../plan.js';
import type { Problem } from '../../problem.js';
import { pick, type Random, randomFrom } from '../../random.js';
import { flatten } from './flat-problem.js';
import { Recreate } from './recreate.js';
import { refill } from './refill.js';
import { nearStores, ruins } from './ruin.js';
import { SearchState } from './search-state.js';

export interface SearchOptions {
  readonly seed: number;
  /** The search ends after this many rounds, the same plan for the same seed, or after `seconds` of the clock. */
  readonly budget: { readonly iterations: number } | { readonly seconds: number };
  /** Milliseconds from any moment; only differences count. */
  readonly clock: () => number;
  readonly shouldStop?: () => boolean;
  readonly onProgress?: (progress: { best: number; iterations: number; seconds: number }) => void;
  /** Routes that may be flown anew; all where it is not given. */
  readonly routes?: readonly number[];
}

/** A better plan than the one given, or the same; cost in cents. Ruin and recreate under low-temperature annealing. */
export function search(problem: Problem, from: Plan, options: SearchOptions) {
  const { clock, seed, budget } = options;
  const began = clock();
  const random = randomFrom(seed);
  const state = new SearchState(flatten(problem, options.routes), from);
  const recreate = new Recreate(state, random);
  const near = nearStores(state, 12);
  const all = problem.stores.map((_, store) => store);
  const pace = Pace(budget, clock);

  refill(state, all);
  recreate.run(all, { hoursPower: 1, noise: 0, blink: 0 });
  state.commit();
  let best = { cost: state.cost, plan: state.toPlan() };
  let current = state.cost;
  let iterations = 0;
  let told = clock();
  const weights = ruins.map(() => 1);
  const hot = (0.02 * state.money) / Math.max(1, state.active.length);

  while (!options.shouldStop?.()) {
    const progress = pace(iterations);
    if (progress >= 1) break;
    iterations++;
    const temperature = hot * 0.02 ** progress * 5;
    const ruin = choose(weights, random());
    const count = 1 + pick(random, 8);
    const removed = state.active.length > 0 ? ruins[ruin](state, count, random, near) : [];
    const touched = new Set<number>();
    if (removed.length === 0 || random() < 0.1) touched.add(pick(random, all.length));
    for (const slot of removed) {
      for (let i = 0; i < state.stopCount(slot); i++) touched.add(state.stopOf(slot, i));
      state.remove(slot);
    }
    const centre = near[[...touched][pick(random, touched.size)]];
    while (touched.size < 10 && random() < 0.9) touched.add(centre[pick(random, centre.length)]);
    const refillFirst = random() < 0.3;
    emptySome(state, [...touched], random);
    if (refillFirst) refill(state, [...touched]);
    recreate.run([...touched], {
      hoursPower: random() < 0.5 ? 1 : random(),
      noise: random() < 0.5 ? 0.1 : 0.4,
      blink: random() < 0.5 ? 0 : 0.3,
    });
    refill(state, [...touched]);
    const cost = state.cost;
    if (cost < current - temperature * Math.log(random() + 1e-12) * 1) {
      if (cost < current - 1e-3) weights[ruin] += 0.05;
      state.commit();
      current = cost;
      if (cost < best.cost - 0.5) best = { cost, plan: state.toPlan() };
    } else state.rollback();
    weights[ruin] = 0.2 + (weights[ruin] - 0.2) * 0.999;
    if ((iterations & 15) === 0 && clock() - told > 900) {
      told = clock();
      options.onProgress?.({ best: best.cost, iterations, seconds: (told - began) / 1000 });
    }
  }
  return { ...best, iterations };
}

/** Takes packs back from booked routes and, now and then, from all trips to one store. */
function emptySome(state: SearchState, stores: readonly number[], random: Random): void {
  const emptied = random() < 0.15 ? stores[pick(random, stores.length)] : -1;
  const withBooked = random() < 0.5;
  for (const store of stores) {
    for (const slot of state.slotsAt[store]) {
      if (store !== emptied && !(withBooked && state.vehicle[slot] < 0)) continue;
      for (let i = 0; i < state.stopCount(slot); i++)
        if (state.stopOf(slot, i) === store) state.setDrop(slot, i, 0);
    }
  }
}

/** Share of the budget used after a number of iterations. */
function Pace(budget: SearchOptions['budget'], clock: () => number): (iterations: number) => number {
  if ('iterations' in budget) return (iterations) => iterations / budget.iterations;
  const began = clock();
  return () => (clock() - began) / 1000 / budget.seconds;
}

function choose(weights: readonly number[], random: number): number {
  let left = random * weights.reduce((sum, one) => sum + one, 0);
  for (let i = 0; i < weights.length; i++) {
    left -= weights[i];
    if (left <= 0) return i;
  }
  return weights.length - 1;
}
