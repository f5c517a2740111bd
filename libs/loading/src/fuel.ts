import { type Hours, hours, type Pounds, pounds } from '@drumline/units';
import type { AircraftType, FuelPolicy } from './aircraft-type.js';
import type { LegRequest, RouteRequest } from './route-load.js';

export interface LegFuel {
  readonly airTimeHours: Hours;
  readonly blockHours: Hours;
  readonly tripFuelLb: Pounds;
  readonly fuelAtTakeoffLb: Pounds;
  readonly fuelAtLandingLb: Pounds;
}

export interface RouteFuel {
  readonly rampFuelLb: Pounds;
  readonly burnLb: Pounds;
  readonly legs: readonly LegFuel[];
}

/** Rounding noise that must not cost a step of ramp fuel, in steps. */
const noise = 1e-9;

/** Ramp fuel, burn and the fuel at each take-off and landing; rule "Fuel" of the conventions. */
export function routeFuel({ type, fuelPolicy, legs }: RouteRequest): RouteFuel {
  const trips = legs.map((leg) => tripFuel(type, leg));
  const rampFuelLb = roundUp(type.taxiFuelLb + sectionFuel(type, fuelPolicy, legs, trips, 0), fuelPolicy);
  let aboard = rampFuelLb - type.taxiFuelLb;
  const flown = legs.map((leg, i): LegFuel => {
    if (i > 0 && legs[i - 1]!.upliftOnArrival) {
      aboard = Math.max(aboard, roundUp(sectionFuel(type, fuelPolicy, legs, trips, i), fuelPolicy));
    }
    const fuelAtTakeoffLb = pounds(aboard);
    aboard -= trips[i]!;
    const airTimeHours = airTime(type, leg);
    return {
      airTimeHours,
      blockHours: hours(airTimeHours + fuelPolicy.fixedMinutesPerLeg / 60),
      tripFuelLb: pounds(trips[i]!),
      fuelAtTakeoffLb,
      fuelAtLandingLb: pounds(aboard),
    };
  });
  const burnLb = pounds(trips.reduce((sum, trip) => sum + trip, type.taxiFuelLb));
  return { rampFuelLb: pounds(rampFuelLb), burnLb, legs: flown };
}

const airTime = (type: AircraftType, leg: LegRequest): Hours =>
  hours(leg.distanceNm / (type.cruiseKt + (leg.windKt ?? 0)));

const tripFuel = (type: AircraftType, leg: LegRequest): number =>
  airTime(type, leg) * type.fuelFlowLbPerHour + type.climbAllowanceLb;

/** Legs from `start` to the next planned uplift, contingency on them, and the final reserve. */
function sectionFuel(
  type: AircraftType,
  policy: FuelPolicy,
  legs: readonly LegRequest[],
  trips: readonly number[],
  start: number,
): number {
  let trip = 0;
  for (let i = start; i < legs.length; i++) {
    trip += trips[i]!;
    if (legs[i]!.upliftOnArrival) break;
  }
  const flow = type.fuelFlowLbPerHour / 60;
  const contingency = Math.max(
    (trip * policy.contingencyPercent) / 100,
    flow * (policy.contingencyFloorMinutes ?? 0),
  );
  return trip + contingency + flow * policy.finalReserveMinutes;
}

const roundUp = (fuelLb: number, { roundUpToLb }: FuelPolicy): number =>
  Math.ceil(fuelLb / roundUpToLb - noise) * roundUpToLb;
