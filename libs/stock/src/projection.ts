import type { IsoDate, Litres } from '@drumline/units';

/**
 * Levels of one cache. `dates` are the days of the plan; every figure by day has one entry more: index 0 is the
 * opening (flows are 0 there), index d the end of `dates[d - 1]`.
 *
 * `book` and `usable` fall by everything that is asked for, so they may be negative: a level below zero says how much
 * is missing. What stands there apart from that is `standing`. Usable = fit litres - litres unmet so far, and book =
 * all litres - litres unmet so far, so that book - usable is what is held, past retest or not found by the count.
 */
export interface CacheProjection {
  readonly place: string;
  readonly dates: readonly IsoDate[];
  readonly book: readonly Litres[];
  readonly usable: readonly Litres[];
  /** Litres at the site after the day's landings and slings in, before anything leaves: compared with the capacity. */
  readonly standing: readonly Litres[];
  readonly landed: readonly Litres[];
  readonly slungIn: readonly Litres[];
  readonly slungOut: readonly Litres[];
  /** Litres that draws ask for, the unmet part included. */
  readonly drawn: readonly Litres[];
  /** Litres asked for that could not be drawn without going into the reserve, by day. They are not drawn later. */
  readonly unmet: readonly Litres[];
  /** Drums that a sling was to take and that did not stand there sealed and fit, by day. */
  readonly slingShortDrums: readonly number[];
  /** Fit litres that passed their retest date the day before, by day. */
  readonly pastRetest: readonly Litres[];
  /** The drums behind `pastRetest`: in date at the opening, but not when the plan would burn them. */
  readonly agedOut: readonly AgedOutDrum[];
  readonly minimumLitres: Litres;
  readonly criticalLitres: Litres;
  readonly reserveLitres: Litres;
  readonly capacityLitres: Litres;
  /** First level below the minimum; 0: already at the opening; null: never. */
  readonly belowMinimumDay: number | null;
  readonly belowCriticalDay: number | null;
  /** First level at or below zero. */
  readonly runOutDay: number | null;
  /** Usable at the opening over the mean draw of the days ahead; null without draws. */
  readonly daysOfCover: number | null;
}

/** A drum that is fit today and passes its retest date with fuel still in it. */
export interface AgedOutDrum {
  readonly place: string;
  readonly number: string;
  /** Litres left in it by then. */
  readonly litres: Litres;
  /** Last day on which it may be used. */
  readonly retestDue: IsoDate;
  /** The same as a day of the plan, from 1. */
  readonly dueDay: number;
}
