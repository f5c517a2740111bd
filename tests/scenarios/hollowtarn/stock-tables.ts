import { readFileSync } from 'node:fs';
import type { BaseStock, Batch, Cache, Count, Draw, Drum, DrumMove, StockOutlook } from '@drumline/stock';
import { type IsoDate, type Litres, litres } from '@drumline/units';

/** A table of the invented Hollowtarn territory: day 1 is Monday 14 June 2027. */
const table = <Rows>(name: string): Rows =>
  JSON.parse(readFileSync(new URL(`${name}.json`, import.meta.url), 'utf8')) as Rows;

export const drums = table<readonly Drum[]>('drums');
export const batches = table<readonly Batch[]>('batches');
export const caches = table<readonly Cache[]>('caches');
export const bases = table<readonly BaseStock[]>('bases');
export const counts = table<readonly Count[]>('counts');
export const draws = table<readonly Draw[]>('draws');
export const slings = table<readonly DrumMove[]>('slings');

type Flags = {
  readonly belowMinimumDay: number | null;
  readonly belowCriticalDay: number | null;
  readonly runOutDay: number | null;
};
export const levelsWithoutDelivery = table<Readonly<Record<string, readonly Litres[]>>>(
  'projection-no-delivery-litres',
);
export const flagsWithoutDelivery = table<Readonly<Record<string, Flags>>>('projection-flags');
export const recall = table<{
  readonly batch: string;
  readonly drums: number;
  readonly litres: Litres;
  readonly drumsByPlace: Readonly<Record<string, number>>;
  readonly usableLitresAfter: Readonly<Record<string, Litres>>;
  readonly belowMinimum: readonly string[];
  readonly belowCritical: readonly string[];
}>('recall');

/** Date of a day of the plan, from 1. */
export const dateOf = (day: number): IsoDate => `2027-06-${13 + day}`;

/** Monday 06:00, before anybody has counted, and no delivery planned. */
export const mondayMorning: StockOutlook = {
  picture: {
    asOf: '2027-06-14T06:00Z',
    drums,
    batches,
    counts,
    countTolerance: {
      percentOfBook: 2,
      litresPerOpenDrum: litres(10),
      reference: 'invented stock manual 4.2',
    },
  },
  caches,
  dates: Array.from({ length: 14 }, (_, index) => dateOf(index + 1)),
  fillLitres: litres(200),
  draws,
  landings: [],
  slings,
};
