import {
  type LegLimit,
  type LegRequest,
  printedPlan,
  printedSpareLb,
  type RouteLoad,
  type RouteRequest,
  stripWeights,
} from '@drumline/loading';
import { type Pounds, pounds, poundsFromKilograms } from '@drumline/units';

/** A limit of a leg, and the room that is left under it. */
export interface SpareUnder {
  /** Null: it is no weight. */
  readonly limitLb: Pounds | null;
  /** Of the sum in whole pounds that a sheet prints; of what is no weight, the room. Negative: over. */
  readonly spareLb: Pounds;
}

/**
 * What is left under the limits of a flight with so many drums of planning weight aboard on each leg: told of the same
 * whole pounds as its arrival and its sheet (conventions, "Printed sums").
 */
export function printedSpares(request: RouteRequest, load: RouteLoad, aboard: readonly number[]) {
  const printed = printedPlan(request, load.legs, aboard);
  const drumLb = poundsFromKilograms(request.drum.grossKg);
  return (leg: number, limit: LegLimit, ends: LegRequest = request.legs[leg]!): SpareUnder => {
    const exactSpareLb = limit.roomLb - aboard[leg]! * drumLb;
    const limitLb = limitLbOf(request, ends, limit.name);
    if (limitLb === null) return { limitLb, spareLb: pounds(exactSpareLb) };
    const sumLb = printed[leg]![momentOf[limit.name] ?? 'takeoffLb'];
    return { limitLb, spareLb: printedSpareLb(limitLb, sumLb, limitLb - exactSpareLb) };
  };
}

const momentOf: Partial<Record<LegLimit['name'], 'zeroFuelLb' | 'landingLb'>> = {
  'max zero-fuel weight': 'zeroFuelLb',
  'max landing weight': 'landingLb',
  'strip landing limit': 'landingLb',
};

function limitLbOf({ type }: RouteRequest, { from, to }: LegRequest, name: LegLimit['name']): Pounds | null {
  const [off, on] = [stripWeights(from), stripWeights(to)];
  switch (name) {
    case 'max take-off weight':
      return type.maxTakeoffLb;
    case 'max landing weight':
      return type.maxLandingLb;
    case 'max zero-fuel weight':
      return type.maxZeroFuelLb;
    case 'strip take-off limit':
      return off.forbiddenBy === null ? off.takeoffLb : null;
    case 'strip landing limit':
      return on.forbiddenBy === null ? on.landingLb : null;
    default:
      return null;
  }
}
