import { daylight, type Place } from '@drumline/network';
import { type ClockTime, type IsoDate, localDate, localTime, minutesOfDay } from '@drumline/units';
import type { Scenario } from '../scenario.js';

export interface TimedFlight {
  readonly date: IsoDate;
  readonly legs: readonly { readonly from: Place; readonly to: Place; readonly blockHours: number }[];
  readonly turnRoundMinutes: number;
  /** A time that is given already. */
  readonly departs?: ClockTime;
  /** It is away or home again, so the present hour says nothing. */
  readonly hasLeft: boolean;
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
  const gone = flight.hasLeft ? 0 : minutesGone(scenario, flight.date);
  let earliest = Math.max(minutesOfDay(flyingDay.firstDeparture), gone);
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

/** Minutes of today that are over at `asOf`; days past are looked at as they were. */
function minutesGone({ asOf, timeZone }: Scenario, date: IsoDate): number {
  return date === localDate(asOf, timeZone) ? minutesOfDay(localTime(asOf, timeZone)) : 0;
}

function lightOf({ timeZone, policy }: Scenario, place: Place, date: IsoDate) {
  const light = daylight(place, date, timeZone);
  if (!light) return { from: Number.POSITIVE_INFINITY, until: Number.NEGATIVE_INFINITY, lastLanding: 0 };
  const noSunset = light.until >= 1440;
  const margin = noSunset ? 0 : policy.flyingDay.daylightMarginMinutes;
  return { from: light.from, until: light.until, lastLanding: light.until - margin };
}
