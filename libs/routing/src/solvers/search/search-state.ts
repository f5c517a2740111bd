import { CrewHours, type Duty } from '../../crews/crew-hours.js';
import type { Plan } from '../../plan.js';
import type { FlatProblem } from './flat-problem.js';
import { StandingKept } from './standing-kept.js';
import { StoreLevels } from './store-levels.js';
import { SupplySlack } from './supply-slack.js';
import { VehicleHours } from './vehicle-hours.js';

// Kinds of journal entry.
const ADD = 0;
const REMOVE = 1;
const DROP = 2;
const CREW = 3;

/**
 * A plan under change. Every trip and booked route has a slot; every change is written to a journal, so
 * that `rollback` undoes all since the last `commit`. The caller checks limits before it changes anything.
 */
export class SearchState {
  readonly levels: StoreLevels;
  readonly hours: VehicleHours;
  readonly supply: SupplySlack;
  readonly crews: CrewHours;
  readonly standing: StandingKept;

  readonly route: number[] = [];
  readonly vehicle: number[] = [];
  readonly day: number[] = [];
  readonly crew: number[] = [];
  /** Packs set down, at slot x maxStops + stop. */
  readonly drops: number[] = [];

  /** Slots of trips that may be removed; booked routes are not among them. */
  readonly active: number[] = [];
  readonly slotsAt: readonly number[][];
  readonly slotsOn: readonly number[][];

  /** Travel, packs and changes (cents). */
  money: number;
  private readonly place: number[] = [];
  private readonly free: number[] = [];
  private readonly limbo: number[] = [];
  private readonly journal: number[] = [];
  private before = { money: 0, stores: 0 };

  constructor(
    readonly flat: FlatProblem,
    plan: Plan,
  ) {
    const { problem } = flat;
    this.levels = new StoreLevels(flat);
    this.hours = new VehicleHours(problem);
    this.supply = new SupplySlack(flat);
    this.crews = new CrewHours(problem);
    this.standing = new StandingKept(flat);
    this.money = this.standing.dropped * problem.changePrice;
    this.slotsAt = problem.stores.map(() => []);
    this.slotsOn = Array.from({ length: problem.days }, () => []);
    problem.booked.forEach((booked, b) => {
      this.add(flat.firstBooked + b, -1, booked.day, plan.bookedCrews[b], plan.bookedDrops[b]);
    });
    for (const trip of plan.trips) this.add(trip.route, trip.vehicle, trip.day, trip.crew, trip.drops);
    this.commit();
  }

  /** Cost of the plan (cents). */
  get cost(): number {
    return this.money + this.levels.total;
  }

  conditionOf(slot: number): number {
    return this.flat.conditionAt[this.route[slot] * this.flat.days + this.day[slot]];
  }

  stopCount(slot: number): number {
    return this.flat.stopsAt[this.route[slot] + 1] - this.flat.stopsAt[this.route[slot]];
  }

  stopOf(slot: number, index: number): number {
    return this.flat.stops[this.flat.stopsAt[this.route[slot]] + index];
  }

  dutyOf(slot: number): Duty {
    const condition = this.conditionOf(slot);
    return {
      day: this.day[slot],
      group: this.flat.crewGroup[this.route[slot]],
      blockHours: this.flat.blockHours[condition],
      dutyHours: this.flat.dutyHours[condition],
    };
  }

  add(route: number, vehicle: number, day: number, crew: number, drops: ArrayLike<number>): number {
    const slot = this.free.pop() ?? this.route.length;
    this.route[slot] = route;
    this.vehicle[slot] = vehicle;
    this.day[slot] = day;
    this.crew[slot] = crew;
    for (let i = 0; i < this.flat.maxStops; i++) this.drops[slot * this.flat.maxStops + i] = drops[i] ?? 0;
    this.count(slot, 1);
    this.journal.push(ADD, slot, 0, 0);
    return slot;
  }

  remove(slot: number): void {
    this.count(slot, -1);
    this.journal.push(REMOVE, slot, 0, 0);
    this.limbo.push(slot);
  }

  setDrop(slot: number, index: number, packs: number): void {
    const at = slot * this.flat.maxStops + index;
    this.journal.push(DROP, slot, index, this.drops[at]);
    this.changeDrop(slot, index, packs);
  }

  setCrew(slot: number, crew: number): void {
    this.journal.push(CREW, slot, this.crew[slot], 0);
    this.changeCrew(slot, crew);
  }

  commit(): void {
    this.journal.length = 0;
    for (const slot of this.limbo) this.free.push(slot);
    this.limbo.length = 0;
    this.before = { money: this.money, stores: this.levels.total };
  }

  rollback(): void {
    const { journal } = this;
    while (journal.length > 0) {
      const old = journal.pop()!;
      const index = journal.pop()!;
      const slot = journal.pop()!;
      const op = journal.pop()!;
      if (op === ADD) {
        this.count(slot, -1);
        this.free.push(slot);
      } else if (op === REMOVE) this.count(slot, 1);
      else if (op === DROP) this.changeDrop(slot, index, old);
      else this.changeCrew(slot, index);
    }
    this.limbo.length = 0;
    this.money = this.before.money;
    this.levels.total = this.before.stores;
  }

  toPlan(): Plan {
    const { flat } = this;
    const dropsOf = (slot: number) =>
      this.drops.slice(slot * flat.maxStops, slot * flat.maxStops + this.stopCount(slot));
    const booked = flat.problem.booked.map((_, b) => b);
    return {
      trips: [...this.active]
        .sort((a, b) => this.day[a] - this.day[b] || this.vehicle[a] - this.vehicle[b] || a - b)
        .map((slot) => ({
          vehicle: this.vehicle[slot],
          day: this.day[slot],
          route: this.route[slot],
          drops: dropsOf(slot),
          crew: this.crew[slot],
        })),
      bookedDrops: booked.map(dropsOf),
      bookedCrews: booked.map((slot) => this.crew[slot]),
    };
  }

  private count(slot: number, sign: 1 | -1): void {
    const { flat } = this;
    const route = this.route[slot];
    const vehicle = this.vehicle[slot];
    const day = this.day[slot];
    const condition = this.conditionOf(slot);
    let packs = 0;
    for (let i = 0; i < this.stopCount(slot); i++) {
      const stop = this.stopOf(slot, i);
      const drop = this.drops[slot * flat.maxStops + i];
      packs += drop;
      if (drop > 0) this.levels.deliver(stop, day, sign * drop);
      listed(this.slotsAt[stop], slot, sign);
    }
    listed(this.slotsOn[day], slot, sign);
    this.supply.take(flat.source[route], day, sign * packs, sign * flat.ownUse[condition]);
    if (this.crew[slot] >= 0) this.crews.work(this.crew[slot], this.dutyOf(slot), sign);
    this.money += sign * (flat.cost[condition] + packs * flat.packCost[route]);
    if (vehicle < 0) return;
    this.hours.use(vehicle, day, sign * flat.blockHours[condition], sign * flat.dutyHours[condition]);
    this.money += this.standing.count(route, vehicle, day, sign);
    this.listActive(slot, sign);
  }

  private changeDrop(slot: number, index: number, packs: number): void {
    const at = slot * this.flat.maxStops + index;
    const more = packs - this.drops[at];
    const route = this.route[slot];
    this.drops[at] = packs;
    this.levels.deliver(this.stopOf(slot, index), this.day[slot], more);
    this.supply.take(this.flat.source[route], this.day[slot], more, 0);
    this.money += more * this.flat.packCost[route];
  }

  private changeCrew(slot: number, crew: number): void {
    const duty = this.dutyOf(slot);
    if (this.crew[slot] >= 0) this.crews.work(this.crew[slot], duty, -1);
    this.crew[slot] = crew;
    if (crew >= 0) this.crews.work(crew, duty, 1);
  }

  private listActive(slot: number, sign: 1 | -1): void {
    if (sign > 0) {
      this.place[slot] = this.active.push(slot) - 1;
      return;
    }
    const last = this.active.pop()!;
    if (last === slot) return;
    this.active[this.place[slot]] = last;
    this.place[last] = this.place[slot];
  }
}

function listed(list: number[], slot: number, sign: 1 | -1): void {
  if (sign > 0) list.push(slot);
  else {
    const last = list.pop()!;
    if (last !== slot) list[list.indexOf(slot)] = last;
  }
}
