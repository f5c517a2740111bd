import { projectScenario, type Scenario } from '@drumline/planning';
import {
  type Cache,
  type CacheProjection,
  inDate,
  type JudgedCount,
  type OpeningStock,
  openingStock,
  type PlaceBalance,
} from '@drumline/stock';
import { type IsoDate, type Litres, litres } from '@drumline/units';

export type Level = 'enough' | 'below minimum' | 'below critical';

/** Book, count and usable of a place, and where they lead without another delivery. */
export interface PlaceFigures
  extends Omit<OpeningStock, 'drums' | 'partUsed' | 'lastCount'>,
    Pick<PlaceBalance, 'sealedDrums' | 'partUsedDrums' | 'emptyDrums'> {
  /** Of the sealed drums, those that may not be used: held, and past retest without being held. */
  readonly sealedHeldDrums: number;
  readonly sealedPastRetestDrums: number;
  /** Of the part-used drums. */
  readonly partUsedHeldDrums: number;
  readonly lastCount: (Omit<JudgedCount, 'ageHours'> & { readonly countedLitres: Litres }) | null;
  /** Null: not a cache, no levels are set for it. */
  readonly cache: CacheFigures | null;
}

export interface CacheFigures
  extends Pick<Cache, 'minimumLitres' | 'criticalLitres' | 'medevacReserveLitres' | 'capacityDrums'> {
  readonly level: Level;
  /** What routine draws may take. */
  readonly drawableLitres: Litres;
  readonly isOverCapacity: boolean;
  readonly daysOfCover: CacheProjection['daysOfCover'];
  readonly projection: Omit<
    CacheProjection,
    'place' | 'minimumLitres' | 'criticalLitres' | 'reserveLitres' | 'capacityLitres' | 'daysOfCover'
  >;
}

export interface StandingAt {
  readonly balance: PlaceBalance;
  /** What was written down at the last count, before it was carried forward. */
  readonly countedLitres: Litres | null;
}

/** The figures of some places, from a scenario that has their stock and those of its caches. */
export const placeFigures = (
  scenario: Scenario,
  places: ReadonlyMap<string, StandingAt>,
): readonly PlaceFigures[] => {
  const { drums, batches, counts, asOf, firstDay, policy } = scenario;
  const picture = { drums, batches, counts, asOf, countTolerance: policy.countTolerance };
  const stocks = openingStock([...places.keys()], picture, firstDay);
  const projections = new Map(projectScenario(scenario, []).map((each) => [each.place, each]));
  const caches = new Map(scenario.caches.map((cache) => [cache.place, cache]));
  return [...places].map(([place, at]) => {
    const stock = stocks.get(place)!;
    const cache = caches.get(place);
    return {
      ...stockFigures(stock, at, firstDay),
      cache: cache ? cacheFigures(stock, cache, projections.get(place)!, policy.drum.fillLitres) : null,
    };
  });
};

const stockFigures = (stock: OpeningStock, { balance, countedLitres }: StandingAt, day: IsoDate) => {
  const { drums, partUsed: _, lastCount, ...figures } = stock;
  const { sealedDrums, partUsedDrums, emptyDrums } = balance;
  const sealed = drums.filter((drum) => drum.sealed);
  return {
    ...figures,
    sealedDrums,
    sealedHeldDrums: sealed.filter(({ held }) => held).length,
    sealedPastRetestDrums: sealed.filter((drum) => !drum.held && !inDate(drum, day)).length,
    partUsedHeldDrums: drums.filter(({ sealed, held }) => !sealed && held).length,
    partUsedDrums,
    emptyDrums,
    lastCount: countFigures(lastCount, countedLitres),
  };
};

const countFigures = (judged: JudgedCount | null, counted: Litres | null): PlaceFigures['lastCount'] => {
  if (judged === null) return null;
  const { ageHours: _, ...lastCount } = judged;
  return { ...lastCount, countedLitres: counted ?? judged.count.litres };
};

const cacheFigures = (
  { usableLitres, bookLitres }: OpeningStock,
  { minimumLitres, criticalLitres, medevacReserveLitres, capacityDrums }: Cache,
  projection: CacheProjection,
  fillLitres: Litres,
): CacheFigures => {
  const { daysOfCover, place: _, minimumLitres: _m, criticalLitres: _c, ...rest } = projection;
  const { reserveLitres: _r, capacityLitres: _l, ...days } = rest;
  return {
    minimumLitres,
    criticalLitres,
    medevacReserveLitres,
    capacityDrums,
    level: levelOf(usableLitres, minimumLitres, criticalLitres),
    drawableLitres: litres(Math.max(0, usableLitres - medevacReserveLitres)),
    isOverCapacity: bookLitres > capacityDrums * fillLitres,
    daysOfCover,
    projection: days,
  };
};

export const levelOf = (usable: Litres, minimum: Litres, critical: Litres): Level =>
  usable < critical ? 'below critical' : usable < minimum ? 'below minimum' : 'enough';

/** Nothing stands there. */
export const bare = (place: string): PlaceBalance => ({
  place,
  sealedDrums: 0,
  partUsedDrums: 0,
  emptyDrums: 0,
  bookMillilitres: 0 as PlaceBalance['bookMillilitres'],
});
