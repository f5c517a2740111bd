import { type Pounds, pounds, poundsFromKilograms, print } from '@drumline/units';
import { configurationOf } from '../aircraft-type.js';
import { type NamedLoad, printedLegsOf, type StandingDrumAboard } from '../named-load/named-load.js';
import { exactDryLb } from '../named-load/weigh-load.js';
import { printedLbOf } from '../printed-weights.js';
import type { LegEnd } from '../route-load.js';
import { stripWeights } from '../strip-limit.js';
import { countWords, listWords } from '../wording.js';

/** Unload or stay, with named drums: whether the aeroplane could leave as it arrives, and what must come out if not. */
export interface LeaveAgain {
  readonly place: string;
  readonly surface: string;
  /** As the sheet adds it. */
  readonly arrivalLb: Pounds;
  /** Null: no take-off there in that state. */
  readonly limitLb: Pounds | null;
  /** Negative: room. Null with the limit. */
  readonly overLb: Pounds | null;
  readonly canLeaveLoaded: boolean;
  /** Drums to unload to leave again, nearest the door first; null: not even without a drum. */
  readonly drumsOff: readonly string[] | null;
  readonly words: string;
}

/** Unload or stay at the end of a leg, in the surface state given (the planned one, or soft). */
export function leaveAgain(load: NamedLoad, leg: number, surface?: LegEnd['surface']): LeaveAgain {
  const end = load.request.legs[leg]!.to;
  const state = { ...end, surface: surface ?? end.surface };
  const strip = stripWeights(state);
  const arrivalLb = printedLegsOf(load)[leg]!.landingLb;
  const place = end.place.code;
  const named = { place, surface: state.surface, arrivalLb };
  if (strip.forbiddenBy !== null)
    return {
      ...named,
      limitLb: null,
      overLb: null,
      canLeaveLoaded: false,
      drumsOff: null,
      words: `${place} ${state.surface}: no take-off, ${strip.forbiddenBy}`,
    };
  const limitLb = pounds(Math.min(strip.takeoffLb, load.request.type.maxTakeoffLb));
  const exactLb = exactDryLb(load, leg) + load.route.legs[leg]!.fuelAtLandingLb;
  const drumsOff = drumsToUnload(load, leg, { printed: arrivalLb - limitLb, exact: exactLb - limitLb });
  const overLb = pounds(arrivalLb - limitLb);
  const canLeaveLoaded = drumsOff?.length === 0;
  return {
    ...named,
    limitLb,
    overLb,
    canLeaveLoaded,
    drumsOff,
    words: words(named, limitLb, overLb, drumsOff),
  };
}

/** Fewest drums, nearest the door first, without which both sums are under the limit. */
function drumsToUnload(
  load: NamedLoad,
  leg: number,
  over: { readonly printed: number; readonly exact: number },
): readonly string[] | null {
  const off: StandingDrumAboard[] = [];
  const waiting = doorFirst(load, leg);
  let { printed, exact } = over;
  while (printed > 0 || exact > 0) {
    const next = waiting.shift();
    if (!next) return null;
    off.push(next);
    printed -= printedLbOf(next.grossKg);
    exact -= poundsFromKilograms(next.grossKg);
  }
  return off.map(({ number }) => number);
}

function doorFirst({ request, drums }: NamedLoad, leg: number): StandingDrumAboard[] {
  const { drumPositions } = configurationOf(request.type, request.configuration);
  const place = new Map(drumPositions.map((position) => [position.id, position]));
  const order = ({ position }: StandingDrumAboard) => place.get(position)?.unloadOrder ?? 0;
  const arm = ({ position }: StandingDrumAboard) => place.get(position)?.armIn ?? 0;
  return drums
    .filter(({ offAfterLeg }) => leg <= offAfterLeg)
    .sort((a, b) => order(a) - order(b) || arm(b) - arm(a));
}

function words(
  { place, surface, arrivalLb }: Pick<LeaveAgain, 'place' | 'surface' | 'arrivalLb'>,
  limitLb: Pounds,
  overLb: Pounds,
  drumsOff: readonly string[] | null,
): string {
  const limit = `${print(arrivalLb, 'lb')} against ${print(limitLb, 'lb')} take-off limit`;
  if (drumsOff === null) return `${place} ${surface}: ${limit}, cannot leave even without a drum`;
  if (drumsOff.length === 0)
    return `${place} ${surface}: may leave loaded, ${print(pounds(-overLb), 'lb')} spare of ${print(limitLb, 'lb')}`;
  const over = print(pounds(Math.max(1, overLb)), 'lb');
  return `${place} ${surface}: ${limit}, ${over} over. Unload ${countWords(drumsOff.length, 'drum')} to leave again (${listWords(drumsOff)}), or stay`;
}
