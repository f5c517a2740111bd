import {
  addDays,
  epochMinutes,
  type IsoDate,
  type IsoInstant,
  instantAt,
  instantOf,
  minutes,
} from '@drumline/units';

/** Before its departure a crew loads and totals are compared; common practice, no source. */
const minutesBeforeDeparture = 30;
/** When the day pack of the next day is printed. */
export const packTime = '17:00';

interface ToDecide {
  readonly date: IsoDate;
  readonly departs: string;
}

/** The latest moment to decide a flight: half an hour before it leaves, or for a later day when its day pack is printed. */
export const decideBy = ({ date, departs }: ToDecide, today: IsoDate, timeZone: string): IsoInstant =>
  date <= today
    ? instantAt(minutes(epochMinutes(instantOf(date, departs, timeZone)) - minutesBeforeDeparture))
    : instantOf(addDays(date, -1), packTime, timeZone);
