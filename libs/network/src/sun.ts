import {
  daysBetween,
  epochMinutes,
  type IsoDate,
  type IsoInstant,
  instantAt,
  instantOf,
  localDate,
  localTime,
  type Minutes,
  minutes,
  minutesOfDay,
} from '@drumline/units';
import { Body, Equator, Horizon, Observer, SearchHourAngle, SearchRiseSet } from 'astronomy-engine';
import type { Position } from './place.js';

/** The sun of one day at one place. */
export type SunOfDay =
  | { readonly kind: 'rises and sets'; readonly sunrise: IsoInstant; readonly sunset: IsoInstant }
  | { readonly kind: 'no sunset' }
  | { readonly kind: 'no sunrise' };

/**
 * Sunrise and sunset about the noon of a local day: upper limb on a sea horizon with standard refraction, to the second.
 * "No sunset": the sun is up all day; "no sunrise": it stays down. On the day on which a season without sunset begins
 * or ends one of the two is missing, and stands at solar midnight.
 * Throws a RangeError for an unknown time zone. Computed by astronomy-engine.
 */
export const sunOfDay = (position: Position, day: IsoDate, timeZone: string): SunOfDay => {
  const observer = new Observer(position.latitudeDeg, position.longitudeDeg, 0);
  const noon = solarNoon(observer, day, timeZone);
  const sunrise = SearchRiseSet(Body.Sun, observer, 1, noon, -halfDay);
  const sunset = SearchRiseSet(Body.Sun, observer, -1, noon, halfDay);
  if (sunrise || sunset)
    return {
      kind: 'rises and sets',
      sunrise: instantOfDate(sunrise?.date ?? shifted(noon, -halfDay)),
      sunset: instantOfDate(sunset?.date ?? shifted(noon, halfDay)),
    };
  return { kind: sunAltitudeDeg(position, instantOfDate(noon)) > 0 ? 'no sunset' : 'no sunrise' };
};

/** Daylight of a local day in minutes after its midnight; outside 0 to 1,440 where the zone does not fit the longitude. */
export interface Daylight {
  readonly from: Minutes;
  readonly until: Minutes;
}

/**
 * Sunrise to sunset on a local day, in whole minutes of local time within the light; the whole day where there is no
 * sunset; null where there is no sunrise. Throws a RangeError for an unknown time zone.
 */
export const daylight = (position: Position, day: IsoDate, timeZone: string): Daylight | null => {
  // Finding the sun costs a thousand times as much as looking it up, and a plan asks of the same places again and again.
  const days = knownDaylight.get(position) ?? new Map<string, Daylight | null>();
  knownDaylight.set(position, days);
  const key = `${day} ${timeZone}`;
  const found = days.has(key) ? (days.get(key) as Daylight | null) : findDaylight(position, day, timeZone);
  days.set(key, found);
  return found;
};

const knownDaylight = new WeakMap<Position, Map<string, Daylight | null>>();

const findDaylight = (position: Position, day: IsoDate, timeZone: string): Daylight | null => {
  const sun = sunOfDay(position, day, timeZone);
  if (sun.kind === 'no sunrise') return null;
  if (sun.kind === 'no sunset') return { from: minutes(0), until: minutes(1440) };
  const firstMinute = instantAt(minutes(Math.ceil(epochMinutes(sun.sunrise))));
  return {
    from: minutesAfterMidnight(firstMinute, day, timeZone),
    until: minutesAfterMidnight(sun.sunset, day, timeZone),
  };
};

/** Height of the sun's centre above the horizon in degrees, refraction included. */
export const sunAltitudeDeg = (position: Position, at: IsoInstant): number => {
  const observer = new Observer(position.latitudeDeg, position.longitudeDeg, 0);
  const time = new Date(at);
  const { ra, dec } = Equator(Body.Sun, time, observer, true, true);
  return Horizon(time, observer, ra, dec, 'normal').altitude;
};

const halfDay = 0.5;

const solarNoon = (observer: Observer, day: IsoDate, timeZone: string): Date =>
  SearchHourAngle(Body.Sun, observer, 0, new Date(instantOf(day, '00:00', timeZone)), 1).time.date;

const minutesAfterMidnight = (at: IsoInstant, day: IsoDate, timeZone: string): Minutes =>
  minutes(daysBetween(day, localDate(at, timeZone)) * 1440 + minutesOfDay(localTime(at, timeZone)));

const shifted = (date: Date, days: number): Date => new Date(date.getTime() + days * 86_400_000);

const instantOfDate = (date: Date): IsoInstant => instantAt(minutes(date.getTime() / 60_000));
