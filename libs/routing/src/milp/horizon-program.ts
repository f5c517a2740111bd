import { Draft } from '../bound/draft.js';
import type { RelaxationBound } from '../bound/lower-bound.js';
import { roundingCuts } from '../bound/rounding-cuts.js';
import type { Problem, Store, Vehicle } from '../problem.js';
import type { LinearProgram } from './linear-program.js';

/** A route with drops, whatever the day. */
export interface Round {
  readonly route: number;
  readonly drops: readonly number[];
}

/** Hours that rounds of many lengths cannot quite fill. */
const HOURS_FILLED = 0.985;

/**
 * How often each round is made in the whole horizon, days left open: needs of the stores with their rounding cuts,
 * hours of the vehicles and packs at the sources added up. One integer column a round, after the other columns.
 */
export function horizonProgram(
  { relaxation }: RelaxationBound,
  rounds: readonly Round[],
): {
  readonly program: LinearProgram;
  readonly firstRound: number;
} {
  const { problem, units, mostPacks } = relaxation;
  const draft = new Draft();
  const stores = problem.stores.map((store) => needRows(draft, store, units, mostPacks));
  const groups = relaxation.vehicles.map(({ kind, home }) => {
    const own = problem.vehicles.filter((vehicle) => vehicle.kind === kind && vehicle.home === home);
    return {
      block: draft.row(
        Number.NEGATIVE_INFINITY,
        HOURS_FILLED * sum(own.map(({ blockHours }) => sum(blockHours))),
      ),
      duty: draft.row(
        Number.NEGATIVE_INFINITY,
        HOURS_FILLED * sum(own.map((vehicle) => dutyInAll(vehicle, problem))),
      ),
    };
  });
  const sources = problem.stores.map(
    ({ supply }) => supply && draft.row(Number.NEGATIVE_INFINITY, supply.packsByDay[problem.days - 1]),
  );
  const firstRound = draft.columns.length;
  for (const { route, drops } of rounds) {
    const { source, stops } = problem.routes[route];
    const conditions = usualConditions(problem, route);
    const packs = sum(drops);
    const packCost = problem.stores[source].supply?.packCost ?? 0;
    const column = draft.column(
      (conditions.cost + packs * packCost) / units.centsPerCost,
      0,
      Number.POSITIVE_INFINITY,
    );
    stops.forEach((stop, at) => {
      const rows = stores[stop];
      if (!rows) return;
      draft.enter(column, rows.need, drops[at]);
      for (const { row, weights } of rows.cuts) draft.enter(column, row, weights[drops[at]]);
    });
    const group = groups[relaxation.vehiclesOf[route]];
    draft.enter(column, group.block, conditions.blockHours);
    draft.enter(column, group.duty, conditions.dutyHours);
    const supply = sources[source];
    if (supply !== null) draft.enter(column, supply, packs);
  }
  const { rows, columns } = draft.program();
  const whole = columns.map((column, at) => (at < firstRound ? column : { ...column, integer: true }));
  return { program: { rows, columns: whole }, firstRound };
}

function needRows(
  draft: Draft,
  store: Store,
  units: RelaxationBound['relaxation']['units'],
  mostPacks: number,
) {
  const { prices, endTarget, minimum } = store;
  const need = endTarget - store.opening + sum(store.demand) + sum(store.losses) - sum(store.arrivals);
  if (need <= 0 || Object.values(prices).every((price) => price === 0)) return null;
  const row = draft.row(need / units.packSize, Number.POSITIVE_INFINITY);
  const short = (price: number, most: number) => {
    const column = draft.column((price * units.packSize) / units.centsPerCost, 0, most / units.packSize);
    draft.enter(column, row, 1);
    return column;
  };
  const untilMinimum = Math.max(0, endTarget - minimum);
  const slack = [
    short(prices.belowEndTarget, untilMinimum),
    short(
      prices.belowEndTarget + prices.belowMinimum + prices.belowCritical,
      Math.max(0, need - untilMinimum),
    ),
  ];
  return { need: row, cuts: roundingCuts(draft, store, units, slack, mostPacks) };
}

function dutyInAll({ dutyHours, rolling }: Vehicle, { days }: Problem): number {
  const daily = sum(dutyHours);
  return rolling ? Math.min(daily, rolling.dutyHours * Math.max(1, days / rolling.days)) : daily;
}

/** The conditions that the route meets on most days. */
export function usualConditions(problem: Problem, route: number) {
  const { conditions, conditionByDay } = problem.routes[route];
  const days = conditions.map((_, index) => conditionByDay.filter((one) => one === index).length);
  return conditions[days.indexOf(Math.max(...days))];
}

const sum = (amounts: readonly number[]) => amounts.reduce((total, amount) => total + amount, 0);
