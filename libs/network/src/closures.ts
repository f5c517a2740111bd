import { epochMinutes, type IsoDate, instantOf } from '@drumline/units';
import { distanceToLeg, geodesic } from './distance.js';
import type { FlyingHours } from './flying-hours.js';
import { memo } from './memo.js';
import type { HazardNotice, LocatedPlace } from './place.js';

/** The hazard notice that closes a place or a leg on a day; null: open. */
export interface Closures {
  readonly ofPlace: (place: LocatedPlace, day: IsoDate) => HazardNotice | null;
  readonly ofLeg: (from: LocatedPlace, to: LocatedPlace, day: IsoDate) => HazardNotice | null;
}

/**
 * Closures by hazard notices. A place named by a notice, or inside its circle, is closed on every day of which the
 * notice covers any minute between first departure and last landing; a leg is closed with either of its places, and
 * where its line crosses the circle.
 */
export const closures = (notices: readonly HazardNotice[], hours: FlyingHours): Closures => {
  const onDay = memo((day: IsoDate) => notices.filter((notice) => holdsOn(notice, day, hours)));
  const shuts = memo((place: LocatedPlace) => new Set(notices.filter((notice) => shutsPlace(notice, place))));
  const crossed = memo((from: LocatedPlace) =>
    memo((to: LocatedPlace) => new Set(notices.filter((notice) => crosses(notice, from, to)))),
  );
  return {
    ofPlace: (place, day) => onDay(day).find((notice) => shuts(place).has(notice)) ?? null,
    ofLeg: (from, to, day) =>
      onDay(day).find(
        (notice) => shuts(from).has(notice) || shuts(to).has(notice) || crossed(from)(to).has(notice),
      ) ?? null,
  };
};

const holdsOn = (notice: HazardNotice, day: IsoDate, hours: FlyingHours): boolean =>
  epochMinutes(notice.from) < epochMinutes(instantOf(day, hours.lastLanding, hours.timeZone)) &&
  epochMinutes(notice.until) > epochMinutes(instantOf(day, hours.firstDeparture, hours.timeZone));

const shutsPlace = ({ places, circle }: HazardNotice, place: LocatedPlace): boolean =>
  places.includes(place.code) ||
  (circle !== undefined && geodesic(circle, place).distanceNm <= circle.radiusNm);

const crosses = ({ circle }: HazardNotice, from: LocatedPlace, to: LocatedPlace): boolean =>
  circle !== undefined && distanceToLeg(circle, from, to) <= circle.radiusNm;
