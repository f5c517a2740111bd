import type { IsoDate, Litres } from '@drumline/units';

/** Levels of one cache: index 0 is the opening, index d the end of day d. Figures of `book` may be negative. */
export interface CacheProjection {
  readonly place: string;
  readonly dates: readonly IsoDate[];
  readonly book: readonly Litres[];
  readonly usable: readonly Litres[];
  readonly landed: readonly Litres[];
  readonly drawn: readonly Litres[];
  /** Litres asked for that could not be drawn, by day. */
  readonly unmet: readonly Litres[];
  readonly minimumLitres: Litres;
  readonly criticalLitres: Litres;
  readonly reserveLitres: Litres;
  readonly capacityLitres: Litres;
  readonly belowMinimumDay: number | null;
  readonly belowCriticalDay: number | null;
  readonly runOutDay: number | null;
  /** Usable over the mean draw of the days ahead; null without draws. */
  readonly daysOfCover: number | null;
}
