import { type Pounds, pounds, poundsFromKilograms } from '@drumline/units';
import { configurationOf } from '../aircraft-type.js';
import type { PrintedLeg } from '../printed-weights.js';
import type { LegEnd, LimitName } from '../route-load.js';
import { stripWeights } from '../strip-limit.js';
import { isAboard, type NamedLoad, printedLegsOf } from './named-load.js';

/** One limit of one leg against the weight of a named load. */
export interface WeightAgainstLimit {
  readonly name: LimitName;
  /** Null: a limit of the aeroplane. */
  readonly place: string | null;
  readonly moment: 'zero fuel' | 'take-off' | 'landing';
  readonly limitLb: Pounds;
  /** As the sheet adds it. */
  readonly printedLb: Pounds;
  /** Of the printed sum; negative: over. */
  readonly spareLb: Pounds;
  /** Under the limit by the printed and by the exact sum. */
  readonly holds: boolean;
}

/** A limit on how many drums may be aboard, whatever they weigh: standing places, floor, balance, passengers. */
export interface CountLimit {
  readonly name: LimitName;
  readonly aboard: number;
  readonly most: number;
}

/** The weights of one leg of a named load, printed, with every limit, the nearest first. */
export interface WeighedLeg extends PrintedLeg {
  readonly limits: readonly WeightAgainstLimit[];
  /** It binds: it leaves less room than the nearest of the weights. Null: the nearest of the weights binds. */
  readonly boundByCount: CountLimit | null;
  /** Closed, not approved, or closed when soft; null: may be used. */
  readonly forbiddenBy: string | null;
}

/**
 * Weighs a named load leg by leg as its sheet prints it, and holds it against the limits of aeroplane and strips. A
 * limit holds only when the printed and the exact sum are both under it.
 */
export function weighLoad(load: NamedLoad): WeighedLeg[] {
  return printedLegsOf(load).map((printed, index) => {
    const { from, to } = load.request.legs[index]!;
    const forbidden = [from, to].flatMap((end) => {
      const { forbiddenBy } = stripWeights(end);
      return forbiddenBy === null ? [] : [`${end.place.code}: ${forbiddenBy}`];
    });
    const limits = legLimitsOf(load, index, printed).sort((a, b) => a.spareLb - b.spareLb);
    return {
      ...printed,
      limits,
      boundByCount: boundByCount(load, index, limits[0]!),
      forbiddenBy: forbidden[0] ?? null,
    };
  });
}

const counts: readonly LimitName[] = ['drum positions', 'floor limit', 'balance', 'passengers aboard'];

/**
 * The limit on how many drums that leaves less room than the nearest of the weights; null: it does not, or the weight does not
 * hold. The same rule as for a plan (`legLimits`): what leaves the least room binds. The room that a count leaves is that of drums
 * of the planning weight; a leg without a drum is bound by its weights.
 */
export function boundByCount(
  { request, route, drums }: NamedLoad,
  index: number,
  { spareLb, holds }: Pick<WeightAgainstLimit, 'spareLb' | 'holds'>,
): CountLimit | null {
  const aboard = drums.filter(({ offAfterLeg }) => index <= offAfterLeg).length;
  const [nearest] = route.legs[index]!.limits.filter(({ name }) => counts.includes(name));
  if (aboard === 0 || nearest === undefined || !holds) return null;
  const roomLb = nearest.roomLb - aboard * poundsFromKilograms(request.drum.grossKg);
  return roomLb < spareLb ? { name: nearest.name, aboard, most: nearest.drums } : null;
}

function legLimitsOf(load: NamedLoad, index: number, printed: PrintedLeg): WeightAgainstLimit[] {
  const { type, legs } = load.request;
  const { from, to } = legs[index]!;
  const dryLb = exactDryLb(load, index);
  const { fuelAtTakeoffLb, fuelAtLandingLb } = load.route.legs[index]!;
  const zeroFuel = { moment: 'zero fuel', printedLb: printed.zeroFuelLb, exactLb: dryLb } as const;
  const takeoff = {
    moment: 'take-off',
    printedLb: printed.takeoffLb,
    exactLb: dryLb + fuelAtTakeoffLb,
  } as const;
  const landing = {
    moment: 'landing',
    printedLb: printed.landingLb,
    exactLb: dryLb + fuelAtLandingLb,
  } as const;
  return [
    against('max zero-fuel weight', null, type.maxZeroFuelLb, zeroFuel),
    against('max take-off weight', null, type.maxTakeoffLb, takeoff),
    against('max landing weight', null, type.maxLandingLb, landing),
    ...stripLimitOf(from, 'strip take-off limit', takeoff),
    ...stripLimitOf(to, 'strip landing limit', landing),
  ];
}

interface Weighed {
  readonly moment: WeightAgainstLimit['moment'];
  readonly printedLb: Pounds;
  readonly exactLb: number;
}

function stripLimitOf(
  end: LegEnd,
  name: 'strip take-off limit' | 'strip landing limit',
  weighed: Weighed,
): WeightAgainstLimit[] {
  const strip = stripWeights(end);
  if (strip.forbiddenBy !== null) return [];
  const limitLb = name === 'strip take-off limit' ? strip.takeoffLb : strip.landingLb;
  return [against(name, end.place.code, limitLb, weighed)];
}

const against = (
  name: LimitName,
  place: string | null,
  limitLb: Pounds,
  { moment, printedLb, exactLb }: Weighed,
): WeightAgainstLimit => ({
  name,
  place,
  moment,
  limitLb,
  printedLb,
  spareLb: pounds(limitLb - printedLb),
  holds: Math.max(printedLb, exactLb) <= limitLb,
});

/** Aeroplane, drums and cargo of a leg, not rounded. */
export function exactDryLb({ request, drums, cargo }: NamedLoad, leg: number): number {
  const { operatingWeightLb } = configurationOf(request.type, request.configuration);
  const drumsLb = drums
    .filter(({ offAfterLeg }) => leg <= offAfterLeg)
    .reduce((sum, { grossKg }) => sum + poundsFromKilograms(grossKg), 0);
  const cargoLb = cargo.filter((one) => isAboard(one, leg)).reduce((sum, one) => sum + one.weightLb, 0);
  return operatingWeightLb + drumsLb + cargoLb;
}
