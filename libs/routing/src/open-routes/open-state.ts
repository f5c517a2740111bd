import type { FlatOpenProblem } from './flat-open-problem.js';
import type { OpenPlan, OpenProblem } from './open-problem.js';

/**
 * A plan under way: routes, quantities, what they cost. A site may run short and a vehicle may be
 * overloaded here, at a price; such a plan is no answer. `slot` is `day * vehicles + vehicle`, `visit` is `site * days + day`.
 */
export class OpenState {
  /** Sites in order at `slot * sites`, and how many. */
  readonly stops: Int16Array;
  readonly stopCount: Int16Array;
  readonly load: Int32Array;
  /** Units set down, and the slot that brings them (-1: none), by visit. */
  readonly quantity: Int32Array;
  readonly slotOf: Int16Array;
  /** Units delivered to all sites, by day. */
  readonly deliveredByDay: Float64Array;
  /** Cents of holding and units short, by site. */
  readonly holding: Float64Array;
  readonly short: Float64Array;
  /** Cents: travel, holding at sites, holding at the base. Units short of all sites. */
  money: number;
  shortTotal = 0;
  /** Units aboard beyond the capacity, of all routes. */
  overTotal = 0;

  constructor(readonly flat: FlatOpenProblem) {
    const { days, sites, vehicles } = flat;
    this.stops = new Int16Array(days * vehicles * sites);
    this.stopCount = new Int16Array(days * vehicles);
    this.load = new Int32Array(days * vehicles);
    this.quantity = new Int32Array(sites * days);
    this.slotOf = new Int16Array(sites * days).fill(-1);
    this.deliveredByDay = new Float64Array(days);
    this.holding = new Float64Array(sites);
    this.short = new Float64Array(sites);
    this.money = holdingOfBaseUntouched(flat.problem);
    for (let site = 0; site < sites; site++) this.follow(site);
  }

  copyFrom(other: OpenState): void {
    this.stops.set(other.stops);
    this.stopCount.set(other.stopCount);
    this.load.set(other.load);
    this.quantity.set(other.quantity);
    this.slotOf.set(other.slotOf);
    this.deliveredByDay.set(other.deliveredByDay);
    this.holding.set(other.holding);
    this.short.set(other.short);
    this.money = other.money;
    this.shortTotal = other.shortTotal;
    this.overTotal = other.overTotal;
  }

  /** Takes a site off every route. */
  remove(site: number): void {
    const { days } = this.flat;
    for (let day = 0; day < days; day++) if (this.slotOf[site * days + day] >= 0) this.takeOff(site, day);
    this.follow(site);
  }

  /** Takes one visit off its route; the site is not followed anew. */
  takeOff(site: number, day: number): void {
    const { days, sites } = this.flat;
    const visit = site * days + day;
    const slot = this.slotOf[visit];
    const first = slot * sites;
    const last = first + this.stopCount[slot] - 1;
    const at = this.stops.indexOf(site, first);
    this.money -= this.detour(slot, at - first, site, 1);
    this.stops.copyWithin(at, at + 1, last + 1);
    this.stopCount[slot]--;
    this.setQuantity(site, day, slot, 0);
    this.slotOf[visit] = -1;
  }

  /** Puts a visit into a route at a position; the site is not followed anew. */
  putIn(site: number, day: number, slot: number, position: number, quantity: number): void {
    const { days, sites } = this.flat;
    const first = slot * sites;
    this.money += this.detour(slot, position, site, 0);
    this.stops.copyWithin(first + position + 1, first + position, first + this.stopCount[slot]);
    this.stops[first + position] = site;
    this.stopCount[slot]++;
    this.slotOf[site * days + day] = slot;
    this.setQuantity(site, day, slot, quantity);
  }

  /** Changes what a visit sets down; the site is not followed anew. */
  setQuantity(site: number, day: number, slot: number, quantity: number): void {
    const { days, problem, capacity } = this.flat;
    const more = quantity - this.quantity[site * days + day];
    this.quantity[site * days + day] = quantity;
    const load = this.load[slot];
    this.load[slot] += more;
    this.overTotal += Math.max(0, load + more - capacity) - Math.max(0, load - capacity);
    this.deliveredByDay[day] += more;
    this.money -= more * problem.base.holdingCost * (days - day);
  }

  /** Holding and shortage of a site from its quantities. */
  follow(site: number): void {
    const { days, problem, demand } = this.flat;
    const { opening, minimum, holdingCost } = problem.sites[site];
    let level = opening;
    let held = 0;
    let short = 0;
    for (let visit = site * days; visit < (site + 1) * days; visit++) {
      level += this.quantity[visit] - demand[visit];
      if (level < minimum) {
        short += minimum - level;
        level = minimum;
      }
      held += level;
    }
    this.money += held * holdingCost - this.holding[site];
    this.holding[site] = held * holdingCost;
    this.shortTotal += short - this.short[site];
    this.short[site] = short;
  }

  /** Cents that a site costs at a position of a route; `span` stops from there on are passed over. */
  detour(slot: number, position: number, site: number, span: number): number {
    const { travel, places } = this.flat;
    const before = this.placeAt(slot, position - 1);
    const after = this.placeAt(slot, position + span);
    const place = site + 1;
    const direct = before === 0 && after === 0 ? 0 : travel[before * places + after];
    return travel[before * places + place] + travel[place * places + after] - direct;
  }

  /** Place of the stop at a position; the base before the first and after the last. */
  placeAt(slot: number, position: number): number {
    return position < 0 || position >= this.stopCount[slot]
      ? 0
      : this.stops[slot * this.flat.sites + position] + 1;
  }

  toPlan(): OpenPlan {
    const { days, sites, vehicles } = this.flat;
    const routes = [];
    for (let slot = 0; slot < days * vehicles; slot++) {
      if (this.stopCount[slot] === 0) continue;
      const day = Math.floor(slot / vehicles);
      const stops = Array.from(
        this.stops.subarray(slot * sites, slot * sites + this.stopCount[slot]),
        (site) => ({ site, quantity: this.quantity[site * days + day] }),
      );
      routes.push({ day, stops });
    }
    return { routes };
  }
}

/** The state of a plan. */
export function stateOfPlan(flat: FlatOpenProblem, plan: OpenPlan): OpenState {
  const state = new OpenState(flat);
  const used = new Array<number>(flat.days).fill(0);
  for (const { day, stops } of plan.routes) {
    const slot = day * flat.vehicles + used[day]++;
    stops.forEach(({ site, quantity }, position) => {
      state.putIn(site, day, slot, position, quantity);
    });
  }
  for (let site = 0; site < flat.sites; site++) state.follow(site);
  return state;
}

function holdingOfBaseUntouched({ base, days }: OpenProblem): number {
  let level = base.opening;
  let held = 0;
  for (let day = 0; day < days; day++) {
    level += base.production[day];
    held += level;
  }
  return held * base.holdingCost;
}

/** No site runs short, no vehicle is overloaded. */
export const isFeasible = (state: OpenState): boolean => state.shortTotal === 0 && state.overTotal === 0;

/** First the units short or overloaded, then the money. */
export function isBetter(a: OpenState, b: OpenState): boolean {
  const wrong = a.shortTotal + a.overTotal - b.shortTotal - b.overTotal;
  return wrong < 0 || (wrong === 0 && a.money < b.money - 0.5);
}
