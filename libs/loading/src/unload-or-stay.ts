import { type Kilograms, type Pounds, pounds, poundsFromKilograms } from '@drumline/units';
import { configurationOf } from './aircraft-type.js';
import { type PrintedLeg, printedLegs } from './printed-weights.js';
import type { LegLoad, RouteRequest, UnloadOrStay } from './route-load.js';
import { stripWeights } from './strip-limit.js';

/**
 * At every place the flight leaves again: the weight it arrives with, so many drums of planning weight aboard on each
 * leg, against the take-off limit there. Printed figures follow the load sheet: the drums are one row, as planned.
 */
export function unloadOrStay(
  request: RouteRequest,
  loads: readonly LegLoad[],
  drumsByLeg: readonly number[],
): UnloadOrStay[] {
  const { operatingWeightLb } = configurationOf(request.type, request.configuration);
  const printed = printedPlan(request, loads, drumsByLeg);
  return request.legs.slice(0, -1).map((leg, i) => {
    const load = loads[i]!;
    const aboardLb = rowsOnLeg(request, i, drumsByLeg[i]!).reduce((sum, row) => sum + row, 0);
    const arrivalLb = operatingWeightLb + load.fuelAtLandingLb + aboardLb;
    const printedArrivalLb = printed[i]!.landingLb;
    const strip = stripWeights(leg.to);
    const takeoffLimitLb =
      strip.forbiddenBy === null ? Math.min(strip.takeoffLb, request.type.maxTakeoffLb) : 0;
    return {
      place: load.to,
      arrivalLb: pounds(arrivalLb),
      printedArrivalLb,
      takeoffLimitLb: pounds(takeoffLimitLb),
      overLb: pounds(arrivalLb - takeoffLimitLb),
      printedOverLb: pounds(printedArrivalLb - takeoffLimitLb),
      canLeaveLoaded: Math.max(arrivalLb, printedArrivalLb) <= takeoffLimitLb,
    };
  });
}

/** The weights of a flight with its drums at planning weight, as a sheet adds them: the drums of a leg are one row. */
export function printedPlan(
  request: RouteRequest,
  loads: readonly LegLoad[],
  drumsByLeg: readonly number[],
): PrintedLeg[] {
  const { operatingWeightLb } = configurationOf(request.type, request.configuration);
  const first = loads[0]!;
  return printedLegs({
    operatingWeightLb,
    taxiFuelLb: request.type.taxiFuelLb,
    fuel: { rampFuelLb: pounds(first.fuelAtTakeoffLb + request.type.taxiFuelLb), legs: loads },
    rowsByLeg: request.legs.map((_, leg) => rowsOnLeg(request, leg, drumsByLeg[leg]!)),
  });
}

/** Passengers, freight and drums of a leg in lb, a row each. */
function rowsOnLeg({ legs, drum }: RouteRequest, index: number, drums: number): Pounds[] {
  const { passengersKg, freightKg } = legs[index]!;
  return [passengersKg, freightKg, drums * drum.grossKg].map((kg) => poundsFromKilograms(kg as Kilograms));
}
