import { type Pounds, print } from '@drumline/units';
import { checkLoad } from '../named-load/check-load.js';
import { type NamedLoad, printedLegsOf, type StandingDrumAboard } from '../named-load/named-load.js';
import { placeDrums } from '../named-load/place-drums.js';
import type { RouteRequest } from '../route-load.js';
import { stripWeights } from '../strip-limit.js';
import { listWords } from '../wording.js';
import { doNotGo, drumsThatGo, type ForStop } from './soft-words.js';

/** What to do when a strip turns out soft: decided with the plan, used without a radio. */
export interface IfSoft {
  readonly place: string;
  /** Drums for that place that still go, 0 where only those for other stops do; null: do not go by this version. */
  readonly take: number | null;
  /** Drums to leave at the base. */
  readonly leave: readonly string[];
  /** Drums that must change position once those are left, "0449 to R1L". */
  readonly moves: readonly string[];
  readonly landsLb: Pounds | null;
  /** Where the drums that go stand then; empty: do not go. */
  readonly standing: readonly { readonly number: string; readonly position: string }[];
  readonly words: string;
}

/**
 * The load for a soft strip at the end of a leg: the most drums for it that hold in every limit and balance, the last
 * of the list left behind first, the rest moved only where they must. Drums for other stops go as planned, by the same
 * route. Where nothing at all would be aboard it does not go.
 */
export function ifSoft(load: NamedLoad, leg: number): IfSoft {
  const place = load.request.legs[leg]!.to.place.code;
  const soft = { ...load, request: withSoft(load.request, place) };
  const forStop = load.drums.filter(({ offAfterLeg }) => offAfterLeg === leg);
  const most = isWorthGoing(load, forStop) ? forStop.length : forStop.length - 1;
  for (let left = 0; left <= most; left++) {
    for (const leave of choices(forStop, left)) {
      const drums = standAfter(
        soft,
        load.drums.filter((drum) => !leave.includes(drum)),
      );
      if (drums) return taken(soft, leg, leave, drums);
    }
  }
  return {
    place,
    take: null,
    leave: forStop.map(({ number }) => number),
    moves: [],
    landsLb: null,
    standing: [],
    words: `If ${place} is soft: ${doNotGo(place, byStop(load, forStop))}.`,
  };
}

/** Whether anything flies when all drums for the stop stay. */
const isWorthGoing = ({ drums, cargo, request }: NamedLoad, forStop: readonly StandingDrumAboard[]) =>
  drums.length > forStop.length || cargo.length > 0 || request.legs.some(({ passengers }) => passengers > 0);

/** Every stop of the drums with those that go there, in the order of the route. */
const byStop = ({ request, drums }: NamedLoad, leave: readonly StandingDrumAboard[]): readonly ForStop[] =>
  request.legs.flatMap(({ to }, leg) => {
    const forIt = drums.filter(({ offAfterLeg }) => offAfterLeg === leg);
    const go = forIt.filter((drum) => !leave.includes(drum));
    return forIt.length === 0 ? [] : [{ place: to.place.code, drums: go.length }];
  });

/**
 * The same once the aeroplane has left the base: nothing can be left there or moved any more, so it lands with what is
 * aboard or not at all.
 */
export function ifSoftOnTheWay(load: NamedLoad, leg: number): IfSoft {
  const { to } = load.request.legs[leg]!;
  const place = to.place.code;
  const strip = stripWeights({ ...to, surface: 'soft' });
  const landsLb = printedLegsOf(load)[leg]!.landingLb;
  const aboard = load.drums.filter(({ offAfterLeg }) => leg <= offAfterLeg);
  const may =
    strip.forbiddenBy === null && landsLb <= Math.min(strip.landingLb, load.request.type.maxLandingLb);
  return {
    place,
    take: may ? aboard.filter(({ offAfterLeg }) => offAfterLeg === leg).length : null,
    leave: [],
    moves: [],
    landsLb: may ? landsLb : null,
    standing: may ? aboard.map(({ number, position }) => ({ number, position })) : [],
    words: may
      ? `If ${place} is soft: lands with ${print(landsLb, 'lb')}, within its soft limit.`
      : `If ${place} is soft: do not land there.`,
  };
}

/** Where the drums stand so that the load holds: as they do now, or with the fewest moves; null: they cannot. */
export function standAfter(
  load: NamedLoad,
  drums: readonly StandingDrumAboard[],
): readonly StandingDrumAboard[] | null {
  if (checkLoad({ ...load, drums }).holds) return drums;
  const placed = placeDrums(load, drums, new Map(drums.map(({ number, position }) => [number, position])));
  return placed.found && checkLoad({ ...load, drums: placed.drums }).holds ? placed.drums : null;
}

function taken(
  load: NamedLoad,
  leg: number,
  leave: readonly StandingDrumAboard[],
  drums: readonly StandingDrumAboard[],
): IfSoft {
  const place = load.request.legs[leg]!.to.place.code;
  const take = drums.filter(({ offAfterLeg }) => offAfterLeg === leg).length;
  const numbers = leave.map(({ number }) => number);
  const moves = drums
    .filter(({ number, position }) => load.drums.find((one) => one.number === number)!.position !== position)
    .map(({ number, position }) => `${number} to ${position}`);
  const landsLb = checkLoad({ ...load, drums }).legs[leg]!.landingLb;
  const stops = byStop(load, leave);
  const all = drums.length === 1 ? 'take the one drum' : `take all ${drums.length} drums`;
  const what = numbers.length === 0 ? all : `take ${drumsThatGo(stops)}, leave ${listWords(numbers)} here`;
  const how = moves.length === 0 ? '' : `, move ${listWords(moves)}`;
  const lands = stops.length > 1 ? `Lands ${place}` : 'Lands';
  const words = `If ${place} is soft: ${what}${how}. ${lands} with ${print(landsLb, 'lb')}.`;
  const standing = drums.map(({ number, position }) => ({ number, position }));
  return { place, take, leave: numbers, moves, landsLb, standing, words };
}

/** Ways to leave so many behind, those that leave the last of the list first. */
function choices<T>(list: readonly T[], count: number): T[][] {
  if (count === 0) return [[]];
  return list
    .map((_, index) => list.length - 1 - index)
    .flatMap((last) => choices(list.slice(0, last), count - 1).map((others) => [...others, list[last]!]));
}

const withSoft = (request: RouteRequest, place: string): RouteRequest => ({
  ...request,
  legs: request.legs.map((leg) => ({
    ...leg,
    from: leg.from.place.code === place ? { ...leg.from, surface: 'soft' as const } : leg.from,
    to: leg.to.place.code === place ? { ...leg.to, surface: 'soft' as const } : leg.to,
  })),
});
