import { pick, type Random } from '../../random.js';
import type { SearchState } from './search-state.js';

/** Chooses about `count` trips that have something to do with each other. */
export type Ruin = (state: SearchState, count: number, random: Random, near: Near) => number[];

/** The nearest stores to each store, itself first. */
export type Near = readonly (readonly number[])[];

const anyOf = <T>(list: readonly T[], random: Random): T => list[pick(random, list.length)];

/** A place and its neighbours, within a few days. */
const aroundStore: Ruin = (state, count, random, near) => {
  const seed = anyOf(state.active, random);
  const centre = state.stopOf(seed, pick(random, state.stopCount(seed)));
  const day = state.day[seed];
  const span = 1 + pick(random, Math.max(1, state.flat.days - 1));
  const chosen = new Set<number>([seed]);
  for (const store of near[centre]) {
    for (const slot of state.slotsAt[store]) {
      if (chosen.size >= count) return [...chosen];
      if (state.vehicle[slot] < 0 || Math.abs(state.day[slot] - day) > span) continue;
      if (random() < 0.8) chosen.add(slot);
    }
  }
  return [...chosen];
};

/** Trips of one day or of days next to it. */
const aroundDay: Ruin = (state, count, random) => {
  const { slotsOn, flat } = state;
  const middle = state.day[anyOf(state.active, random)];
  const slots = [middle - 1, middle, middle + 1]
    .filter((day) => day >= 0 && day < flat.days)
    .flatMap((day) => slotsOn[day].filter((slot) => state.vehicle[slot] >= 0));
  return sample(slots, count, random);
};

/** Trips of one vehicle within a few days. */
const aroundVehicle: Ruin = (state, count, random) => {
  const seed = anyOf(state.active, random);
  const slots = state.active.filter(
    (slot) => state.vehicle[slot] === state.vehicle[seed] && Math.abs(state.day[slot] - state.day[seed]) <= 4,
  );
  return sample(slots, count, random);
};

const anywhere: Ruin = (state, count, random) => sample([...state.active], Math.min(count, 6), random);

function sample(slots: number[], count: number, random: Random): number[] {
  const most = Math.min(count, slots.length);
  for (let i = 0; i < most; i++) {
    const j = i + pick(random, slots.length - i);
    [slots[i], slots[j]] = [slots[j], slots[i]];
  }
  return slots.slice(0, most);
}

/** The ways to tear a hole into a plan. */
export const ruins: readonly Ruin[] = [aroundStore, aroundDay, aroundVehicle, anywhere];

/** Nearness of stores by how often routes join them: the more routes through both, the nearer. */
export function nearStores({ flat }: SearchState, most: number): Near {
  const shared = flat.problem.stores.map((_, store) => new Map([[store, Number.POSITIVE_INFINITY]]));
  for (let route = 0; route < flat.firstBooked; route++) {
    const stops = flat.stops.subarray(flat.stopsAt[route], flat.stopsAt[route + 1]);
    for (const a of stops) for (const b of stops) shared[a].set(b, (shared[a].get(b) ?? 0) + 1);
  }
  return shared.map((counts) =>
    [...counts]
      .sort((a, b) => b[1] - a[1] || a[0] - b[0])
      .slice(0, most)
      .map(([store]) => store),
  );
}
