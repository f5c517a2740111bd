import { daylight } from '@drumline/network';
import {
  type ClockTime,
  clockTimeAt,
  type IsoDate,
  type Minutes,
  minutes,
  minutesOfDay,
} from '@drumline/units';
import type { NamedLoad } from '../named-load/named-load.js';

/** The operator's day: nobody lands later than this, nor later than the end of daylight less the margin. */
export interface LandingHours {
  readonly date: IsoDate;
  readonly timeZone: string;
  readonly lastLanding: ClockTime;
  readonly daylightMarginMinutes: Minutes;
}

/** Latest time to leave a place so that this leg and all that follow land in time; null: it is too late all day. */
export interface LatestLeave {
  readonly from: string;
  readonly at: ClockTime | null;
  /** The landing that sets the time, and by when it must be made. */
  readonly setBy: { readonly place: string; readonly landBy: ClockTime | null };
}

/** By leg: block times and turn-rounds counted back from the last landing that daylight allows at each place. */
export function latestLeaves({ request, route }: NamedLoad, day: LandingHours): LatestLeave[] {
  let onwards: { leave: number; place: string; landBy: number } | null = null;
  const leaves = request.legs.map((leg, index) => ({ leg, block: route.legs[index]!.blockHours * 60 }));
  return leaves
    .reverse()
    .map(({ leg, block }) => {
      const own = { place: leg.to.place.code, landBy: landBy(leg.to.place, day) };
      const turned =
        onwards === null ? Number.POSITIVE_INFINITY : onwards.leave - request.type.turnRoundMinutes;
      const sets = onwards === null || own.landBy <= turned ? own : onwards;
      const leave = Math.min(own.landBy, turned) - block;
      onwards = { leave, place: sets.place, landBy: sets.landBy };
      return {
        from: leg.from.place.code,
        at: clock(leave),
        setBy: { place: sets.place, landBy: clock(sets.landBy) },
      };
    })
    .reverse();
}

/** Minutes after midnight; never, where the sun does not rise. */
function landBy(place: Parameters<typeof daylight>[0], day: LandingHours): number {
  const light = daylight(place, day.date, day.timeZone);
  if (light === null) return Number.NEGATIVE_INFINITY;
  // Where the sun does not set that day there is no dusk to keep a margin from.
  const dusk = light.until - light.from >= 1440 ? 1440 : light.until - day.daylightMarginMinutes;
  return Math.min(minutesOfDay(day.lastLanding), dusk);
}

const clock = (sinceMidnight: number): ClockTime | null =>
  sinceMidnight >= 0 ? clockTimeAt(minutes(Math.min(1439, sinceMidnight))) : null;
