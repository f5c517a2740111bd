import type { FlatOpenProblem } from './flat-open-problem.js';
import type { OpenState } from './open-state.js';

/** Less than this (cents) is no gain, only rounding of sums. */
const GAIN = 1e-6;

/** Exchanges between two routes of a day: their tails (2-opt*), or one stop of each; travel may cost differently both ways. */
export class StopExchanger {
  private readonly tail: Int16Array;
  private overPrice = 0;

  constructor(
    private readonly flat: FlatOpenProblem,
    private readonly state: OpenState,
  ) {
    this.tail = new Int16Array(flat.sites);
  }

  /** Exchanges that make the routes of a slot and of the others of its day cheaper, until there is none. */
  improve(slot: number, overPrice: number): void {
    this.overPrice = overPrice;
    const { vehicles } = this.flat;
    const first = slot - (slot % vehicles);
    for (let other = first; other < first + vehicles; other++) {
      if (other === slot || this.state.stopCount[other] === 0) continue;
      while (
        this.state.stopCount[slot] > 0 &&
        (this.exchangeTails(slot, other) || this.swapStops(slot, other))
      );
    }
  }

  /** The first exchange of tails that pays. */
  private exchangeTails(a: number, b: number): boolean {
    const { state } = this;
    let headA = 0;
    for (let i = 0; i <= state.stopCount[a]; i++) {
      if (i > 0) headA += this.quantityAt(a, i - 1);
      let headB = 0;
      for (let j = 0; j <= state.stopCount[b]; j++) {
        if (j > 0) headB += this.quantityAt(b, j - 1);
        const saved =
          this.leg(state.placeAt(a, i - 1), state.placeAt(a, i)) +
          this.leg(state.placeAt(b, j - 1), state.placeAt(b, j)) -
          this.leg(state.placeAt(a, i - 1), state.placeAt(b, j)) -
          this.leg(state.placeAt(b, j - 1), state.placeAt(a, i));
        if (saved <= GAIN) continue;
        const moved = state.load[b] - headB - (state.load[a] - headA);
        if (saved - this.moreOver(a, b, moved) * this.overPrice <= GAIN) continue;
        this.changeLoads(a, b, moved);
        state.money -= saved;
        this.moveTails(a, i, b, j);
        return true;
      }
    }
    return false;
  }

  /** The first swap of two stops that pays. */
  private swapStops(a: number, b: number): boolean {
    const { state } = this;
    const { sites } = this.flat;
    for (let i = 0; i < state.stopCount[a]; i++) {
      const siteA = state.stops[a * sites + i];
      const freedA = state.detour(a, i, siteA, 1);
      for (let j = 0; j < state.stopCount[b]; j++) {
        const siteB = state.stops[b * sites + j];
        const saved =
          freedA + state.detour(b, j, siteB, 1) - state.detour(a, i, siteB, 1) - state.detour(b, j, siteA, 1);
        if (saved <= GAIN) continue;
        const moved = this.quantityAt(b, j) - this.quantityAt(a, i);
        if (saved - this.moreOver(a, b, moved) * this.overPrice <= GAIN) continue;
        this.changeLoads(a, b, moved);
        state.money -= saved;
        this.put(a, i, siteB);
        this.put(b, j, siteA);
        return true;
      }
    }
    return false;
  }

  private moveTails(a: number, i: number, b: number, j: number): void {
    const { state, tail } = this;
    const { sites } = this.flat;
    const fromA = state.stopCount[a] - i;
    const fromB = state.stopCount[b] - j;
    for (let at = 0; at < fromA; at++) tail[at] = state.stops[a * sites + i + at];
    for (let at = 0; at < fromB; at++) this.put(a, i + at, state.stops[b * sites + j + at]);
    for (let at = 0; at < fromA; at++) this.put(b, j + at, tail[at]);
    state.stopCount[a] = i + fromB;
    state.stopCount[b] = j + fromA;
  }

  private put(slot: number, at: number, site: number): void {
    const { days, sites, vehicles } = this.flat;
    this.state.stops[slot * sites + at] = site;
    this.state.slotOf[site * days + Math.floor(slot / vehicles)] = slot;
  }

  private quantityAt(slot: number, at: number): number {
    const { days, sites, vehicles } = this.flat;
    return this.state.quantity[this.state.stops[slot * sites + at] * days + Math.floor(slot / vehicles)];
  }

  /** Units of overload more, where `moved` units go from route b to route a. */
  private moreOver(a: number, b: number, moved: number): number {
    const { load } = this.state;
    const { capacity } = this.flat;
    const over = (units: number) => Math.max(0, units - capacity);
    return over(load[a] + moved) + over(load[b] - moved) - over(load[a]) - over(load[b]);
  }

  private changeLoads(a: number, b: number, moved: number): void {
    const { state } = this;
    state.overTotal += this.moreOver(a, b, moved);
    state.load[a] += moved;
    state.load[b] -= moved;
  }

  private leg(from: number, to: number): number {
    return from === 0 && to === 0 ? 0 : this.flat.travel[from * this.flat.places + to];
  }
}
