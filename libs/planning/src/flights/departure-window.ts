import { daylight, type Place } from '@drumline/network';
import { type ClockTime, type IsoDate, localDate, localTime, minutesOfDay } from '@drumline/units';
import type { Scenario } from '../scenario.js';

export interface TimedFlight {
  readonly date: IsoDate;
  readonly legs: readonly { readonly from: Place; readonly to: Place; readonly blockHours: number }[];
  readonly turnRoundMinutes: number;
  /** A time that is given already. */
  readonly departs?: ClockTime;
}

/**
 * Earliest and latest departure of a flight, in minutes after local midnight (whole; `latest` < `earliest`: none): no
 * earlier than the first departure nor than `asOf` on its day, every take-off and landing in daylight, the last landing
 * within the flying day, and every landing the margin before sunset. A given time leaves no choice.
 */
export function departureWindow(
  scenario: Scenario,
  flight: TimedFlight,
): { readonly earliest: number; readonly latest: number } {
  if (flight.departs !== undefined) {
    const given = minutesOfDay(flight.departs);
    return { earliest: given, latest: given };
  }
  const { flyingDay } = scenario.policy;
  let earliest = Math.max(minutesOfDay(flyingDay.firstDeparture), minutesGone(scenario, flight.date));
  let latest = Number.POSITIVE_INFINITY;
  let elapsed = 0;
  for (const leg of flight.legs) {
    const takeoff = lightOf(scenario, leg.from, flight.date);
    const landing = lightOf(scenario, leg.to, flight.date);
    earliest = Math.max(earliest, takeoff.from - elapsed);
    latest = Math.min(latest, takeoff.until - elapsed);
    elapsed += leg.blockHours * 60;
    const lastLanding = Math.min(minutesOfDay(flyingDay.lastLanding), landing.lastLanding);
    earliest = Math.max(earliest, landing.from - elapsed);
    latest = Math.min(latest, lastLanding - elapsed);
    elapsed += flight.turnRoundMinutes;
  }
  return { earliest: Math.ceil(earliest - noise), latest: Math.floor(latest + noise) };
}

const noise = 1e-6;

/** Minutes of the day that are over at `asOf`; the whole day where it lies before. */
function minutesGone({ asOf, timeZone }: Scenario, date: IsoDate): number {
  const today = localDate(asOf, timeZone);
  if (date > today) return 0;
  return date < today ? 1440 : minutesOfDay(localTime(asOf, timeZone));
}

function lightOf({ timeZone, policy }: Scenario, place: Place, date: IsoDate) {
  const light = daylight(place, date, timeZone);
  if (!light) return { from: Number.POSITIVE_INFINITY, until: Number.NEGATIVE_INFINITY, lastLanding: 0 };
  const noSunset = light.until >= 1440;
  const margin = noSunset ? 0 : policy.flyingDay.daylightMarginMinutes;
  return { from: light.from, until: light.until, lastLanding: light.until - margin };
}
