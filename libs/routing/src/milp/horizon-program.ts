import { Draft } from '../bound/draft.js';
import type { Relaxation } from '../bound/relaxation.js';
import { roundingCuts } from '../bound/rounding-cuts.js';
import type { Problem, RouteConditions, Store, Vehicle } from '../problem.js';
import type { LinearProgram } from './linear-program.js';
import { conditionsOf } from './whole-horizon.js';

/** A route with drops, whatever the day. */
export interface Round {
  readonly route: number;
  readonly drops: readonly number[];
}

/**
 * How often each round is made in the whole horizon, days left open: needs of the stores with their rounding cuts,
 * hours of the vehicles, days for long rounds, and packs at the sources added up. One integer column a round, after the other columns. `made`:
 * how often the plan to start from makes each round. `relaxation`: of the problem with all its days as one.
 */
export function horizonProgram(
  problem: Problem,
  relaxation: Relaxation,
  { rounds, times: made }: { readonly rounds: readonly Round[]; readonly times: readonly number[] },
): {
  readonly program: LinearProgram;
  readonly firstRound: number;
} {
  const { units, mostPacks, problem: inAll } = relaxation;
  const draft = new Draft();
  const stores = inAll.stores.map((store) => needRows(draft, store, units, mostPacks));
  const groups = relaxation.vehicles.map(({ kind, home, blockHours, dutyHours }, group) => {
    const own = problem.vehicles.filter((vehicle) => vehicle.kind === kind && vehicle.home === home);
    const isLong = longerThanHalf(own);
    const used = (of: (conditions: RouteConditions) => number) =>
      sum(
        rounds.map(({ route }, at) =>
          made[at] > 0 && relaxation.vehiclesOf[route] === group
            ? made[at] * of(conditionsOf(inAll, route))
            : 0,
        ),
      );
    // A plan that fills more hours than usual is still a start.
    const atMost = (hours: number, of: (conditions: RouteConditions) => number) => ({
      of,
      row: draft.row(Number.NEGATIVE_INFINITY, Math.max(hours, used(of))),
    });
    return [
      atMost(blockHours[0], (conditions) => conditions.blockHours),
      atMost(dutyHours[0], (conditions) => conditions.dutyHours),
      atMost(
        sum(own.map(({ blockHours }) => blockHours.filter((hours) => hours > 0).length)),
        (conditions) => (isLong(conditions) ? 1 : 0),
      ),
    ];
  });
  const sources = inAll.stores.map(
    ({ supply }) => supply && draft.row(Number.NEGATIVE_INFINITY, supply.packsByDay[0]),
  );
  const firstRound = draft.columns.length;
  for (const { route, drops } of rounds) {
    const { source, stops } = problem.routes[route];
    const conditions = conditionsOf(inAll, route);
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
    for (const { row, of } of groups[relaxation.vehiclesOf[route]]) {
      const counts = of(conditions);
      if (counts > 0) draft.enter(column, row, counts);
    }
    const supply = sources[source];
    if (supply !== null) draft.enter(column, supply, packs);
  }
  const { rows, columns } = draft.program();
  const whole = columns.map((column, at) => (at < firstRound ? column : { ...column, integer: true }));
  return { program: { rows, columns: whole }, firstRound };
}

function needRows(draft: Draft, store: Store, units: Relaxation['units'], mostPacks: number) {
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

/** Is a round so long that no vehicle makes two of them in a day? */
function longerThanHalf(vehicles: readonly Vehicle[]): (conditions: RouteConditions) => boolean {
  const most = (hours: 'blockHours' | 'dutyHours') =>
    Math.max(...vehicles.flatMap((vehicle) => vehicle[hours]));
  const [block, duty] = [most('blockHours'), most('dutyHours')];
  return ({ blockHours, dutyHours }) => 2 * blockHours > block || 2 * dutyHours > duty;
}

const sum = (amounts: readonly number[]) => amounts.reduce((total, amount) => total + amount, 0);
