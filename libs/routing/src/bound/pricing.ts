import { type FlatRoutes, flatRoutes } from './flat-routes.js';
import { type Relaxation, standingKey } from './relaxation.js';

/**
 * Finds, for every route and day, the drops with the least reduced cost under given duals. What a drop is worth at a
 * store depends on the store, day and packs alone, so that a table and the chain of leg limits are enough.
 */
export class Pricing {
  readonly flat: FlatRoutes;
  private readonly days: number;
  private readonly width: number;
  /** Worth of a drop, and of the best drop of at most so many packs, at ((source x stores + store) x days + day) x width + packs. */
  private readonly worth: Float64Array;
  private readonly best: Float64Array;
  /** Price of an hour, at group x days + day. */
  private readonly blockPrice: Float64Array;
  private readonly dutyPrice: Float64Array;
  private readonly crewBlockPrice: Float64Array;
  private readonly crewDutyPrice: Float64Array;
  /** Price of a pack of own use, at source x days + day. */
  private readonly usePrice: Float64Array;
  private readonly bookedPrice: Float64Array;
  /** What a route earns on a day by keeping a standing visit, at route x days + day. */
  private readonly standingWorth = new Map<number, number>();
  private readonly standingRow = new Map<number, number>();
  private readonly chain: Float64Array[];

  constructor(private readonly relaxation: Relaxation) {
    const { problem, mostPacks, vehicles, crews } = relaxation;
    this.flat = flatRoutes(relaxation);
    this.days = problem.days;
    this.width = mostPacks + 1;
    const cells = this.flat.sources.length * problem.stores.length * this.days;
    this.worth = new Float64Array(cells * this.width);
    this.best = new Float64Array(cells * this.width);
    this.blockPrice = new Float64Array(vehicles.length * this.days);
    this.dutyPrice = new Float64Array(vehicles.length * this.days);
    this.crewBlockPrice = new Float64Array(crews.length * this.days);
    this.crewDutyPrice = new Float64Array(crews.length * this.days);
    this.usePrice = new Float64Array(this.flat.sources.length * this.days);
    this.bookedPrice = new Float64Array(problem.booked.length);
    const longest = problem.routes.reduce((most, { stops }) => Math.max(most, stops.length), 1);
    const longestBooked = problem.booked.reduce((most, { stops }) => Math.max(most, stops.length), longest);
    this.chain = Array.from({ length: longestBooked + 1 }, () => new Float64Array(this.width));
    if (relaxation.standing.size > 0) this.findStanding();
  }

  private findStanding(): void {
    const { problem, standing } = this.relaxation;
    problem.routes.forEach(({ kind, source, stops }, route) => {
      for (let day = 0; day < this.days; day++) {
        const row = standing.get(standingKey(kind, source, day, stops));
        if (row !== undefined) this.standingRow.set(route * this.days + day, row);
      }
    });
  }

  /** Takes the duals of the relaxation's rows. */
  setDuals(duals: Float64Array): void {
    this.tabulateDrops(duals);
    const { vehicles, crews, booked } = this.relaxation;
    vehicles.forEach(({ blockRow, dutyRow }, group) => {
      for (let day = 0; day < this.days; day++) {
        this.blockPrice[group * this.days + day] = -duals[blockRow[day]];
        this.dutyPrice[group * this.days + day] = -duals[dutyRow[day]];
      }
    });
    const sum = (rows: readonly number[]) => rows.reduce((total, row) => total - duals[row], 0);
    crews.forEach(({ blockRows, dutyRows }, group) => {
      for (let day = 0; day < this.days; day++) {
        this.crewBlockPrice[group * this.days + day] = sum(blockRows[day]);
        this.crewDutyPrice[group * this.days + day] = sum(dutyRows[day]);
      }
    });
    booked.forEach((row, at) => {
      this.bookedPrice[at] = -duals[row];
    });
    for (const [cell, row] of this.standingRow) this.standingWorth.set(cell, duals[row]);
  }

  private tabulateDrops(duals: Float64Array): void {
    const { worth, best, width, days } = this;
    const { problem, stores, supplies, units } = this.relaxation;
    let at = 0;
    this.flat.sources.forEach((source, ordinal) => {
      const supply = supplies[source];
      const packCost = (problem.stores[source].supply?.packCost ?? 0) / units.centsPerCost;
      for (const { perPack, cuts } of stores)
        for (let day = 0; day < days; day++) {
          const usePrice = supply?.unitRow ? -duals[supply.unitRow[day]] : 0;
          this.usePrice[ordinal * days + day] = usePrice;
          let pack = -packCost - usePrice + (supply ? duals[supply.packRow[day]] : 0);
          for (const row of perPack[day]) pack += duals[row];
          for (let packs = 0; packs < width; packs++) {
            let value = packs * pack;
            for (const { row, weights } of cuts) value += duals[row] * weights[packs];
            worth[at] = value;
            best[at] = packs > 0 && best[at - 1] > value ? best[at - 1] : value;
            at++;
          }
        }
    });
  }

  /** Reduced cost of travelling the route on the day, before any drop. */
  private travelCost(route: number, day: number, condition: number): number {
    const { flat, days } = this;
    const group = flat.group[route];
    if (group < 0) return this.bookedPrice[route - this.relaxation.problem.routes.length];
    const crew = flat.crew[route];
    const at = group * days + day;
    let blockPrice = this.blockPrice[at];
    let dutyPrice = this.dutyPrice[at];
    if (crew >= 0) {
      blockPrice += this.crewBlockPrice[crew * days + day];
      dutyPrice += this.crewDutyPrice[crew * days + day];
    }
    const kept = this.standingWorth.size === 0 ? 0 : (this.standingWorth.get(route * days + day) ?? 0);
    return (
      flat.cost[condition] +
      flat.ownUse[condition] * this.usePrice[flat.source[route] * days + day] +
      flat.blockHours[condition] * blockPrice +
      flat.dutyHours[condition] * dutyPrice -
      kept
    );
  }

  private cell(route: number, stop: number, day: number): number {
    const { flat } = this;
    const stores = this.relaxation.problem.stores.length;
    return ((flat.source[route] * stores + flat.stops[stop]) * this.days + day) * this.width;
  }

  /** Least reduced cost of any drops on the route and day; above `enough`, any figure above it. */
  leastReducedCost(route: number, day: number, condition: number, enough = Number.POSITIVE_INFINITY): number {
    const { flat, best } = this;
    const first = flat.stopsAt[route];
    const stops = flat.stopsAt[route + 1] - first;
    const legs = flat.legsAt[condition];
    let least = this.travelCost(route, day, condition);
    for (let at = 0; at < stops; at++)
      least -= best[this.cell(route, first + at, day) + flat.legPacks[legs + at]];
    if (stops === 1 || least > enough) return least;
    return this.travelCost(route, day, condition) - this.bestWorth(route, day, condition);
  }

  /** Best worth of drops that keep the chain of leg limits; fills `chain` from the last stop on. */
  private bestWorth(route: number, day: number, condition: number): number {
    const { flat, worth, best, chain } = this;
    const first = flat.stopsAt[route];
    const last = flat.stopsAt[route + 1] - first - 1;
    const legs = flat.legsAt[condition];
    const lastCell = this.cell(route, first + last, day);
    const lastLimit = flat.legPacks[legs + last];
    for (let aboard = 0; aboard <= lastLimit; aboard++) chain[last][aboard] = best[lastCell + aboard];
    for (let at = last - 1; at >= 0; at--) {
      const cell = this.cell(route, first + at, day);
      const limit = flat.legPacks[legs + at];
      const after = chain[at + 1];
      const limitAfter = flat.legPacks[legs + at + 1];
      for (let aboard = at === 0 ? limit : 0; aboard <= limit; aboard++) {
        let most = Number.NEGATIVE_INFINITY;
        for (let drop = 0; drop <= aboard; drop++) {
          const rest = aboard - drop;
          const value = worth[cell + drop] + after[Math.min(rest, limitAfter)];
          if (value > most) most = value;
        }
        chain[at][aboard] = most;
      }
    }
    return chain[0][flat.legPacks[legs]];
  }

  /** Drops with the least reduced cost on the route and day. */
  bestDrops(route: number, day: number): number[] {
    const { flat, worth, chain } = this;
    const condition = flat.conditionAt[route * this.days + day];
    this.bestWorth(route, day, condition);
    const first = flat.stopsAt[route];
    const stops = flat.stopsAt[route + 1] - first;
    const legs = flat.legsAt[condition];
    let aboard = flat.legPacks[legs];
    return Array.from({ length: stops }, (_, at) => {
      aboard = Math.min(aboard, flat.legPacks[legs + at]);
      const cell = this.cell(route, first + at, day);
      let chosen = 0;
      let most = Number.NEGATIVE_INFINITY;
      for (let drop = 0; drop <= aboard; drop++) {
        const rest = aboard - drop;
        const after = at + 1 < stops ? chain[at + 1][Math.min(rest, flat.legPacks[legs + at + 1])] : 0;
        if (worth[cell + drop] + after > most) {
          most = worth[cell + drop] + after;
          chosen = drop;
        }
      }
      aboard -= chosen;
      return chosen;
    });
  }

  /** Every drops of the route and day whose reduced cost is at most `most`. */
  dropsWithin(route: number, day: number, most: number): { drops: number[]; reducedCost: number }[] {
    const { flat, worth, chain } = this;
    const condition = flat.conditionAt[route * this.days + day];
    const travel = this.travelCost(route, day, condition);
    if (travel - this.bestWorth(route, day, condition) > most) return [];
    const first = flat.stopsAt[route];
    const stops = flat.stopsAt[route + 1] - first;
    const legs = flat.legsAt[condition];
    const found: { drops: number[]; reducedCost: number }[] = [];
    const extend = (drops: readonly number[], aboard: number, reducedCost: number) => {
      const at = drops.length;
      if (at === stops) {
        found.push({ drops: [...drops], reducedCost });
        return;
      }
      const cell = this.cell(route, first + at, day);
      const limit = Math.min(aboard, flat.legPacks[legs + at]);
      for (let drop = 0; drop <= limit; drop++) {
        const after = reducedCost - worth[cell + drop];
        const rest = at + 1 < stops ? chain[at + 1][Math.min(limit - drop, flat.legPacks[legs + at + 1])] : 0;
        if (after - rest <= most) extend([...drops, drop], limit - drop, after);
      }
    };
    extend([], flat.legPacks[legs], travel);
    return found;
  }
}
