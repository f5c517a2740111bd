import { type NauticalMiles, type Pounds, pounds } from '@drumline/units';
import type { NamedLoad } from '../named-load/named-load.js';
import { exactDryLb } from '../named-load/weigh-load.js';
import type { LegEnd } from '../route-load.js';
import { stripWeights } from '../strip-limit.js';
import { countWords } from '../wording.js';

/** A place to which a flight may go instead of the end of a leg. */
export interface AlternateStrip {
  readonly end: LegEnd;
  /** Nobody has said how the surface will be; then it stands as soft. */
  readonly isSurfaceUnknown: boolean;
  /** From the end of the leg. */
  readonly distanceNm: NauticalMiles;
  /** Drums that may still be put down there on that day. */
  readonly roomDrums: number;
  /** What keeps this crew on this day from going there, whatever is aboard; null: nothing. */
  readonly whyNot: string | null;
}

/** An alternate looked at with the load aboard. */
export interface Alternate {
  readonly place: string;
  readonly distanceNm: NauticalMiles;
  readonly drums: number;
  readonly roomDrums: number;
  readonly landingLb: Pounds;
  readonly fuelLb: Pounds;
  /** "soft"; "as soft": unknown, so soft counts; null: firm. */
  readonly surface: string | null;
  /** Null: it will do. */
  readonly whyNot: string | null;
  /** "CIN, room 28, as soft"; "KNA (FW4 is not cleared for KNA, class 3)". */
  readonly words: string;
}

/**
 * Alternates of a leg with everything aboard, those that will do first, then the nearest: the crew may go there on the
 * day, the type may land there at that weight in the state of the surface, final reserve is left, and there is room for
 * the drums. Fuel in still air.
 */
export function alternatesOf(load: NamedLoad, leg: number, strips: readonly AlternateStrip[]): Alternate[] {
  return [...strips]
    .sort((a, b) => a.distanceNm - b.distanceNm)
    .map((strip) => alternate(load, leg, strip))
    .sort((a, b) => Number(a.whyNot !== null) - Number(b.whyNot !== null));
}

/**
 * Where to go when the end of a leg closes, and which others will do. On the way home there is nothing to tell where
 * none will do.
 */
export function alternateLines(
  place: string,
  alternates: readonly Alternate[],
  isLastLeg: boolean,
): string[] {
  const [first, ...others] = alternates.filter(({ whyNot }) => whyNot === null);
  const closes = `If ${place} closes while you are away:`;
  if (!first) return isLastLeg ? [] : [`${closes} no alternate takes this load, come home.`];
  const drums = first.drums === 0 ? '' : `${countWords(first.drums, 'drum')} to `;
  return [
    `${closes} ${drums}${first.words}.`,
    ...(others.length === 0
      ? []
      : [
          `Also: ${others
            .slice(0, 2)
            .map(({ words }) => words)
            .join('; ')}.`,
        ]),
  ];
}

/** The nearest strip that will not do, and why, where it is nearer than the first that will; null: there is none. */
export function notToUse(alternates: readonly Alternate[], isLastLeg: boolean): string | null {
  const first = alternates.find(({ whyNot }) => whyNot === null);
  const nearest = first?.distanceNm ?? (isLastLeg ? 0 : Number.POSITIVE_INFINITY);
  const nearer = alternates.find(({ whyNot, distanceNm }) => whyNot !== null && distanceNm < nearest);
  return nearer ? `Not to use: ${nearer.words}.` : null;
}

const roomWords = ({ place, drums, roomDrums, surface }: Omit<Alternate, 'words'>): string =>
  [place, ...(drums === 0 ? [] : [`room ${roomDrums}`]), ...(surface === null ? [] : [surface])].join(', ');

function alternate(load: NamedLoad, leg: number, strip: AlternateStrip): Alternate {
  const { type } = load.request;
  const trip = (strip.distanceNm / type.cruiseKt) * type.fuelFlowLbPerHour + type.climbAllowanceLb;
  const fuel = load.route.legs[leg]!.fuelAtLandingLb - trip;
  const landing = exactDryLb(load, leg) + fuel;
  const drums = load.drums.filter(({ offAfterLeg }) => leg <= offAfterLeg).length;
  const whyNot = strip.whyNot ?? whyNotThere(load, strip, { fuel, landing, drums });
  const looked = {
    place: strip.end.place.code,
    distanceNm: strip.distanceNm,
    drums,
    roomDrums: strip.roomDrums,
    landingLb: pounds(Math.ceil(landing)),
    fuelLb: pounds(Math.floor(fuel)),
    surface: strip.isSurfaceUnknown ? 'as soft' : strip.end.surface === 'soft' ? 'soft' : null,
    whyNot,
  };
  const words = whyNot === null ? roomWords(looked) : `${looked.place} (${whyNot})`;
  return { ...looked, words };
}

interface OnArrival {
  readonly fuel: number;
  readonly landing: number;
  readonly drums: number;
}

function whyNotThere(
  { request }: NamedLoad,
  { end, isSurfaceUnknown, roomDrums }: AlternateStrip,
  { fuel, landing, drums }: OnArrival,
): string | null {
  const { type, fuelPolicy } = request;
  const strip = stripWeights(end);
  const surface = isSurfaceUnknown ? ', surface unknown' : '';
  if (strip.forbiddenBy === 'closed when soft') return `closed to type ${type.id} when soft${surface}`;
  if (strip.forbiddenBy !== null) return strip.forbiddenBy;
  if (landing > Math.min(strip.landingLb, type.maxLandingLb)) return `too heavy to land${surface}`;
  if (fuel < (type.fuelFlowLbPerHour / 60) * fuelPolicy.finalReserveMinutes) return 'not enough fuel';
  return roomDrums < drums ? `no room for the drums: ${roomDrums} of ${drums}` : null;
}
