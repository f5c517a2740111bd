import type { Place } from '@drumline/network';
import { daysBetween, type IsoDate } from '@drumline/units';
import type { CrewRules, Pilot } from '../scenario.js';

/**
 * Why a pilot may not fly a type over these places on a date; null: fit (conventions, "Crew fit"). Rated for the type,
 * cleared for the class of every strip, on duty, and for classes under the recency rule last landed at that very strip
 * within the days allowed. Hours are another matter.
 */
export function whyNotFit(
  pilot: Pilot,
  type: string,
  places: readonly Place[],
  date: IsoDate,
  rules: CrewRules,
): string | null {
  if (!pilot.types.includes(type)) return `${pilot.id} is not rated for type ${type}`;
  if (pilot.daysOff.includes(date)) return `${pilot.id} is off duty on ${date}`;
  for (const place of places) {
    const why = notCleared(pilot, place) ?? notRecent(pilot, place, date, rules);
    if (why !== null) return why;
  }
  return null;
}

function notCleared(pilot: Pilot, place: Place): string | null {
  if (place.stripClass === null || pilot.stripClasses.includes(place.stripClass)) return null;
  return `${pilot.id} is not cleared for ${place.code}, class ${place.stripClass}`;
}

function notRecent(pilot: Pilot, place: Place, date: IsoDate, rules: CrewRules): string | null {
  const allowed = recencyDays(place, rules);
  if (allowed === null) return null;
  const last = pilot.lastLandings
    .filter((landing) => landing.place === place.code && landing.date <= date)
    .reduce<IsoDate | null>((latest, { date: on }) => (latest === null || on > latest ? on : latest), null);
  if (last === null) return `${pilot.id} has no recorded landing at ${place.code}`;
  const age = daysBetween(last, date);
  return age <= allowed
    ? null
    : `${pilot.id} last landed at ${place.code} ${age} days before, ${allowed} allowed`;
}

/** Days within which the last landing at the place must lie; null: the recency rule does not cover its class. */
export function recencyDays(place: Place, rules: CrewRules): number | null {
  return rules.recencyDays.find(({ stripClass }) => stripClass === place.stripClass)?.days ?? null;
}
