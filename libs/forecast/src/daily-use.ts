import {
  type Days,
  days,
  type IsoDate,
  type Litres,
  type LitresPerDay,
  litres,
  litresPerDay,
} from '@drumline/units';

/** Use of fuel by day: its mean and its standard deviation from day to day. */
export interface DailyUse {
  readonly mean: LitresPerDay;
  readonly deviation: LitresPerDay;
}

/**
 * Mean daily use over `dates` and its sample standard deviation; days without a draw count as 0, draws on other days
 * do not count. Both are 0 of no days, the deviation of one day.
 */
export const dailyUse = (
  draws: readonly { readonly date: IsoDate; readonly litres: Litres }[],
  dates: readonly IsoDate[],
): DailyUse => {
  const byDay = new Map(dates.map((date) => [date, 0]));
  for (const { date, litres } of draws) {
    const drawn = byDay.get(date);
    if (drawn !== undefined) byDay.set(date, drawn + litres);
  }
  const drawn = [...byDay.values()];
  const mean = total(drawn) / Math.max(drawn.length, 1);
  const variance = total(drawn.map((each) => (each - mean) ** 2)) / Math.max(drawn.length - 1, 1);
  return { mean: litresPerDay(mean), deviation: litresPerDay(Math.sqrt(variance)) };
};

/** Days that the usable litres last at that mean use; 0 where there are none, null where nothing is used. */
export const daysOfCover = (usable: Litres, meanUse: LitresPerDay): Days | null =>
  meanUse > 0 ? days(Math.max(usable, litres(0)) / meanUse) : null;

const total = (figures: readonly number[]): number => figures.reduce((sum, each) => sum + each, 0);
