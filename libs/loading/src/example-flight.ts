import type { Place, SurfaceState } from '@drumline/network';
import {
  cents,
  feet,
  hours,
  inches,
  kilograms,
  knots,
  minutes,
  nauticalMiles,
  pounds,
  poundsPerHour,
} from '@drumline/units';
import type { AircraftType, FuelPolicy, LoadPlace, StripLimit } from './aircraft-type.js';
import type { FlightCabin } from './cabin.js';
import type { LegRequest, RouteRequest } from './route-load.js';
import { routeLoad } from './route-load.js';

/** A made-up type with round figures: three rows of two, door aft, for the specs of this lib and of what stands on it. */
export const exampleType: AircraftType = {
  id: 'T',
  name: 'example',
  maxTakeoffLb: pounds(8000),
  maxLandingLb: pounds(7800),
  maxZeroFuelLb: pounds(7500),
  cruiseKt: knots(150),
  fuelFlowLbPerHour: poundsPerHour(300),
  climbAllowanceLb: pounds(20),
  taxiFuelLb: pounds(30),
  fuelCapacityLb: pounds(2000),
  fuelArmIn: inches(190),
  envelope: [
    { weightLb: pounds(4000), forwardIn: inches(170), aftIn: inches(200) },
    { weightLb: pounds(8000), forwardIn: inches(178), aftIn: inches(200) },
  ],
  configurations: [
    {
      id: 'drums',
      name: 'seats out',
      operatingWeightLb: pounds(4500),
      operatingArmIn: inches(185),
      drumPositions: [1, 2, 3].flatMap((row) => [drumPlace(row, 'L'), drumPlace(row, 'R')]),
      seats: [],
      freightPlaces: [{ id: 'NET', armIn: inches(240), limitLb: pounds(600), unloadOrder: 0 }],
    },
  ],
  drumConfiguration: 'drums',
  tipArmIn: null,
  costPerBlockHour: cents(100_000),
  landingFee: cents(2_500),
  turnRoundMinutes: minutes(30),
  reference: 'made up',
};

function drumPlace(row: number, side: string): LoadPlace {
  return {
    id: `R${row}${side}`,
    armIn: inches(150 + 30 * row),
    limitLb: pounds(450),
    unloadOrder: 4 - row,
  };
}

/** The example type with another cabin. */
export const withCabin = (
  changes: Partial<AircraftType['configurations'][number]>,
  type: AircraftType = exampleType,
): AircraftType => ({ ...type, configurations: [{ ...type.configurations[0]!, ...changes }] });

export const examplePolicy: FuelPolicy = {
  reference: 'made up',
  contingencyPercent: 10,
  finalReserveMinutes: minutes(45),
  roundUpToLb: pounds(10),
  fixedMinutesPerLeg: minutes(3),
};

export const exampleLine: Omit<StripLimit, 'place'> = {
  type: 'T',
  takeoffLb: pounds(7900),
  landingLb: pounds(7700),
  whenSoft: { takeoffLessLb: pounds(500), landingLessLb: pounds(450) },
  reference: 'made up',
};

/** A flight over those places, 75 NM a leg, in still air and with nothing aboard. */
export function exampleRequest(
  places: readonly string[],
  surfaces: Readonly<Record<string, SurfaceState>> = {},
  leg: Partial<LegRequest> = {},
): RouteRequest {
  const end = (code: string) => ({
    place: examplePlace(code),
    surface: surfaces[code] ?? 'dry',
    limit: { ...exampleLine, place: code },
  });
  return {
    type: exampleType,
    configuration: 'drums',
    legs: places.slice(1).map((to, i) => ({
      from: end(places[i]!),
      to: end(to),
      distanceNm: nauticalMiles(75),
      windKt: null,
      passengers: 0,
      passengersKg: kilograms(0),
      freightKg: kilograms(0),
      upliftOnArrival: false,
      ...leg,
    })),
    fuelPolicy: examplePolicy,
    passengerRule: { drumsWithPassengers: 'refused', reference: 'manual 8.2' },
    drum: { grossKg: kilograms(180), tareKg: kilograms(20), emptyKg: kilograms(20) },
  };
}

/** A strip with no runway and no landing capacity to think of. */
export const examplePlace = (code: string): Place => ({
  code,
  name: code,
  kind: 'strip',
  latitudeDeg: 0,
  longitudeDeg: 0,
  elevationFt: feet(0),
  stripClass: 2,
  runway: null,
  landingCapacityDrumsPerDay: null,
  surface: { staleAfterHours: hours(24), expected: 'dry' },
});

/** The cabin of a flight over those places with the fuel that `routeLoad` gives it. */
export const exampleCabin = (places: readonly string[], type: AircraftType = exampleType): FlightCabin => ({
  type,
  configuration: 'drums',
  fuel: routeLoad({ ...exampleRequest(places), type }),
  cargo: [],
});
