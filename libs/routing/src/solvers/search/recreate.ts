import type { Random } from '../../random.js';
import { CandidateHeap } from './candidate-heap.js';
import { Insertion } from './insertion.js';
import { placeTrip } from './place-trip.js';
import type { SearchState } from './search-state.js';

/** How a round of insertions ranks and skips candidates. */
export interface Taste {
  /** Candidates are ranked by saving / duty hours ^ this. */
  readonly hoursPower: number;
  /** Relative noise on a candidate's rank. */
  readonly noise: number;
  /** Chance that a candidate route is not looked at. */
  readonly blink: number;
  /** What a pack must save beyond its cost (cents). */
  readonly packWorth: number;
}

/** Inserts trips, the best one first, until none among the given stores pays. */
export class Recreate {
  private readonly heap = new CandidateHeap();
  private readonly insertion: Insertion;
  private readonly inRound: Uint8Array;
  private readonly shortest: Float64Array;

  constructor(
    private readonly state: SearchState,
    private readonly random: Random,
  ) {
    this.insertion = new Insertion(state);
    this.inRound = new Uint8Array(state.flat.problem.stores.length);
    this.shortest = shortestDuty(state);
  }

  run(stores: readonly number[], taste: Taste): void {
    this.state.levels.refresh();
    this.insertion.packWorth = taste.packWorth;
    this.collect(stores, taste);
    const { heap, insertion, state } = this;
    while (heap.size > 0) {
      const route = heap.topRoute();
      const day = heap.topDay();
      const oldScore = heap.topScore();
      const value = this.fits(route, day) ? insertion.value(route, day) : 0;
      if (value <= 0) {
        heap.pop();
        continue;
      }
      const score = this.score(route, day, value, taste);
      heap.rescore(Math.min(score, oldScore));
      if (heap.topRoute() !== route || heap.topDay() !== day) continue;
      if (placeTrip(state, route, day, insertion.drops) < 0) heap.pop();
      else state.levels.refresh();
    }
  }

  private collect(stores: readonly number[], taste: Taste): void {
    const { random, inRound, state } = this;
    const { routesFirstTo, stopsAt, stops } = state.flat;
    const openDays = this.openDays();
    this.heap.size = 0;
    for (const store of stores) inRound[store] = 1;
    for (const store of stores) {
      for (const route of routesFirstTo[store]) {
        let at = stopsAt[route] + 1;
        while (at < stopsAt[route + 1] && inRound[stops[at]]) at++;
        if (at < stopsAt[route + 1]) continue;
        if (taste.blink > 0 && random() < taste.blink) continue;
        this.collectDays(route, openDays[state.flat.start[route]], taste);
      }
    }
    for (const store of stores) inRound[store] = 0;
  }

  private collectDays(route: number, days: readonly number[], taste: Taste): void {
    for (const day of days) {
      if (!this.fits(route, day)) continue;
      const value = this.insertion.value(route, day);
      if (value <= 0) continue;
      const noise = taste.noise > 0 ? 1 + taste.noise * this.random() : 1;
      this.heap.push(this.score(route, day, value, taste) * noise, route, day);
    }
  }

  private score(route: number, day: number, value: number, taste: Taste): number {
    if (taste.hoursPower === 0) return value;
    const { flat } = this.state;
    const hours = flat.dutyHours[flat.conditionAt[route * flat.days + day]];
    return value / (taste.hoursPower === 1 ? hours : hours ** taste.hoursPower);
  }

  private fits(route: number, day: number): boolean {
    const { flat, hours } = this.state;
    const condition = flat.conditionAt[route * flat.days + day];
    if (condition < 0) return false;
    const block = flat.blockHours[condition];
    const duty = flat.dutyHours[condition];
    for (const vehicle of flat.vehiclesOf[flat.start[route]])
      if (hours.fits(vehicle, day, block, duty)) return true;
    return false;
  }

  /** Days on which some vehicle of each start has time for its shortest route. */
  private openDays(): number[][] {
    const { flat, hours } = this.state;
    return flat.vehiclesOf.map((vehicles, start) => {
      const open: number[] = [];
      for (let day = 0; day < flat.days; day++) {
        if (vehicles.some((vehicle) => hours.freeDuty[vehicle * flat.days + day] >= this.shortest[start]))
          open.push(day);
      }
      return open;
    });
  }
}

function shortestDuty({ flat }: SearchState): Float64Array {
  const shortest = new Float64Array(flat.vehiclesOf.length).fill(Number.POSITIVE_INFINITY);
  for (let route = 0; route < flat.firstBooked; route++) {
    for (let day = 0; day < flat.days; day++) {
      const condition = flat.conditionAt[route * flat.days + day];
      const start = flat.start[route];
      if (condition >= 0 && start >= 0)
        shortest[start] = Math.min(shortest[start], flat.dutyHours[condition]);
    }
  }
  return shortest;
}
