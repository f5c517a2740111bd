import { decimalsOf, type Knots, type NauticalMiles, type Pounds, pounds, print } from '@drumline/units';
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
  /** From there to where the flight ends; 0: it ends there. */
  readonly homeNm: NauticalMiles;
  /** A base: no drum has to come out there. */
  readonly isBase: boolean;
  /** Drums that may still be put down there on that day, before this flight's own; null: not limited. */
  readonly roomDrums: number | null;
  /** What keeps this crew on this day from going there, whatever is aboard; null: nothing. */
  readonly whyNot: string | null;
}

/** An alternate looked at with the load aboard. */
export interface Alternate {
  readonly place: string;
  readonly distanceNm: NauticalMiles;
  readonly isHome: boolean;
  readonly drums: number;
  /** Null: not limited. */
  readonly roomDrums: number | null;
  readonly landingLb: Pounds;
  readonly fuelLb: Pounds;
  /** What is wanting there to fly home and have final reserve left; 0: nothing, or it is the end of the flight. */
  readonly homeShortLb: Pounds;
  readonly isOneWay: boolean;
  /** Null: not given for the place. */
  readonly tailwindLimitKt: Knots | null;
  /** "soft"; "as soft": unknown, so soft counts; null: firm. */
  readonly surface: string | null;
  /** Null: it will do. */
  readonly whyNot: string | null;
  /** "CIN, room 28, one-way, tailwind to 3 kt, as soft"; "KNA (FW4 is not cleared for KNA, class 3)". */
  readonly words: string;
}

/**
 * Alternates of a leg with everything aboard, those that will do first: the crew may go there on the day, the type may land
 * there at that weight in the state of the surface, final reserve is left, and there is room for the drums. Of those home
 * comes first, then the places from which the flight gets home on its own fuel; then the nearest. A place from which it
 * does not get home will do only where no other does. On the way home, bases before strips. Fuel in still air.
 */
export function alternatesOf(load: NamedLoad, leg: number, strips: readonly AlternateStrip[]): Alternate[] {
  const isLast = leg === load.request.legs.length - 1;
  const rank = ({ isBase }: AlternateStrip, { whyNot, isHome }: Alternate) =>
    whyNot !== null ? 2 : isHome || (isLast && isBase) ? 0 : 1;
  const looked = strips.map((strip) => ({ strip, place: alternate(load, leg, strip) }));
  const getsHome = looked.some(({ place }) => place.whyNot === null && place.homeShortLb === 0);
  return looked
    .map(({ strip, place }) => ({ strip, place: getsHome ? unlessStuck(place) : place }))
    .sort(
      (a, b) => rank(a.strip, a.place) - rank(b.strip, b.place) || a.place.distanceNm - b.place.distanceNm,
    )
    .map(({ place }) => place);
}

/** Beside a place from which the flight gets home, one from which it does not is none to go to. */
function unlessStuck(looked: Alternate): Alternate {
  if (looked.whyNot !== null || looked.homeShortLb === 0) return looked;
  const whyNot = noFuelHome(looked);
  return { ...looked, whyNot, words: notWords({ ...looked, whyNot }) };
}

const noFuelHome = ({ homeShortLb }: Pick<Looked, 'homeShortLb'>): string =>
  `no fuel to come home: ${print(homeShortLb, 'lb')} short`;

const notWords = ({ place, whyNot }: Looked): string => `${place} (${whyNot})`;

/** Where to go when the end of a leg closes, and which others will do. */
export function alternateLines(leg: LandsAt, alternates: readonly Alternate[]): string[] {
  const [first, ...others] = alternates.filter(({ whyNot }) => whyNot === null);
  const closes = `If ${leg.to} closes while you are away:`;
  if (!first) return [`${closes} ${nowhere(leg)}.`];
  const also = others.slice(0, first.isHome ? 1 : 2).map(({ words }) => words);
  return [`${closes} ${goTo(first)}.`, ...(also.length === 0 ? [] : [`Also: ${also.join('; ')}.`])];
}

/** The leg that ends at a place that may close. */
export interface LandsAt {
  readonly from: string;
  readonly to: string;
}

const goTo = ({ isHome, drums, words }: Alternate): string => {
  if (isHome) return drums === 0 ? 'come home' : `come home with ${countWords(drums, 'drum')}`;
  return drums === 0 ? words : `${countWords(drums, 'drum')} to ${words}`;
};

/** What a crew can do where no alternate will do: know before it leaves. */
export const nowhere = ({ from, to }: LandsAt): string =>
  `no place takes this flight. Hear from ${to} before you leave ${from}`;

/** The places that will not do, and why, where somebody would look for them: home, and the nearest; on the way home, where none will do, null. */
export function notToUse(alternates: readonly Alternate[]): string | null {
  const first = alternates.find(({ whyNot }) => whyNot === null);
  const isWayHome = alternates.every(({ isHome }) => !isHome);
  const nearest = first?.distanceNm ?? (isWayHome ? 0 : Number.POSITIVE_INFINITY);
  const not = alternates.filter(({ whyNot }) => whyNot !== null);
  const nearer = not.find(({ distanceNm }) => distanceNm < nearest);
  const named = not.filter((one) => one === nearer || one.isHome);
  return named.length === 0 ? null : `Not to use: ${named.map(({ words }) => words).join('; ')}.`;
}

/** Before it is in words. */
type Looked = Omit<Alternate, 'words'>;

const willDoWords = ({ place, drums, roomDrums, surface, homeShortLb, ...strip }: Looked): string =>
  [
    place,
    ...(drums === 0 || roomDrums === null ? [] : [`room ${roomDrums}`]),
    ...(strip.isOneWay ? ['one-way'] : []),
    ...(strip.isOneWay && strip.tailwindLimitKt !== null
      ? [`tailwind to ${print(strip.tailwindLimitKt, 'kt', decimalsOf(strip.tailwindLimitKt))}`]
      : []),
    ...(surface === null ? [] : [surface]),
    ...(homeShortLb === 0 ? [] : [noFuelHome({ homeShortLb })]),
  ].join(', ');

function alternate(load: NamedLoad, leg: number, strip: AlternateStrip): Alternate {
  const fuel = load.route.legs[leg]!.fuelAtLandingLb - tripLb(load, strip.distanceNm);
  const landing = exactDryLb(load, leg) + fuel;
  const drums = load.drums.filter(({ offAfterLeg }) => leg <= offAfterLeg).length;
  const isHome = strip.homeNm === 0;
  const roomDrums = roomLeft(load, leg, strip);
  const isLast = leg === load.request.legs.length - 1;
  // On the way home it is home that is closed.
  const short = isHome || isLast ? 0 : finalReserveLb(load) - (fuel - tripLb(load, strip.homeNm));
  const looked: Looked = {
    place: strip.end.place.code,
    distanceNm: strip.distanceNm,
    isHome,
    drums,
    roomDrums,
    landingLb: pounds(Math.ceil(landing)),
    fuelLb: pounds(Math.floor(fuel)),
    homeShortLb: pounds(Math.max(0, Math.ceil(short))),
    isOneWay: strip.end.place.runway?.oneWay ?? false,
    tailwindLimitKt: strip.end.place.runway?.tailwindLimitKt ?? null,
    surface: strip.isSurfaceUnknown ? 'as soft' : strip.end.surface === 'soft' ? 'soft' : null,
    whyNot: strip.whyNot ?? whyNotThere(load, strip, { fuel, landing, drums, roomDrums }),
  };
  const words = looked.whyNot === null ? willDoWords(looked) : notWords(looked);
  return { ...looked, words };
}

/** Beside what this flight has put down there itself on an earlier leg. */
function roomLeft({ request, drums }: NamedLoad, leg: number, { end, roomDrums }: AlternateStrip) {
  const own = drums.filter(
    ({ offAfterLeg }) => offAfterLeg < leg && request.legs[offAfterLeg]!.to.place.code === end.place.code,
  );
  return roomDrums === null ? null : Math.max(0, roomDrums - own.length);
}

const tripLb = ({ request: { type } }: NamedLoad, distanceNm: NauticalMiles): number =>
  (distanceNm / type.cruiseKt) * type.fuelFlowLbPerHour + type.climbAllowanceLb;

const finalReserveLb = ({ request: { type, fuelPolicy } }: NamedLoad): number =>
  (type.fuelFlowLbPerHour / 60) * fuelPolicy.finalReserveMinutes;

interface OnArrival {
  readonly fuel: number;
  readonly landing: number;
  readonly drums: number;
  readonly roomDrums: number | null;
}

function whyNotThere(
  load: NamedLoad,
  { end, isSurfaceUnknown }: AlternateStrip,
  { fuel, landing, drums, roomDrums }: OnArrival,
): string | null {
  const { type } = load.request;
  const strip = stripWeights(end);
  const surface = isSurfaceUnknown ? ', surface unknown' : '';
  if (strip.forbiddenBy === 'closed when soft') return `closed to type ${type.id} when soft${surface}`;
  if (strip.forbiddenBy !== null) return strip.forbiddenBy;
  if (landing > Math.min(strip.landingLb, type.maxLandingLb)) return `too heavy to land${surface}`;
  if (fuel < finalReserveLb(load)) return 'not enough fuel';
  return roomDrums !== null && roomDrums < drums ? `no room for the drums: ${roomDrums} of ${drums}` : null;
}
