import type { IsoDate, Litres } from '@drumline/units';

/** A cache and where its stock leads: usable by day, index 0 now, 1 the end of the first day. */
interface LookedAhead {
  readonly place: string;
  readonly criticalLitres: Litres;
  readonly usableLitres: readonly Litres[];
  /** Index of the first level below critical; null: none is. */
  readonly belowCriticalDay: number | null;
}

interface DaysAhead {
  readonly dates: readonly IsoDate[];
  /** Days within which flights are offered. */
  readonly offeredDays: number;
}

export interface CacheBelowCritical {
  readonly place: string;
  /** The first day that ends below critical; null: it is below now. */
  readonly date: IsoDate | null;
  /** Usable at the end of that day; below zero: what is asked for beyond the stock. */
  readonly litres: Litres;
  readonly criticalLitres: Litres;
}

/** Caches that fall below critical within the offered days by the levels given; the first day first. */
export const cachesBelowCritical = (
  caches: readonly LookedAhead[],
  { dates, offeredDays }: DaysAhead,
): readonly CacheBelowCritical[] =>
  caches
    .flatMap(({ place, criticalLitres, usableLitres, belowCriticalDay: day }) =>
      day === null || day > offeredDays
        ? []
        : [{ place, date: dates[day - 1] ?? null, litres: usableLitres[day]!, criticalLitres }],
    )
    .toSorted((one, other) => (one.date ?? '').localeCompare(other.date ?? ''));
