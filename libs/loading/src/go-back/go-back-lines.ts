import { type Knots, print } from '@drumline/units';
import type { NamedLoad } from '../named-load/named-load.js';
import { type Alternate, type AlternateStrip, alternateLines, alternatesOf, notToUse } from './alternates.js';
import { type IfSoft, ifSoft, ifSoftOnTheWay } from './fallbacks.js';
import { type LandingHours, type LatestLeave, latestLeaves } from './latest-leave.js';
import { type LeaveAgain, leaveAgain } from './leave-again.js';

/** What is decided the evening before about the landing at the end of one leg. */
export interface GoBack {
  readonly place: string;
  /** Null: not given for the place. */
  readonly tailwindLimitKt: Knots | null;
  readonly oneWay: boolean;
  readonly committalPoint: string | null;
  readonly latestLeave: LatestLeave;
  /** Null at the last landing. */
  readonly leaveAgain: LeaveAgain | null;
  readonly leaveAgainSoft: LeaveAgain | null;
  /** Null where no drum is for this place. */
  readonly ifSoft: IfSoft | null;
  readonly alternates: readonly Alternate[];
  /** "Not to use: KNA (FW4 is not cleared for KNA, class 3)."; null: none is nearer than the first that will do. */
  readonly notToUse: string | null;
  /** The lines as they stand on phone and paper, in this order. */
  readonly lines: readonly string[];
}

/**
 * Go-back lines of one leg, in words, with their figures: tailwind and committal point, latest time to leave, unload or
 * stay, what to do when the strip is soft or closes, and alternates with room for the drums. `isUnderWay`: it has left the
 * base, where nothing can stay behind any more.
 */
export function goBackLines(
  load: NamedLoad,
  leg: number,
  day: LandingHours & { readonly isUnderWay?: boolean },
  strips: readonly AlternateStrip[],
): GoBack {
  const { place } = load.request.legs[leg]!.to;
  const last = leg === load.request.legs.length - 1;
  const alternates = alternatesOf(load, leg, strips);
  const soft = day.isUnderWay === true ? ifSoftOnTheWay : ifSoft;
  const landing = {
    place: place.code,
    tailwindLimitKt: place.runway?.tailwindLimitKt ?? null,
    oneWay: place.runway?.oneWay ?? false,
    committalPoint: place.runway?.committalPoint ?? null,
    latestLeave: latestLeaves(load, day)[leg]!,
    leaveAgain: last ? null : leaveAgain(load, leg),
    leaveAgainSoft: last ? null : leaveAgain(load, leg, 'soft'),
    ifSoft: load.drums.some(({ offAfterLeg }) => offAfterLeg === leg) ? soft(load, leg) : null,
    alternates,
    notToUse: notToUse(alternates, last),
  };
  return { ...landing, lines: linesOf(landing) };
}

function linesOf(landing: Omit<GoBack, 'lines'>): string[] {
  const { place, leaveAgain: dry, leaveAgainSoft: soft, alternates } = landing;
  return [
    tailwindLine(landing),
    ...(landing.oneWay ? [`${place} is one-way: land one direction, take off the other.`] : []),
    leaveLine(landing.latestLeave),
    ...(dry === null ? [] : [`Unload or stay: ${dry.words}.`]),
    ...(soft === null || dry?.surface === 'soft' ? [] : [`${soft.words}.`]),
    ...(landing.ifSoft === null ? [] : [landing.ifSoft.words]),
    ...alternateLines(place, alternates, dry === null),
  ];
}

function tailwindLine({ tailwindLimitKt, committalPoint }: Omit<GoBack, 'lines'>): string {
  const decide = committalPoint === null ? 'No committal point.' : `Decide by ${committalPoint}.`;
  const tailwind =
    tailwindLimitKt === null
      ? 'No tailwind limit is given.'
      : `Go back if tailwind more than ${print(tailwindLimitKt, 'kt')}.`;
  return `${tailwind} ${decide}`;
}

const leaveLine = ({ from, at, setBy }: LatestLeave): string =>
  at === null
    ? `No time to leave ${from}: ${setBy.place} cannot be reached in daylight.`
    : `Leave ${from} by ${at}: land ${setBy.place} by ${setBy.landBy}.`;

/** What a tailwind that is met means at a place, in words: "Tailwind 5 kt: outside the limit of 3 kt, go back." */
export function tailwindWords(limitKt: Knots, tailwindKt: Knots): string {
  const met = `Tailwind ${print(tailwindKt, 'kt')}`;
  return tailwindKt > limitKt
    ? `${met}: outside the limit of ${print(limitKt, 'kt')}, go back.`
    : `${met}: within the limit of ${print(limitKt, 'kt')}.`;
}
