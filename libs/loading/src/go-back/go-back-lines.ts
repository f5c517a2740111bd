import { decimalsOf, type Knots, print } from '@drumline/units';
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
  /** "Not to use: KNA (FW4 is not cleared for KNA, class 3)."; null: home will do, and nothing is nearer than the first that will. */
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
  const leaves = latestLeaves(load, day).slice(leg);
  const soft = day.isUnderWay === true ? ifSoftOnTheWay : ifSoft;
  const landing = {
    place: place.code,
    tailwindLimitKt: place.runway?.tailwindLimitKt ?? null,
    oneWay: place.runway?.oneWay ?? false,
    committalPoint: place.runway?.committalPoint ?? null,
    latestLeave: leaves[0]!,
    leaveAgain: last ? null : leaveAgain(load, leg),
    leaveAgainSoft: last ? null : leaveAgain(load, leg, 'soft'),
    ifSoft: load.drums.some(({ offAfterLeg }) => offAfterLeg === leg) ? soft(load, leg) : null,
    alternates,
    notToUse: notToUse(alternates),
  };
  return { ...landing, lines: linesOf(landing, leaves) };
}

function linesOf(landing: Landing, leaves: readonly LatestLeave[]): string[] {
  const { place, leaveAgain: dry, leaveAgainSoft: soft, alternates } = landing;
  return [
    tailwindLine(landing),
    ...(landing.oneWay ? [`${place} is one-way: land one direction, take off the other.`] : []),
    leaveLine(leaves),
    ...(dry === null ? [] : [`Unload or stay: ${dry.words}.`]),
    ...(soft === null || dry?.surface === 'soft' ? [] : [`${soft.words}.`]),
    ...(landing.ifSoft === null ? [] : [landing.ifSoft.words]),
    ...alternateLines({ from: landing.latestLeave.from, to: place }, alternates),
  ];
}

type Landing = Omit<GoBack, 'lines'>;

/** On the way home nobody goes back to the strip that it left. */
function tailwindLine({ tailwindLimitKt, committalPoint, leaveAgain: again }: Landing): string {
  const decide = committalPoint === null ? 'No committal point.' : `Decide by ${committalPoint}.`;
  const act = again === null ? 'Do not land' : 'Go back';
  const tailwind =
    tailwindLimitKt === null
      ? 'No tailwind limit is given.'
      : `${act} if tailwind more than ${print(tailwindLimitKt, 'kt', decimalsOf(tailwindLimitKt))}.`;
  return `${tailwind} ${decide}`;
}

/** From every place that it still leaves; those that one landing sets stand together. */
function leaveLine(leaves: readonly LatestLeave[]): string {
  const lands = [...new Set(leaves.map(landWords))];
  return lands
    .map((landing) => {
      const together = leaves.filter((leave) => landWords(leave) === landing);
      const late = together.find(({ at }) => at === null);
      if (late) return `No time to leave ${late.from}: ${late.setBy.place} cannot be reached in daylight.`;
      return `Leave ${together.map(({ from, at }) => `${from} by ${at}`).join(', ')}: ${landing}.`;
    })
    .join(' ');
}

const landWords = ({ setBy: { place, landBy } }: LatestLeave): string => `land ${place} by ${landBy}`;

/** What a tailwind that is met means at a place, in words: "Tailwind 5 kt: outside the limit of 3 kt, go back." */
export function tailwindWords(limitKt: Knots, tailwindKt: Knots): string {
  const met = `Tailwind ${print(tailwindKt, 'kt', decimalsOf(tailwindKt))}`;
  return tailwindKt > limitKt
    ? `${met}: outside the limit of ${print(limitKt, 'kt')}, go back.`
    : `${met}: within the limit of ${print(limitKt, 'kt')}.`;
}
