import type { IsoDate, Litres } from '@drumline/units';

/** A cache and where its stock leads: usable by day, index 0 now, 1 the end of the first day. */
interface LookedAhead {
  readonly place: string;
  readonly minimumLitres: Litres;
  readonly criticalLitres: Litres;
  readonly usableLitres: readonly Litres[];
  /** Index of the first level below minimum, below critical; null: none is. */
  readonly belowMinimumDay: number | null;
  readonly belowCriticalDay: number | null;
}

interface DaysAhead {
  readonly dates: readonly IsoDate[];
  /** Days within which flights are offered. */
  readonly offeredDays: number;
}

interface CacheBelow {
  readonly place: string;
  /** The first day that ends below; null: it is below now. */
  readonly date: IsoDate | null;
  /** Usable at the end of that day; below zero: what is asked for beyond the stock. */
  readonly litres: Litres;
}

export interface CacheBelowCritical extends CacheBelow {
  readonly criticalLitres: Litres;
}

export interface CacheBelowMinimum extends CacheBelow {
  readonly minimumLitres: Litres;
  /** The first day after it that ends at the minimum or above; null: none looked ahead does. */
  readonly backOn: IsoDate | null;
}

/** Caches that fall below critical within the offered days by the levels given; the first day first. */
export const cachesBelowCritical = (
  caches: readonly LookedAhead[],
  days: DaysAhead,
): readonly CacheBelowCritical[] =>
  caches
    .flatMap((cache) => {
      const below = belowFrom(cache, cache.belowCriticalDay, days);
      return below === null ? [] : [{ ...below, criticalLitres: cache.criticalLitres }];
    })
    .toSorted(byDate);

/** Caches that fall below minimum, and not below critical, within the offered days; the first day first. */
export const cachesBelowMinimum = (
  caches: readonly LookedAhead[],
  days: DaysAhead,
): readonly CacheBelowMinimum[] =>
  caches
    .flatMap((cache) => {
      const { minimumLitres, usableLitres, belowMinimumDay: day } = cache;
      const below = belowFrom(cache, day, days);
      if (below === null || belowFrom(cache, cache.belowCriticalDay, days) !== null) return [];
      const back = usableLitres.findIndex((level, index) => index > day! && level >= minimumLitres);
      return [{ ...below, minimumLitres, backOn: days.dates[back - 1] ?? null }];
    })
    .toSorted(byDate);

const belowFrom = (
  { place, usableLitres }: LookedAhead,
  day: number | null,
  { dates, offeredDays }: DaysAhead,
): CacheBelow | null =>
  day === null || day > offeredDays
    ? null
    : { place, date: dates[day - 1] ?? null, litres: usableLitres[day]! };

const byDate = (one: CacheBelow, other: CacheBelow): number =>
  (one.date ?? '').localeCompare(other.date ?? '');
