import { type Kilograms, pounds, poundsFromKilograms } from '@drumline/units';
import type { CabinConfiguration } from './aircraft-type.js';
import type { LegLoad, RouteRequest, UnloadOrStay } from './route-load.js';
import { stripWeights } from './strip-limit.js';

/** At every place the flight leaves again: the weight it arrives with, fully loaded, against the take-off limit there. */
export function unloadOrStay(
  { legs, drum, type }: RouteRequest,
  { operatingWeightLb }: CabinConfiguration,
  loads: readonly LegLoad[],
): UnloadOrStay[] {
  return legs.slice(0, -1).map((leg, i) => {
    const load = loads[i]!;
    const aboardKg = leg.passengersKg + leg.freightKg + load.drums * drum.grossKg;
    const arrivalLb = operatingWeightLb + load.fuelAtLandingLb + poundsFromKilograms(aboardKg as Kilograms);
    const strip = stripWeights(leg.to);
    const takeoffLimitLb = strip.forbiddenBy === null ? Math.min(strip.takeoffLb, type.maxTakeoffLb) : 0;
    return {
      place: load.to,
      arrivalLb: pounds(arrivalLb),
      takeoffLimitLb: pounds(takeoffLimitLb),
      overLb: pounds(arrivalLb - takeoffLimitLb),
      canLeaveLoaded: arrivalLb <= takeoffLimitLb,
    };
  });
}
