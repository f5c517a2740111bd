import { pick, type Random } from '../random.js';
import type { OpenState } from './open-state.js';

/** Chooses sites to take off the plan and to bring back: about `count` of them. */
export type RuinSites = (
  state: OpenState,
  count: number,
  random: Random,
  near: readonly number[][],
) => number[];

/** Sites by nearness to each site, itself first. */
export function nearSites({ flat: { sites, travel, places } }: OpenState): number[][] {
  const apart = (a: number, b: number) =>
    a === b ? -1 : travel[(a + 1) * places + b + 1] + travel[(b + 1) * places + a + 1];
  const all = Array.from({ length: sites }, (_, site) => site);
  return all.map((site) => [...all].sort((a, b) => apart(site, a) - apart(site, b) || a - b));
}

const anywhere: RuinSites = (state, count, random) => {
  const chosen = new Set<number>();
  while (chosen.size < Math.min(count, state.flat.sites)) chosen.add(pick(random, state.flat.sites));
  return [...chosen];
};

const neighbours: RuinSites = (state, count, random, near) => {
  const around = near[pick(random, state.flat.sites)];
  return some(around, count, random, 0.2);
};

/** A stretch of one route. */
const stretch: RuinSites = (state, count, random) => {
  const stops = stopsOf(state, usedSlot(state, random));
  const from = pick(random, Math.max(1, stops.length - count + 1));
  return stops.slice(from, from + count);
};

/** The sites of one route that visit the same day elsewhere, and the nearest to one of them. */
const routeAndNeighbours: RuinSites = (state, count, random, near) => {
  const stops = stopsOf(state, usedSlot(state, random));
  const half = Math.ceil(count / 2);
  const own = some(stops, half, random, 0.5);
  if (own.length === 0) return neighbours(state, count, random, near);
  const others = some(near[own[0]], count - half + 1, random, 0.2);
  return [...new Set([...own, ...others])];
};

/** The sites whose visits cost the longest detours, for what they bring. */
const dearest: RuinSites = (state, count, random) => {
  const { days, sites, vehicles } = state.flat;
  const detour = new Float64Array(sites);
  for (let slot = 0; slot < days * vehicles; slot++)
    for (let at = 0; at < state.stopCount[slot]; at++) {
      const site = state.stops[slot * sites + at];
      detour[site] += state.detour(slot, at, site, 1) * (0.5 + random());
    }
  return [...detour.keys()].sort((a, b) => detour[b] - detour[a]).slice(0, count);
};

/** The sites that run short, and sites around them that could give way. */
const shortOfStock: RuinSites = (state, count, random, near) => {
  const short = [...state.short.keys()].filter((site) => state.short[site] > 0);
  if (short.length === 0) return anywhere(state, count, random, near);
  const one = short[pick(random, short.length)];
  const day = [...anywhere(state, Math.ceil(count / 2), random, near)];
  return [...new Set([one, ...some(near[one], Math.ceil(count / 2), random, 0.4), ...day])];
};

export const ruins: readonly RuinSites[] = [
  anywhere,
  neighbours,
  stretch,
  routeAndNeighbours,
  dearest,
  shortOfStock,
];

/** The first `count` of a list, each passed over with the given chance. */
function some(list: readonly number[], count: number, random: Random, passOver: number): number[] {
  const chosen: number[] = [];
  for (const one of list) {
    if (chosen.length >= count) break;
    if (random() >= passOver) chosen.push(one);
  }
  return chosen;
}

const stopsOf = (state: OpenState, slot: number): number[] =>
  slot < 0
    ? []
    : [...state.stops.subarray(slot * state.flat.sites, slot * state.flat.sites + state.stopCount[slot])];

function usedSlot(state: OpenState, random: Random): number {
  const used = [...state.stopCount.keys()].filter((slot) => state.stopCount[slot] > 0);
  return used.length === 0 ? -1 : used[pick(random, used.length)];
}
