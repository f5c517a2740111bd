import type { SurfaceState } from '@drumline/network';
import { type Kilograms, kilogramsFromPounds, type Pounds, pounds, print } from '@drumline/units';
import { configurationOf } from '../aircraft-type.js';
import { leaveAgain } from '../go-back/leave-again.js';
import { printedLb, printedLbOf } from '../printed-weights.js';
import type { LegEnd, LimitName } from '../route-load.js';
import { isSoftNearest } from '../unknown-counts-soft.js';
import { countWords } from '../wording.js';
import { isAboard, type NamedLoad } from './named-load.js';
import {
  boundByCount,
  type CountLimit,
  type WeighedLeg,
  type WeightAgainstLimit,
  weighLoad,
} from './weigh-load.js';

/** One thing aboard, as a block of the bar. */
export interface BarBlock {
  readonly name: string;
  readonly kg: Kilograms;
  /** Whole, as printed. */
  readonly lb: Pounds;
  readonly isDrum: boolean;
  /** A drum that is held; absent: it is none. */
  readonly onHold?: true;
}

/** One limit, measured from the weight it concerns. */
export interface BarLimit {
  readonly name: LimitName;
  /** Null: a limit of the aeroplane. */
  readonly place: string | null;
  /** State of the strip it is for; null with the place. */
  readonly surface: SurfaceState | null;
  readonly moment: WeightAgainstLimit['moment'];
  readonly limitLb: Pounds;
  /** Of the printed sum; negative: over. */
  readonly spareLb: Pounds;
  readonly holds: boolean;
  /** The nearest of the weights that this leg is flown under, soft too where nobody knows the surface: it binds, unless a count does. */
  readonly binds: boolean;
}

/** The weights of a leg side by side from the operating weight to the trip fuel, with every limit. Whole pounds. */
export interface PayloadBar {
  readonly operatingLb: Pounds;
  readonly load: readonly BarBlock[];
  /** Fuel left on landing, and what the leg burns after taxi: together what is aboard at take-off. */
  readonly fuelOnLandingLb: Pounds;
  readonly tripLb: Pounds;
  /** By moment: zero fuel, take-off, landing; then leaving again. */
  readonly limits: readonly BarLimit[];
  /** Why it may not be flown at all; null: it may. */
  readonly forbiddenBy: string | null;
  /** A limit on how many drums that binds before any weight: all positions are taken; null: the nearest weight binds. */
  readonly boundByCount: CountLimit | null;
  /** Why it may not be flown when the strip is soft; null: it may. */
  readonly forbiddenWhenSoft: string | null;
  readonly drums: number;
  readonly drumPositions: number;
  /** What would let more go, or what has to change for this load to go. */
  readonly relax: string;
}

/** What is heard of the surface of a place, with its time: "dry 14 June 05:58", "unknown". */
export type SurfacesHeard = Readonly<Record<string, string>>;

/**
 * The payload bar of every leg of a named load, the strip's other surface and unload-or-stay beside its limits. A surface
 * that is heard to be unknown counts as soft: its soft limit binds where it is the nearest.
 */
export function payloadBars(load: NamedLoad, heard: SurfacesHeard = {}): PayloadBar[] {
  return weighLoad(load).map((weighed, leg) => {
    const drums = load.drums.filter(({ offAfterLeg }) => leg <= offAfterLeg);
    const other = otherSurface(load, leg);
    const softer = nearerWhenSoft(load, leg, weighed, heard);
    return {
      operatingLb: weighed.operatingLb,
      load: [
        ...drums.map(({ number, grossKg, held }) => ({
          name: number,
          kg: grossKg,
          lb: printedLbOf(grossKg),
          isDrum: true,
          ...(held === undefined ? {} : { onHold: true as const }),
        })),
        ...load.cargo
          .filter((one) => isAboard(one, leg))
          .map(({ name, weightLb }) => ({
            name,
            kg: kilogramsFromPounds(weightLb),
            lb: printedLb(weightLb),
            isDrum: false,
          })),
      ],
      fuelOnLandingLb: weighed.fuelAtLandingLb,
      tripLb: weighed.tripLb,
      limits: [
        ...flownUnder(load, leg, weighed, softer === null),
        ...(softer === null ? other.limits : [softer]),
        ...leavingAgain(load, leg),
      ].sort(byMoment),
      forbiddenBy: weighed.forbiddenBy,
      boundByCount: softer === null ? weighed.boundByCount : boundByCount(load, leg, softer),
      forbiddenWhenSoft: other.forbiddenBy,
      drums: drums.length,
      drumPositions: configurationOf(load.request.type, load.request.configuration).drumPositions.length,
      relax: relaxing(load, leg, weighed),
    };
  });
}

function flownUnder(
  { request }: NamedLoad,
  leg: number,
  { limits }: WeighedLeg,
  oneBinds: boolean,
): BarLimit[] {
  const { from, to } = request.legs[leg]!;
  const surfaceOf = (place: string | null) =>
    place === null ? null : place === to.place.code ? to.surface : from.surface;
  return limits.map(({ printedLb: _, ...limit }, at) => ({
    ...limit,
    surface: surfaceOf(limit.place),
    binds: oneBinds && at === 0,
  }));
}

/**
 * The landing limit when soft, where nobody knows the surface and it leaves less than every limit that the leg is planned
 * under: unknown counts as soft. Null: it does not.
 */
export function nearerWhenSoft(
  load: NamedLoad,
  leg: number,
  { limits }: WeighedLeg,
  heard: SurfacesHeard,
): BarLimit | null {
  const { to } = load.request.legs[leg]!;
  const [soft] = to.surface === 'soft' ? [] : otherSurface(load, leg).limits;
  const isNearest = isSoftNearest({
    heard: heard[to.place.code],
    plannedOn: to.surface,
    softSpareLb: soft?.spareLb,
    nearestSpareLb: limits[0]!.spareLb,
  });
  return soft !== undefined && isNearest ? { ...soft, binds: true } : null;
}

/** The landing limit in the state that the strip is not in: soft, or dry where it is soft. */
function otherSurface(load: NamedLoad, leg: number): { limits: BarLimit[]; forbiddenBy: string | null } {
  const { to } = load.request.legs[leg]!;
  const surface = to.surface === 'soft' ? 'dry' : 'soft';
  const weighed = weighLoad(withSurface(load, leg, surface))[leg]!;
  if (weighed.forbiddenBy !== null) return { limits: [], forbiddenBy: weighed.forbiddenBy };
  const now = weighLoad(load)[leg]!.limits.find(isLandingAt(to));
  const then = weighed.limits.find(isLandingAt(to));
  if (then === undefined || then.limitLb === now?.limitLb) return { limits: [], forbiddenBy: null };
  const { printedLb: _, ...limit } = then;
  return { limits: [{ ...limit, surface, binds: false }], forbiddenBy: null };
}

const isLandingAt =
  ({ place }: LegEnd) =>
  ({ name, place: at }: WeightAgainstLimit): boolean =>
    name === 'strip landing limit' && at === place.code;

function withSurface(load: NamedLoad, leg: number, surface: SurfaceState): NamedLoad {
  const { code } = load.request.legs[leg]!.to.place;
  const changed = (end: LegEnd): LegEnd => (end.place.code === code ? { ...end, surface } : end);
  const legs = load.request.legs.map((each) => ({ ...each, from: changed(each.from), to: changed(each.to) }));
  return { ...load, request: { ...load.request, legs } };
}

/** Unload or stay, in the state of the strip and when soft. */
function leavingAgain(load: NamedLoad, leg: number): BarLimit[] {
  if (leg === load.request.legs.length - 1) return [];
  const { surface } = load.request.legs[leg]!.to;
  const now = leaveAgain(load, leg);
  const soft = leaveAgain(load, leg, 'soft');
  const shown = surface === 'soft' || soft.limitLb === now.limitLb ? [now] : [now, soft];
  return shown.flatMap(({ place, surface: state, limitLb, overLb, canLeaveLoaded }) =>
    limitLb === null || overLb === null
      ? []
      : [
          {
            name: 'unload or stay' as const,
            place,
            surface: state as SurfaceState,
            moment: 'landing' as const,
            limitLb,
            spareLb: pounds(-overLb),
            holds: canLeaveLoaded,
            binds: false,
          },
        ],
  );
}

const moments = ['zero fuel', 'take-off', 'landing'] as const;

const byMoment = (one: BarLimit, other: BarLimit): number =>
  moments.indexOf(one.moment) - moments.indexOf(other.moment) ||
  Number(one.name === 'unload or stay') - Number(other.name === 'unload or stay') ||
  Number(one.place !== null) - Number(other.place !== null);

function relaxing(
  { request, route, drums }: NamedLoad,
  leg: number,
  { limits, forbiddenBy }: WeighedLeg,
): string {
  const broken = limits.filter(({ holds }) => !holds);
  const aboard = drums.filter(({ offAfterLeg }) => leg <= offAfterLeg);
  const [nearest] = broken;
  const { relax } = route.legs[leg]!;
  if (forbiddenBy !== null) return relax;
  if (nearest === undefined) return `${relax} (at ${request.drum.grossKg} kg a drum)`;
  const over = Math.max(1, ...broken.map(({ spareLb }) => -spareLb));
  const lightest = aboard.map(({ grossKg }) => printedLbOf(grossKg) as number).sort((a, b) => a - b);
  let [fewer, off] = [0, 0];
  while (off < over && fewer < lightest.length) off += lightest[fewer++]!;
  const less = off < over ? print(pounds(over), 'lb') : countWords(fewer, 'drum');
  const end = [request.legs[leg]!.from, request.legs[leg]!.to].find(
    ({ place }) => place.code === nearest.place,
  );
  return end?.surface === 'soft' ? `${less} less, or ${end.place.code} reported damp or dry` : `${less} less`;
}
