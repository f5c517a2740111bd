import type { FlatOpenProblem } from './flat-open-problem.js';
import type { OpenState } from './open-state.js';

/** Less than this (cents) is no gain, only rounding of sums. */
const GAIN = 1e-6;

/** 2-opt and or-opt on single routes; travel may cost differently both ways. */
export class RouteShortener {
  /** Places of the route at hand, the base at both ends, and the number of its stops. */
  private readonly route: Int16Array;
  private count = 0;
  private readonly travel: Float64Array;
  private readonly places: number;

  constructor(flat: FlatOpenProblem) {
    this.route = new Int16Array(flat.sites + 2);
    this.travel = flat.travel;
    this.places = flat.places;
  }

  /** Shortens a route until no move of either kind does. */
  shorten(state: OpenState, slot: number): void {
    const { route } = this;
    const first = slot * state.flat.sites;
    this.count = state.stopCount[slot];
    if (this.count < 2) return;
    for (let at = 0; at < this.count; at++) route[at + 1] = state.stops[first + at] + 1;
    route[this.count + 1] = 0;
    let saved = 0;
    for (let gain = 1; gain > 0; saved += gain) gain = this.reverseStretch() || this.moveStretch();
    if (saved === 0) return;
    for (let at = 0; at < this.count; at++) state.stops[first + at] = route[at + 1] - 1;
    state.money -= saved;
  }

  /** Turns the first stretch that is shorter the other way round (2-opt); cents saved. */
  private reverseStretch(): number {
    const { route, travel, places, count } = this;
    for (let from = 1; from < count; from++) {
      const before = route[from - 1] * places;
      const start = route[from];
      let forward = 0;
      let backward = 0;
      for (let to = from + 1; to <= count; to++) {
        const end = route[to];
        forward += travel[route[to - 1] * places + end];
        backward += travel[end * places + route[to - 1]];
        const after = route[to + 1];
        const gain =
          travel[before + start] +
          forward +
          travel[end * places + after] -
          (travel[before + end] + backward + travel[start * places + after]);
        if (gain <= GAIN) continue;
        route.subarray(from, to + 1).reverse();
        return gain;
      }
    }
    return 0;
  }

  /** Moves the first stretch of one to three stops that is better off elsewhere in the route (or-opt); cents saved. */
  private moveStretch(): number {
    const { route, travel, places, count } = this;
    for (let length = 1; length <= 3 && length < count; length++)
      for (let from = 1; from + length <= count + 1; from++) {
        const first = route[from];
        const last = route[from + length - 1] * places;
        const left = route[from - 1] * places;
        const right = route[from + length];
        const freed = travel[left + first] + travel[last + right] - travel[left + right];
        if (freed <= GAIN) continue;
        for (let before = 1; before <= count + 1; before++) {
          if (before >= from && before <= from + length) continue;
          const newLeft = route[before - 1] * places;
          const newRight = route[before];
          const gain =
            freed - (travel[newLeft + first] + travel[last + newRight] - travel[newLeft + newRight]);
          if (gain <= GAIN) continue;
          this.move(from, length, before);
          return gain;
        }
      }
    return 0;
  }

  private move(from: number, length: number, before: number): void {
    const { route } = this;
    const moved = route.slice(from, from + length);
    if (before > from) {
      route.copyWithin(from, from + length, before);
      route.set(moved, before - length);
    } else {
      route.copyWithin(before + length, before, from);
      route.set(moved, before);
    }
  }
}
