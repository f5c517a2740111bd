import type { Store } from '../problem.js';
import type { Draft } from './draft.js';
import { type LevelRange, levelRange } from './level-range.js';
import { roundingCuts } from './rounding-cuts.js';

/** Where packs set down at a store appear in the program. */
export interface StoreRows {
  /** Balance of stock by day; null: levels there cost nothing. */
  readonly balance: readonly number[] | null;
  /** Rows in which a pack set down on a day counts 1, the balance among them. */
  readonly perPack: readonly (readonly number[])[];
  /** Rows over the whole horizon in which a drop of so many packs counts `weights[packs]`. */
  readonly cuts: readonly RoundingCut[];
}

export interface RoundingCut {
  readonly row: number;
  readonly weights: readonly number[];
}

export interface Units {
  readonly days: number;
  readonly packSize: number;
  /** Cents per unit of cost in the program. */
  readonly centsPerCost: number;
}

/** Most packs that routes can bring to one store: on one day, and in one drop. */
export interface MostPacks {
  readonly perDay: number;
  readonly perDrop: number;
}

/** Writes levels, shortages and limits of one store, in packs. */
export function storeRows(
  draft: Draft,
  store: Store,
  units: Units,
  most: MostPacks,
  withCuts: boolean,
): StoreRows {
  const perPack: number[][] = Array.from({ length: units.days }, (_, day) =>
    store.packsPerDay ? [draft.row(Number.NEGATIVE_INFINITY, store.packsPerDay[day])] : [],
  );
  if (Object.values(store.prices).every((price) => price === 0)) return { balance: null, perPack, cuts: [] };

  const range = levelRange(store, units.days, most.perDay * units.packSize);
  const levels = writeLevels(draft, store, units, range);
  perPack.forEach((rows, day) => {
    rows.push(levels.balance[day]);
    if (store.capacity) rows.push(capacityRow(draft, store, units, range, levels, day));
  });
  const cuts = withCuts ? roundingCuts(draft, store, units, levels.slack, most.perDrop) : [];
  return { balance: levels.balance, perPack, cuts };
}

/**
 * The level at the end of each day = `tops` + the columns `parts` with their signs. It is written as a top level, less
 * shortfalls in steps that cost ever more, plus what stands over the top: one row a day carries them all.
 */
interface Levels {
  readonly balance: readonly number[];
  readonly tops: readonly number[];
  readonly parts: readonly (readonly { readonly column: number; readonly sign: number }[])[];
  /** Columns that make up for a pack not set down by the end: unmet demand and the end shortage. */
  readonly slack: readonly number[];
}

function writeLevels(
  draft: Draft,
  store: Store,
  { days, packSize, centsPerCost }: Units,
  range: LevelRange,
): Levels {
  const cost = (price: number) => (price * packSize) / centsPerCost;
  const thresholds = range.low.map((_, day) => thresholdsOf(store, day === days - 1));
  const tops = thresholds.map((all, day) => Math.max(range.low[day], ...all.map(({ level }) => level)));
  const balance = tops.map((top, day) => {
    const need = store.demand[day] + store.losses[day] - store.arrivals[day];
    const right = (need + top - (tops[day - 1] ?? store.opening)) / packSize;
    return draft.row(right, right);
  });
  const slack: number[] = [];
  const parts = tops.map((top, day) => {
    const level = (price: number, width: number, sign: number) => {
      const column = draft.column(cost(price), 0, width / packSize);
      draft.enter(column, balance[day], -sign);
      if (day < days - 1) draft.enter(column, balance[day + 1], sign);
      return { column, sign };
    };
    const over = level(0, Math.max(0, range.high[day] - top), 1);
    const short = steps(thresholds[day], range.low[day], top).map(({ from, width, price }) => {
      const part = level(price, width, -1);
      if (day === days - 1 && from <= store.endTarget) slack.push(part.column);
      return part;
    });
    return [over, ...short];
  });
  range.unmet.forEach((most, day) => {
    const unmet = draft.column(cost(store.prices.unmet), 0, most / packSize);
    draft.enter(unmet, balance[day], 1);
    slack.push(unmet);
  });
  return { balance, tops: tops.map((top) => top / packSize), parts, slack };
}

/** Packs set down on a day + the level of the day before <= the stock that may stand there. */
function capacityRow(
  draft: Draft,
  store: Store,
  { packSize }: Units,
  range: LevelRange,
  levels: Levels,
  day: number,
): number {
  const room = (range.afterDeliveries[day] - store.arrivals[day]) / packSize;
  const row = draft.row(Number.NEGATIVE_INFINITY, room - (levels.tops[day - 1] ?? store.opening / packSize));
  for (const { column, sign } of levels.parts[day - 1] ?? []) draft.enter(column, row, sign);
  return row;
}

interface Threshold {
  readonly level: number;
  readonly price: number;
}

function thresholdsOf({ prices, ...store }: Store, last: boolean): Threshold[] {
  return [
    { level: store.cushion, price: prices.belowCushion },
    { level: store.minimum, price: prices.belowMinimum },
    { level: store.critical, price: prices.belowCritical },
    ...(last ? [{ level: store.endTarget, price: prices.belowEndTarget }] : []),
  ];
}

/** Steps down from `top` to `low`; each costs the sum of the prices of the thresholds it lies below. */
function steps(thresholds: readonly Threshold[], low: number, top: number) {
  const levels = [...new Set([top, ...thresholds.map(({ level }) => level), low])]
    .filter((level) => level >= low && level <= top)
    .sort((a, b) => b - a);
  return levels.slice(1).map((level, at) => {
    const from = levels[at];
    const above = thresholds.filter((threshold) => threshold.level >= from);
    return { from, width: from - level, price: above.reduce((sum, { price }) => sum + price, 0) };
  });
}
