import { type NauticalMiles, type Pounds, pounds } from '@drumline/units';
import type { NamedLoad } from '../named-load/named-load.js';
import { exactDryLb } from '../named-load/weigh-load.js';
import type { LegEnd } from '../route-load.js';
import { stripWeights } from '../strip-limit.js';
import { countWords } from '../wording.js';

/** A place to which a flight may go instead of the end of a leg. */
export interface AlternateStrip {
  readonly end: LegEnd;
  /** From the end of the leg. */
  readonly distanceNm: NauticalMiles;
  /** Drums that may still be put down there. */
  readonly roomDrums: number;
}

/** An alternate looked at with the load aboard. */
export interface Alternate {
  readonly place: string;
  readonly drums: number;
  readonly roomDrums: number;
  readonly landingLb: Pounds;
  readonly fuelLb: Pounds;
  /** Null: it will do. */
  readonly whyNot: string | null;
  /** "CIN, 4 drums, room 28". */
  readonly words: string;
}

/**
 * Alternates of a leg with everything aboard, those that will do first, then the nearest: the type may land there at
 * that weight, final reserve is left, and there is room for the drums. Fuel in still air.
 */
export function alternatesOf(load: NamedLoad, leg: number, strips: readonly AlternateStrip[]): Alternate[] {
  return [...strips]
    .sort((a, b) => a.distanceNm - b.distanceNm)
    .map((strip) => alternate(load, leg, strip))
    .sort((a, b) => Number(a.whyNot !== null) - Number(b.whyNot !== null));
}

function alternate(load: NamedLoad, leg: number, { end, distanceNm, roomDrums }: AlternateStrip): Alternate {
  const { type, fuelPolicy } = load.request;
  const trip = (distanceNm / type.cruiseKt) * type.fuelFlowLbPerHour + type.climbAllowanceLb;
  const fuel = load.route.legs[leg]!.fuelAtLandingLb - trip;
  const landing = exactDryLb(load, leg) + fuel;
  const reserve = (type.fuelFlowLbPerHour / 60) * fuelPolicy.finalReserveMinutes;
  const drums = load.drums.filter(({ offAfterLeg }) => leg <= offAfterLeg).length;
  const strip = stripWeights(end);
  const whyNot =
    strip.forbiddenBy !== null
      ? strip.forbiddenBy
      : landing > Math.min(strip.landingLb, type.maxLandingLb)
        ? 'too heavy to land'
        : fuel < reserve
          ? 'not enough fuel'
          : roomDrums < drums
            ? 'no room for the drums'
            : null;
  const place = end.place.code;
  return {
    place,
    drums,
    roomDrums,
    landingLb: pounds(Math.ceil(landing)),
    fuelLb: pounds(Math.floor(fuel)),
    whyNot,
    words: `${place}, ${countWords(drums, 'drum')}, room ${roomDrums}`,
  };
}
