import type { Random } from '../random.js';
import type { OpenState } from './open-state.js';

/** What steers a reinsertion. */
export interface Reinsertion {
  /** Cents per unit short. */
  readonly shortPrice: number;
  /** Detours are taken up to this share dearer or cheaper than they are, at random. */
  readonly noise: number;
  /** Most routes by day. */
  readonly mostRoutes: Int16Array;
}

/**
 * Returns a site that is on no route to the plan, over all days at once: an exact dynamic program on (day, level),
 * given the routes of the others. A visit brings one of: as much as fits; as much as a vehicle has room for; just
 * enough until a later day. A site that cannot be served in full runs short at a price.
 */
export class SiteReinserter {
  // Ways into a route, by day: slot, position, detour, room; dearer ones only where there is more room.
  private readonly waySlot: Int16Array;
  private readonly wayPosition: Int16Array;
  private readonly wayCost: Float64Array;
  private readonly wayRoom: Int32Array;
  private readonly wayCount: Int16Array;
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
    private readonly random: Random,
  ) {
    const { days, vehicles, problem } = state.flat;
    this.waySlot = new Int16Array(days * vehicles);
    this.wayPosition = new Int16Array(days * vehicles);
    this.wayCost = new Float64Array(days * vehicles);
    this.wayRoom = new Int32Array(days * vehicles);
    this.wayCount = new Int16Array(days);
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
    this.findWays(site, steer);
    this.findSendable();
    this.cost.fill(Number.POSITIVE_INFINITY);
    this.reachedCount.fill(0);
    this.reach(0, problem.sites[site].opening, 0, 0, 0);
    for (let day = 0; day < days; day++) this.passDay(site, day, steer.shortPrice);
    this.takeBest(site);
  }

  private findWays(site: number, { noise, mostRoutes }: Reinsertion): void {
    const { state, wayCount } = this;
    const { days, vehicles } = state.flat;
    for (let day = 0; day < days; day++) {
      wayCount[day] = 0;
      let open = 0;
      let empty = -1;
      for (let slot = day * vehicles; slot < (day + 1) * vehicles; slot++) {
        if (state.stopCount[slot] === 0) {
          if (empty < 0) empty = slot;
          continue;
        }
        open++;
        this.addWay(site, day, slot, noise);
      }
      if (empty >= 0 && open < mostRoutes[day]) this.addWay(site, day, empty, noise);
      this.keepUsefulWays(day);
    }
  }

  private addWay(site: number, day: number, slot: number, noise: number): void {
    const { state } = this;
    const room = state.flat.capacity - state.load[slot];
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
    // Kept in order of cost.
    const first = day * state.flat.vehicles;
    let way = first + this.wayCount[day]++;
    for (; way > first && this.wayCost[way - 1] > cheapest; way--) this.moveWay(way - 1, way);
    this.waySlot[way] = slot;
    this.wayPosition[way] = at;
    this.wayCost[way] = cheapest;
    this.wayRoom[way] = room;
  }

  private keepUsefulWays(day: number): void {
    const first = day * this.state.flat.vehicles;
    let kept = 0;
    for (let way = first; way < first + this.wayCount[day]; way++) {
      if (kept > 0 && this.wayRoom[way] <= this.wayRoom[first + kept - 1]) continue;
      this.moveWay(way, first + kept++);
    }
    this.wayCount[day] = kept;
  }

  private moveWay(from: number, to: number): void {
    this.waySlot[to] = this.waySlot[from];
    this.wayPosition[to] = this.wayPosition[from];
    this.wayCost[to] = this.wayCost[from];
    this.wayRoom[to] = this.wayRoom[from];
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
  private passDay(site: number, day: number, shortPrice: number): void {
    const { days, vehicles, demand, problem } = this.state.flat;
    const { opening, minimum, maximum } = problem.sites[site];
    const first = day * vehicles;
    const ways = this.wayCount[day];
    const mostRoom = ways > 0 ? this.wayRoom[first + ways - 1] : -1;
    let drawn = 0;
    for (let before = 0; before < day; before++) drawn += demand[site * days + before];
    for (let i = 0; i < this.reachedCount[day]; i++) {
      const level = this.reached[day * this.levels + i];
      this.bring(site, day, level, 0, 0, shortPrice);
      if (ways === 0) continue;
      if (this.wayCost[first] < 0) this.bring(site, day, level, 0, this.wayCost[first], shortPrice);
      const most = Math.min(maximum - level, mostRoom, this.sendable[day] - (level + drawn - opening));
      if (most <= 0) continue;
      this.tryQuantity(site, day, level, most, shortPrice);
      for (let way = first; way < first + ways && this.wayRoom[way] < most; way++)
        this.tryQuantity(site, day, level, this.wayRoom[way], shortPrice);
      let enough = minimum - level;
      for (let until = day; until < days; until++) {
        enough += demand[site * days + until];
        if (enough >= most) break;
        this.tryQuantity(site, day, level, enough, shortPrice);
      }
    }
  }

  private tryQuantity(site: number, day: number, level: number, quantity: number, shortPrice: number): void {
    if (quantity <= 0) return;
    let way = day * this.state.flat.vehicles;
    while (this.wayRoom[way] < quantity) way++;
    this.bring(site, day, level, quantity, this.wayCost[way], shortPrice, 1);
  }

  private bring(
    site: number,
    day: number,
    level: number,
    quantity: number,
    detour: number,
    shortPrice: number,
    visited = detour < 0 ? 1 : 0,
  ): void {
    const { days, demand, problem } = this.state.flat;
    const { minimum, holdingCost } = problem.sites[site];
    const left = level + quantity - demand[site * days + day];
    const next = left < minimum ? minimum : left;
    const cost =
      this.cost[day * this.levels + level] +
      detour +
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

  private takeBest(site: number): void {
    const { state, levels } = this;
    const { days, vehicles } = state.flat;
    let best = days * levels + this.reached[days * levels];
    for (let i = 1; i < this.reachedCount[days]; i++) {
      const label = days * levels + this.reached[days * levels + i];
      if (this.cost[label] < this.cost[best]) best = label;
    }
    for (let day = days - 1; day >= 0; day--) {
      const quantity = this.brought[best] - 1;
      if (quantity >= 0) {
        let way = day * vehicles;
        while (this.wayRoom[way] < quantity) way++;
        state.putIn(site, day, this.waySlot[way], this.wayPosition[way], quantity);
      }
      best = day * levels + this.cameFrom[best];
    }
    state.follow(site);
  }
}
