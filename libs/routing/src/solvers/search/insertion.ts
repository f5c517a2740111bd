import type { SearchState } from './search-state.js';

/**
 * What a trip on a route would save today, with its best drops. The saving of packs at a stop is concave,
 * and the leg limits are nested, so taking the best next pack again and again is exact.
 */
export class Insertion {
  /** Best drops of the route last valued. */
  readonly drops: Int32Array;
  /** A pack is set down only where it saves this much (cents) more than it costs: for sources that run short. */
  packWorth = 0;
  private readonly room: Int32Array;

  constructor(private readonly state: SearchState) {
    this.drops = new Int32Array(state.flat.maxStops);
    this.room = new Int32Array(state.flat.maxStops);
  }

  /** Saving less travel and packs (cents) of a trip; zero or less: not worth it. Gain tables must be fresh. */
  value(route: number, day: number): number {
    const { flat, levels, standing } = this.state;
    const condition = flat.conditionAt[route * flat.days + day];
    const first = flat.stopsAt[route];
    const count = flat.stopsAt[route + 1] - first;
    let value = -flat.cost[condition];
    if (standing.dropped > 0) value += this.keptValue(route, day);

    let most = value;
    for (let i = 0; i < count; i++) most += levels.topGain[flat.stops[first + i] * flat.days + day];
    if (most <= 0) return most;

    const left = this.state.supply.packsFor(flat.source[route], day, flat.ownUse[condition]);
    if (left < 0) return -1;
    const legs = flat.legsAt[condition];
    for (let i = 0; i < count; i++) {
      this.drops[i] = 0;
      this.room[i] = flat.legPacks[legs + i];
    }
    if (left < this.room[0]) this.room[0] = left;
    return value + this.fill(first, count, day, flat.packCost[route]);
  }

  private fill(first: number, count: number, day: number, packCost: number): number {
    const { flat, levels } = this.state;
    const { gains } = levels;
    const { drops, room } = this;
    const row = flat.maxPacks + 1;
    let saved = 0;
    for (;;) {
      let best = -1;
      let bestGain = packCost + this.packWorth;
      for (let i = 0; i < count && room[i] > 0; i++) {
        const packs = drops[i];
        if (packs + 1 >= row) continue;
        const at = (flat.stops[first + i] * flat.days + day) * row + packs;
        const gain = gains[at + 1] - gains[at];
        if (gain > bestGain) {
          bestGain = gain;
          best = i;
        }
      }
      if (best < 0) return saved;
      saved += bestGain - packCost;
      drops[best]++;
      for (let i = 0; i <= best; i++) room[i]--;
    }
  }

  private keptValue(route: number, day: number): number {
    const { flat, standing } = this.state;
    const kept = flat.vehiclesOf[flat.start[route]].some((vehicle) => standing.wants(route, vehicle, day));
    return kept ? flat.problem.changePrice : 0;
  }
}
