import type { Problem } from '../../problem.js';
import type { FlatProblem } from './flat-problem.js';

const TOLERANCE = 1e-9;

/** What may still be taken at each source, so that no later day runs out. */
export class SupplySlack {
  /** At source x days + day; Infinity where a limit does not apply. */
  private readonly packs: Float64Array;
  private readonly units: Float64Array;
  private readonly takenPacks: Float64Array;
  private readonly takenUnits: Float64Array;
  private readonly days: number;
  private readonly packSize: number;
  private readonly stores: Problem['stores'];

  constructor(flat: FlatProblem) {
    const { stores, days, packSize } = flat.problem;
    this.stores = stores;
    this.days = days;
    this.packSize = packSize;
    this.packs = new Float64Array(stores.length * days);
    this.units = new Float64Array(stores.length * days);
    this.takenPacks = new Float64Array(stores.length * days);
    this.takenUnits = new Float64Array(stores.length * days);
    for (let source = 0; source < stores.length; source++) this.renew(source);
  }

  /** Most packs that a route from the source with this own use may take on a day; negative: not even its own use. */
  packsFor(source: number, day: number, ownUse: number): number {
    const cell = source * this.days + day;
    const byUnits = Math.floor((this.units[cell] - ownUse) / this.packSize + TOLERANCE);
    return Math.min(byUnits, this.packs[cell]);
  }

  take(source: number, day: number, packs: number, ownUse: number): void {
    const cell = source * this.days + day;
    this.takenPacks[cell] += packs;
    this.takenUnits[cell] += packs * this.packSize + ownUse;
    this.renew(source);
  }

  private renew(source: number): void {
    const { days, takenPacks, takenUnits } = this;
    const base = source * days;
    const supply = this.stores[source].supply;
    let packs = 0;
    let units = 0;
    for (let cell = base; cell < base + days; cell++) {
      packs += takenPacks[cell];
      units += takenUnits[cell];
      this.packs[cell] = (supply?.packsByDay[cell - base] ?? Number.POSITIVE_INFINITY) - packs;
      this.units[cell] = (supply?.unitsByDay?.[cell - base] ?? Number.POSITIVE_INFINITY) - units;
    }
    for (let cell = base + days - 2; cell >= base; cell--) {
      if (this.packs[cell + 1] < this.packs[cell]) this.packs[cell] = this.packs[cell + 1];
      if (this.units[cell + 1] < this.units[cell]) this.units[cell] = this.units[cell + 1];
    }
  }
}
