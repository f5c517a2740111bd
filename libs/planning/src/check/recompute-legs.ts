import type { AircraftType, CabinConfiguration, FuelPolicy } from '@drumline/loading';
import type { Place, SurfaceState } from '@drumline/network';
import { poundsFromKilograms } from '@drumline/units';
import type { BookedFlight, BookedLeg, StandingFlight } from '../scenario.js';
import type { Territory } from './survey.js';

/** One leg with everything that was weighed on it, unrounded; weights in lb. */
export interface FlownLeg {
  readonly from: Place;
  readonly to: Place;
  readonly surfaceFrom: SurfaceState;
  readonly surfaceTo: SurfaceState;
  readonly distanceNm: number;
  readonly windKt: number | null;
  readonly blockHours: number;
  readonly drums: number;
  readonly passengers: number;
  readonly freightLb: number;
  readonly zeroFuelLb: number;
  readonly takeoffFuelLb: number;
  readonly landingFuelLb: number;
  /** The same sums of whole pounds, each row rounded before it is added: what is told (conventions, "Printed sums"). */
  readonly printed: PrintedSums;
}

export interface PrintedSums {
  readonly zeroFuelLb: number;
  readonly takeoffLb: number;
  readonly landingLb: number;
}

export interface FlownLegs {
  readonly legs: readonly FlownLeg[];
  readonly rampFuelLb: number;
  readonly burnLb: number;
  readonly blockHours: number;
}

interface PlainLeg {
  readonly from: string;
  readonly to: string;
  readonly load: BookedLeg | null;
}

/** Fuel, weights and times of a flight, worked out from the scenario alone (conventions, "Fuel"). */
export function recomputeLegs(
  territory: Territory,
  flight: StandingFlight,
  booked: BookedFlight | null,
  type: AircraftType,
  cabin: CabinConfiguration,
): FlownLegs {
  const { fuel } = territory.scenario.policy;
  const plain = plainLegs(flight, booked);
  const drums = drumsAboard(flight, plain);
  const trips = plain.map(({ from, to }) => tripOf(territory, type, from, to, flight.date));
  const trip = trips.reduce((sum, leg) => sum + leg.fuelLb, 0);
  const rampFuelLb = rampFuel(fuel, type, trip);
  let aboard = rampFuelLb - type.taxiFuelLb;
  let printedFuelLb = Math.round(rampFuelLb) - Math.round(type.taxiFuelLb);
  const legs = plain.map((leg, index): FlownLeg => {
    const takeoffFuelLb = aboard;
    aboard -= trips[index]!.fuelLb;
    const freightLb = poundsFromKilograms(leg.load?.freightKg ?? zeroKg);
    const people = poundsFromKilograms(leg.load?.passengersKg ?? zeroKg);
    const drumsLb = drums[index]! * poundsFromKilograms(territory.scenario.policy.drum.grossKg);
    const from = territory.place(leg.from);
    const to = territory.place(leg.to);
    const rows = [cabin.operatingWeightLb, freightLb, people, drumsLb];
    const printedDryLb = rows.reduce((sum, row) => sum + Math.round(row), 0);
    const printedTakeoffLb = printedDryLb + printedFuelLb;
    printedFuelLb -= Math.round(trips[index]!.fuelLb);
    return {
      from,
      to,
      surfaceFrom: territory.surface(from, flight.date),
      surfaceTo: territory.surface(to, flight.date),
      distanceNm: trips[index]!.distanceNm,
      windKt: trips[index]!.windKt,
      blockHours: trips[index]!.airHours + fuel.fixedMinutesPerLeg / 60,
      drums: drums[index]!,
      passengers: leg.load?.passengers ?? 0,
      freightLb,
      zeroFuelLb: cabin.operatingWeightLb + freightLb + people + drumsLb,
      takeoffFuelLb,
      landingFuelLb: aboard,
      printed: {
        zeroFuelLb: printedDryLb,
        takeoffLb: printedTakeoffLb,
        landingLb: printedDryLb + printedFuelLb,
      },
    };
  });
  const blockHours = legs.reduce((sum, leg) => sum + leg.blockHours, 0);
  return { legs, rampFuelLb, burnLb: type.taxiFuelLb + trip, blockHours };
}

/** Taxi, legs, contingency on the legs and final reserve, up to the operator's step; lb. */
function rampFuel(policy: FuelPolicy, type: AircraftType, tripLb: number): number {
  const perMinute = type.fuelFlowLbPerHour / 60;
  const contingency = Math.max(
    (policy.contingencyPercent / 100) * tripLb,
    (policy.contingencyFloorMinutes ?? 0) * perMinute,
  );
  const needed = type.taxiFuelLb + tripLb + contingency + policy.finalReserveMinutes * perMinute;
  // Rounding noise must not cost a step.
  return Math.ceil(Number((needed / policy.roundUpToLb).toFixed(9))) * policy.roundUpToLb;
}

const zeroKg = 0 as BookedLeg['freightKg'];

function plainLegs(flight: StandingFlight, booked: BookedFlight | null): readonly PlainLeg[] {
  if (booked) return booked.legs.map((leg) => ({ from: leg.from, to: leg.to, load: leg }));
  const places = [flight.from, ...flight.stops.map((stop) => stop.place), flight.to];
  return places.slice(1).map((to, index) => ({ from: places[index]!, to, load: null }));
}

/** Drums on every leg: all at first, less at every stop in turn. A stop is the next landing there on the way. */
function drumsAboard(flight: StandingFlight, legs: readonly PlainLeg[]): readonly number[] {
  const left = [...flight.stops];
  let aboard = left.reduce((sum, stop) => sum + stop.drums, 0);
  return legs.map((leg) => {
    const now = aboard;
    if (left[0]?.place === leg.to) aboard -= left.shift()!.drums;
    return now;
  });
}

function tripOf(territory: Territory, type: AircraftType, from: string, to: string, date: string) {
  const distanceNm = territory.distance(from, to);
  const windKt = territory.wind(from, to, date);
  const airHours = distanceNm / (type.cruiseKt + (windKt ?? 0));
  return { distanceNm, windKt, airHours, fuelLb: airHours * type.fuelFlowLbPerHour + type.climbAllowanceLb };
}
