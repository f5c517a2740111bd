import type { Random } from '../random.js';
import type { OpenState } from './open-state.js';
import { type FindWays, WaysIn } from './ways-in.js';

/** What steers a reinsertion. */
export interface Reinsertion extends FindWays {
  /** Cents per unit short. */
  readonly shortPrice: number;
  /** Cents per unit aboard beyond the capacity. */
  readonly overPrice: number;
}

/**
 * Returns a site that is on no route to the plan, over all days at once: an exact dynamic program on (day, level),
 * given the routes of the others. A visit brings one of: as much as fits; as much as a vehicle has room for; just
 * enough until a later day. A site that cannot be served in full runs short at a price.
 */
export class SiteReinserter {
  private readonly ways: WaysIn;
  // Labels of the dynamic program, at `day * levels + level`.
  private readonly levels: number;
  private readonly cost: Float64Array;
  private readonly cameFrom: Int32Array;
  private readonly brought: Int32Array;
  private readonly reached: Int32Array;
  private readonly reachedCount: Int32Array;
  // Most that the base can have sent to the site, cumulated, by day.
  private readonly sendable: Float64Array;

  constructor(
    private readonly state: OpenState,
    random: Random,
  ) {
    const { days, problem } = state.flat;
    this.ways = new WaysIn(state, random);
    this.levels = Math.max(0, ...problem.sites.map((site) => Math.max(site.opening, site.maximum))) + 1;
    this.cost = new Float64Array((days + 1) * this.levels);
    this.cameFrom = new Int32Array((days + 1) * this.levels);
    this.brought = new Int32Array((days + 1) * this.levels);
    this.reached = new Int32Array((days + 1) * this.levels);
    this.reachedCount = new Int32Array(days + 1);
    this.sendable = new Float64Array(days);
  }

  reinsert(site: number, steer: Reinsertion): void {
    const { days, problem } = this.state.flat;
    this.ways.find(site, steer);
    this.findSendable();
    this.cost.fill(Number.POSITIVE_INFINITY);
    this.reachedCount.fill(0);
    this.reach(0, problem.sites[site].opening, 0, 0, 0);
    for (let day = 0; day < days; day++) this.passDay(site, day, steer);
    this.takeBest(site, steer.overPrice);
  }

  private findSendable(): void {
    const { days, readyByDay } = this.state.flat;
    let sent = 0;
    for (let day = 0; day < days; day++) {
      sent += this.state.deliveredByDay[day];
      this.sendable[day] = readyByDay[day] - sent;
    }
    for (let day = days - 2; day >= 0; day--)
      this.sendable[day] = Math.min(this.sendable[day], this.sendable[day + 1]);
  }

  /** From every level reached at the start of a day: no visit, and a visit with each quantity worth a try. */
  private passDay(site: number, day: number, steer: Reinsertion): void {
    const { days, vehicles, demand, problem, capacity } = this.state.flat;
    const { opening, minimum, maximum } = problem.sites[site];
    const first = day * vehicles;
    const ways = this.ways.count[day];
    let drawn = 0;
    for (let before = 0; before < day; before++) drawn += demand[site * days + before];
    for (let i = 0; i < this.reachedCount[day]; i++) {
      const level = this.reached[day * this.levels + i];
      this.bring(site, day, level, 0, 0, steer.shortPrice, false);
      if (ways === 0) continue;
      if (this.ways.cost[first] < 0)
        this.bring(site, day, level, 0, this.ways.cost[first], steer.shortPrice, true);
      const most = Math.min(maximum - level, capacity, this.sendable[day] - (level + drawn - opening));
      if (most <= 0) continue;
      this.tryQuantity(site, day, level, most, steer);
      for (let way = first; way < first + ways && this.ways.room[way] < most; way++)
        this.tryQuantity(site, day, level, this.ways.room[way], steer);
      let enough = minimum - level;
      for (let until = day; until < days; until++) {
        enough += demand[site * days + until];
        if (enough >= most) break;
        this.tryQuantity(site, day, level, enough, steer);
      }
    }
  }

  private tryQuantity(site: number, day: number, level: number, quantity: number, steer: Reinsertion): void {
    if (quantity <= 0) return;
    const way = this.ways.cheapest(day, quantity, steer.overPrice);
    const over = Math.max(0, quantity - this.ways.room[way]);
    this.bring(
      site,
      day,
      level,
      quantity,
      this.ways.cost[way] + over * steer.overPrice,
      steer.shortPrice,
      true,
    );
  }

  private bring(
    site: number,
    day: number,
    level: number,
    quantity: number,
    price: number,
    shortPrice: number,
    visited: boolean,
  ): void {
    const { days, demand, problem } = this.state.flat;
    const { minimum, holdingCost } = problem.sites[site];
    const left = level + quantity - demand[site * days + day];
    const next = Math.max(left, minimum);
    const cost =
      this.cost[day * this.levels + level] +
      price +
      (next - left) * shortPrice +
      next * holdingCost -
      quantity * problem.base.holdingCost * (days - day);
    // Quantities are kept one up, so that 0 says "no visit".
    this.reach(day + 1, next, cost, level, visited ? quantity + 1 : 0);
  }

  private reach(day: number, level: number, cost: number, from: number, brought: number): void {
    const label = day * this.levels + level;
    if (cost >= this.cost[label]) return;
    if (this.cost[label] === Number.POSITIVE_INFINITY)
      this.reached[day * this.levels + this.reachedCount[day]++] = level;
    this.cost[label] = cost;
    this.cameFrom[label] = from;
    this.brought[label] = brought;
  }

  private takeBest(site: number, overPrice: number): void {
    const { state, levels } = this;
    const { days } = state.flat;
    let best = days * levels + this.reached[days * levels];
    for (let i = 1; i < this.reachedCount[days]; i++) {
      const label = days * levels + this.reached[days * levels + i];
      if (this.cost[label] < this.cost[best]) best = label;
    }
    for (let day = days - 1; day >= 0; day--) {
      const quantity = this.brought[best] - 1;
      if (quantity >= 0) {
        const way = this.ways.cheapest(day, quantity, overPrice);
        state.putIn(site, day, this.ways.slot[way], this.ways.position[way], quantity);
      }
      best = day * levels + this.cameFrom[best];
    }
    state.follow(site);
  }
}
