import { daylight, type Place } from '@drumline/network';
import { type IsoDate, localDate, localTime, type Minutes, minutes, minutesOfDay } from '@drumline/units';
import type { Scenario } from '../scenario.js';

/** When flights from a home base may be away on a day, in minutes after local midnight; null: not at all. */
export type FlyingWindow = { readonly from: Minutes; readonly until: Minutes } | null;

/**
 * From the first departure, or from `asOf` where that is later on its day, to the earlier of the last landing and
 * sunset at home less the margin. Null on a day before `asOf`, on a no-flying day, and where the sun stays down.
 */
export function flyingWindow(scenario: Scenario, home: Place, date: IsoDate): FlyingWindow {
  const whole = wholeDayWindow(scenario, home, date);
  const today = localDate(scenario.asOf, scenario.timeZone);
  if (whole === null || date < today || scenario.noFlyingDays.includes(date)) return null;
  if (date > today) return whole;
  const now = minutesOfDay(localTime(scenario.asOf, scenario.timeZone));
  return now >= whole.until ? null : { ...whole, from: minutes(Math.max(whole.from, now)) };
}

/** The same for the whole day, whatever the hour of `asOf` and whether anybody flies. */
export function wholeDayWindow(scenario: Scenario, home: Place, date: IsoDate): FlyingWindow {
  const { firstDeparture, lastLanding, daylightMarginMinutes } = scenario.policy.flyingDay;
  const light = daylight(home, date, scenario.timeZone);
  if (light === null) return null;
  const from = minutesOfDay(firstDeparture);
  const darkens = light.until < minutesPerDay;
  const until = Math.min(minutesOfDay(lastLanding), light.until - (darkens ? daylightMarginMinutes : 0));
  return until <= from ? null : { from, until: minutes(until) };
}

const minutesPerDay = 1440;
