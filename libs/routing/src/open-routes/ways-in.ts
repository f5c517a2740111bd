import type { Random } from '../random.js';
import type { OpenState } from './open-state.js';

/** What steers the choice of ways in. */
export interface FindWays {
  /** Detours are taken up to this share dearer or cheaper than they are, at random. */
  readonly noise: number;
  /** Most routes by day. */
  readonly mostRoutes: Int16Array;
  /** A day on which a new route costs nothing to its first stop; -1: none. */
  readonly freeOpening: number;
}

/** The ways of a site into the routes of each day: dearer ones only where there is more room. */
export class WaysIn {
  // At `day * vehicles + way`, the cheapest way first.
  readonly slot: Int16Array;
  readonly position: Int16Array;
  /** Cents of the detour. */
  readonly cost: Float64Array;
  /** Units that still fit the vehicle. */
  readonly room: Int32Array;
  /** Ways by day. */
  readonly count: Int16Array;

  constructor(
    private readonly state: OpenState,
    private readonly random: Random,
  ) {
    const { days, vehicles } = state.flat;
    this.slot = new Int16Array(days * vehicles);
    this.position = new Int16Array(days * vehicles);
    this.cost = new Float64Array(days * vehicles);
    this.room = new Int32Array(days * vehicles);
    this.count = new Int16Array(days);
  }

  /** Finds the ways of a site that is on no route. */
  find(site: number, { noise, mostRoutes, freeOpening }: FindWays): void {
    const { state, count } = this;
    const { days, vehicles } = state.flat;
    for (let day = 0; day < days; day++) {
      count[day] = 0;
      let open = 0;
      let empty = -1;
      for (let slot = day * vehicles; slot < (day + 1) * vehicles; slot++) {
        if (state.stopCount[slot] === 0) {
          if (empty < 0) empty = slot;
          continue;
        }
        open++;
        this.add(site, day, slot, noise);
      }
      if (empty >= 0 && open < mostRoutes[day]) this.add(site, day, empty, noise, day === freeOpening);
      this.keepUseful(day);
    }
  }

  private add(site: number, day: number, slot: number, noise: number, free = false): void {
    const { state } = this;
    const room = Math.max(0, state.flat.capacity - state.load[slot]);
    let cheapest = Number.POSITIVE_INFINITY;
    let at = 0;
    for (let position = 0; position <= state.stopCount[slot]; position++) {
      const detour = state.detour(slot, position, site, 0);
      if (detour < cheapest) {
        cheapest = detour;
        at = position;
      }
    }
    if (noise > 0) cheapest *= 1 + noise * (2 * this.random() - 1);
    if (free) cheapest = 0;
    // Kept in order of cost.
    const first = day * state.flat.vehicles;
    let way = first + this.count[day]++;
    for (; way > first && this.cost[way - 1] > cheapest; way--) this.move(way - 1, way);
    this.slot[way] = slot;
    this.position[way] = at;
    this.cost[way] = cheapest;
    this.room[way] = room;
  }

  private keepUseful(day: number): void {
    const first = day * this.state.flat.vehicles;
    let kept = 0;
    for (let way = first; way < first + this.count[day]; way++) {
      if (kept > 0 && this.room[way] <= this.room[first + kept - 1]) continue;
      this.move(way, first + kept++);
    }
    this.count[day] = kept;
  }

  private move(from: number, to: number): void {
    this.slot[to] = this.slot[from];
    this.position[to] = this.position[from];
    this.cost[to] = this.cost[from];
    this.room[to] = this.room[from];
  }

  /** The way into a route that costs least for a quantity, overload included. */
  cheapest(day: number, quantity: number, overPrice: number): number {
    const first = day * this.state.flat.vehicles;
    let best = first;
    let least = Number.POSITIVE_INFINITY;
    for (let way = first; way < first + this.count[day]; way++) {
      const over = quantity - this.room[way];
      const cost = this.cost[way] + (over > 0 ? over * overPrice : 0);
      if (cost < least) {
        least = cost;
        best = way;
      }
      if (over <= 0) break;
    }
    return best;
  }
}
