import type { Relaxation } from './relaxation.js';

/** Routes, then booked routes, in typed arrays: pricing runs over all of them on every day. */
export interface FlatRoutes {
  readonly count: number;
  /** Vehicle group; -1: a booked route. */
  readonly group: Int32Array;
  /** Index into `sources`. */
  readonly source: Int32Array;
  readonly sources: readonly number[];
  /** Crew group; -1: nobody is needed. */
  readonly crew: Int32Array;
  /** Stops of route r: `stops[stopsAt[r]]` up to `stops[stopsAt[r + 1]]`. */
  readonly stopsAt: Int32Array;
  readonly stops: Int32Array;
  /** Condition of route r on a day at r x days + day; -1: cannot be travelled. */
  readonly conditionAt: Int32Array;
  readonly cost: Float64Array;
  readonly blockHours: Float64Array;
  readonly dutyHours: Float64Array;
  /** In packs. */
  readonly ownUse: Float64Array;
  readonly legsAt: Int32Array;
  /** Never more on a later leg than on an earlier one. */
  readonly legPacks: Int32Array;
}

/** Every route, booked ones too, on every day on which it can be travelled. */
export function eachRouteDay(
  { count, conditionAt }: FlatRoutes,
  days: number,
  visit: (route: number, day: number, condition: number) => void,
): void {
  for (let route = 0; route < count; route++)
    for (let day = 0; day < days; day++) {
      const condition = conditionAt[route * days + day];
      if (condition >= 0) visit(route, day, condition);
    }
}

export function flatRoutes({ problem, units, vehiclesOf, crews, mostPacks }: Relaxation): FlatRoutes {
  const { routes, booked, days } = problem;
  const conditions = [
    ...routes.flatMap((route) => route.conditions),
    ...booked.map(({ legPacks }) => ({ cost: 0, blockHours: 0, dutyHours: 0, ownUse: 0, legPacks })),
  ];
  const all = [...routes, ...booked];
  const sources = [...new Set(all.map(({ source }) => source))];
  const ordinal = new Map(sources.map((source, at) => [source, at]));
  const conditionAt = new Int32Array(all.length * days).fill(-1);
  let first = 0;
  routes.forEach((route, r) => {
    if (vehiclesOf[r] >= 0)
      route.conditionByDay.forEach((index, day) => {
        if (index >= 0) conditionAt[r * days + day] = first + index;
      });
    first += route.conditions.length;
  });
  booked.forEach(({ day }, at) => {
    conditionAt[(routes.length + at) * days + day] = first + at;
  });
  return {
    count: all.length,
    group: Int32Array.from(all, (_, r) => (r < routes.length ? vehiclesOf[r] : -1)),
    source: Int32Array.from(all, ({ source }) => ordinal.get(source)!),
    sources,
    crew: Int32Array.from(all, ({ crewGroup }, r) =>
      r < routes.length && crews[crewGroup] ? crewGroup : -1,
    ),
    stopsAt: offsets(all.map(({ stops }) => stops.length)),
    stops: Int32Array.from(all.flatMap(({ stops }) => stops)),
    conditionAt,
    cost: Float64Array.from(conditions, ({ cost }) => cost / units.centsPerCost),
    blockHours: Float64Array.from(conditions, ({ blockHours }) => blockHours),
    dutyHours: Float64Array.from(conditions, ({ dutyHours }) => dutyHours),
    ownUse: Float64Array.from(conditions, ({ ownUse }) => ownUse / units.packSize),
    legsAt: offsets(conditions.map(({ legPacks }) => legPacks.length)),
    legPacks: Int32Array.from(conditions.flatMap(({ legPacks }) => runningMinimum(legPacks, mostPacks))),
  };
}

/** Where each of the lists begins when they are laid end to end; one more entry for the end. */
function offsets(lengths: readonly number[]): Int32Array {
  const at = new Int32Array(lengths.length + 1);
  lengths.forEach((length, i) => {
    at[i + 1] = at[i] + length;
  });
  return at;
}

/** What is aboard never grows along a route, so a leg's limit holds for the legs after it. */
function runningMinimum(legPacks: readonly number[], most: number): number[] {
  let least = most;
  return legPacks.map((packs) => {
    least = Math.min(least, packs);
    return least;
  });
}
