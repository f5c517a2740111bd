import type { Column, LinearProgram } from '../milp/linear-program.js';
import type { Problem } from '../problem.js';
import { type CrewRows, crewRows } from './crew-rows.js';
import { Draft } from './draft.js';
import { groupBy } from './group-by.js';
import { type VehicleGroup, vehicleGroups } from './hour-rows.js';
import { type StoreRows, storeRows, type Units } from './store-rows.js';
import { type SupplyRows, supplyRows } from './supply-rows.js';

/**
 * A problem as a linear program over patterns (a route on a day with a drop at every stop), and where a pattern
 * appears in it. The program holds everything but the patterns. See docs/model.md, "Bound".
 */
export interface Relaxation {
  readonly problem: Problem;
  readonly program: LinearProgram;
  readonly units: Units;
  /** Largest drop any route can make. */
  readonly mostPacks: number;
  readonly stores: readonly StoreRows[];
  readonly supplies: readonly (SupplyRows | null)[];
  readonly vehicles: readonly VehicleGroup[];
  /** Index into `vehicles`, by route; -1: no vehicle can travel it. */
  readonly vehiclesOf: Int32Array;
  /** By crew group; empty where nobody is needed. */
  readonly crews: readonly CrewRows[];
  /** Row that keeps visits of the standing plan, by kind, home, day and stops. */
  readonly standing: ReadonlyMap<string, number>;
  /** Row that lets a booked route be loaded once. */
  readonly booked: readonly number[];
}

/** A route travelled on a day with so many packs set down at each stop; `route` counts on into the booked routes. */
export interface Pattern {
  readonly route: number;
  readonly day: number;
  readonly drops: readonly number[];
}

/** The relaxation of a problem; `withCuts`: with the rounding cuts of every store. */
export function relaxationOf(problem: Problem, withCuts = true): Relaxation {
  const draft = new Draft();
  const units = { days: problem.days, packSize: problem.packSize, centsPerCost: centsPerCost(problem) };
  const mostPacks = largestLoad(problem);
  const vehicles = vehicleGroups(draft, problem);
  const groupAt = new Map(vehicles.map(({ kind, home }, group) => [`${kind} ${home}`, group]));
  const vehiclesOf = Int32Array.from(
    problem.routes,
    ({ kind, source }) => groupAt.get(`${kind} ${source}`) ?? -1,
  );
  const most = { perDrop: mostPacks, perDay: mostDelivered(problem, mostPacks) };
  return {
    problem,
    units,
    mostPacks,
    stores: problem.stores.map((store) => storeRows(draft, store, units, most, withCuts)),
    supplies: problem.stores.map((store) => supplyRows(draft, store, units)),
    vehicles,
    vehiclesOf,
    crews: crewRows(draft, problem),
    standing: standingRows(draft, problem, units),
    booked: problem.booked.map(() => draft.row(Number.NEGATIVE_INFINITY, 1)),
    program: draft.program(),
  };
}

/** A power of two near the cost of an ordinary route: costs in the program are then of the size of packs. */
function centsPerCost(problem: Problem): number {
  const costs = problem.routes.map(({ conditions }) => conditions[0].cost).sort((a, b) => a - b);
  const median = costs[Math.floor(costs.length / 2)] ?? 1;
  return 2 ** Math.round(Math.log2(Math.max(1, median / 64)));
}

function largestLoad(problem: Problem): number {
  let most = 0;
  for (const { conditions } of [...problem.routes, ...problem.booked.map((one) => ({ conditions: [one] }))])
    for (const { legPacks } of conditions) most = Math.max(most, ...legPacks);
  return most;
}

/** Packs that can reach one store on one day, roughly: every hour flown on the shortest route with the largest load. */
function mostDelivered(problem: Problem, mostPacks: number): number {
  let shortest = Number.POSITIVE_INFINITY;
  for (const { conditions } of problem.routes)
    for (const { blockHours, dutyHours } of conditions)
      shortest = Math.min(shortest, Math.max(blockHours, dutyHours));
  const hours = Math.max(
    0,
    ...Array.from({ length: problem.days }, (_, day) =>
      problem.vehicles.reduce(
        (sum, { blockHours, dutyHours }) => sum + Math.max(blockHours[day], dutyHours[day]),
        0,
      ),
    ),
  );
  const trips = Number.isFinite(shortest) ? hours / Math.max(shortest, 1e-3) : 0;
  return mostPacks * (trips + problem.booked.length);
}

/** The price of every standing visit that is not kept; a route like it on the day earns it back, once for each. */
function standingRows(draft: Draft, problem: Problem, units: Units): Map<string, number> {
  const rows = new Map<string, number>();
  if (problem.changePrice === 0) return rows;
  const wanted = groupBy(problem.standing, ({ vehicle, day, stops }) =>
    standingKey(problem.vehicles[vehicle].kind, problem.vehicles[vehicle].home, day, stops),
  );
  for (const [key, visits] of wanted) {
    const row = draft.row(visits.length, Number.POSITIVE_INFINITY);
    draft.enter(draft.column(problem.changePrice / units.centsPerCost, 0, visits.length), row, 1);
    rows.set(key, row);
  }
  return rows;
}

/** Names the visits of the standing plan that any vehicle of a kind at a home can keep. */
export const standingKey = (kind: string, home: number, day: number, stops: readonly number[]) =>
  `${kind} ${home} ${day} ${stops.join()}`;

/** The column of a pattern. */
export function columnOf(relaxation: Relaxation, pattern: Pattern): Column {
  const entries = new Map<number, number>();
  const enter = (row: number, coefficient: number) => {
    if (coefficient !== 0) entries.set(row, (entries.get(row) ?? 0) + coefficient);
  };
  const { problem, stores } = relaxation;
  const isBooked = pattern.route >= problem.routes.length;
  const route = isBooked
    ? problem.booked[pattern.route - problem.routes.length]
    : problem.routes[pattern.route];
  const packs = pattern.drops.reduce((sum, drop) => sum + drop, 0);

  pattern.drops.forEach((drop, at) => {
    const rows = stores[route.stops[at]];
    for (const row of rows.perPack[pattern.day]) enter(row, drop);
    for (const { row, weights } of rows.cuts) enter(row, weights[drop]);
  });
  const travel = isBooked
    ? bookedEntries(relaxation, pattern, enter)
    : travelEntries(relaxation, pattern, enter);
  const supply = relaxation.supplies[route.source];
  if (supply) {
    enter(supply.packRow[pattern.day], packs);
    if (supply.unitRow) enter(supply.unitRow[pattern.day], packs + travel.ownUse / problem.packSize);
  }
  const packCost = problem.stores[route.source].supply?.packCost ?? 0;
  return {
    cost: (travel.cost + packs * packCost) / relaxation.units.centsPerCost,
    lower: 0,
    upper: Number.POSITIVE_INFINITY,
    integer: false,
    rows: [...entries.keys()],
    coefficients: [...entries.values()],
  };
}

type Enter = (row: number, coefficient: number) => void;

function bookedEntries({ booked, problem }: Relaxation, { route }: Pattern, enter: Enter) {
  enter(booked[route - problem.routes.length], 1);
  return { cost: 0, ownUse: 0 };
}

function travelEntries(relaxation: Relaxation, { route: index, day }: Pattern, enter: Enter) {
  const route = relaxation.problem.routes[index];
  const conditions = route.conditions[route.conditionByDay[day]];
  const vehicles = relaxation.vehicles[relaxation.vehiclesOf[index]];
  enter(vehicles.blockRow[day], conditions.blockHours);
  enter(vehicles.dutyRow[day], conditions.dutyHours);
  const crew = relaxation.crews[route.crewGroup];
  for (const row of crew?.blockRows[day] ?? []) enter(row, conditions.blockHours);
  for (const row of crew?.dutyRows[day] ?? []) enter(row, conditions.dutyHours);
  const kept = relaxation.standing.get(standingKey(route.kind, route.source, day, route.stops));
  if (kept !== undefined) enter(kept, 1);
  return conditions;
}
