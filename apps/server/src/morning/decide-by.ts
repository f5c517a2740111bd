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
  /** When it was offered, or marked: before that there was nothing to decide. */
  readonly askedAt: IsoInstant;
}

/**
 * The latest moment to decide a flight: for a later day when its day pack is printed, for today half an hour before it leaves.
 * Offered or marked after that: the next of these moments, at last when it leaves.
 */
export const decideBy = (
  { date, departs, askedAt }: ToDecide,
  today: IsoDate,
  timeZone: string,
): IsoInstant => {
  const off = epochMinutes(instantOf(date, departs, timeZone));
  const compared = instantAt(minutes(off - minutesBeforeDeparture));
  const printed = date > today ? [instantOf(addDays(date, -1), packTime, timeZone)] : [];
  const inTime = (at: IsoInstant) => epochMinutes(at) >= epochMinutes(askedAt);
  return [...printed, compared].find(inTime) ?? instantAt(minutes(off));
};
