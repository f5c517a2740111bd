import type { AircraftType, FuelPolicy, RouteRequest } from '@drumline/loading';
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

/** A leg in still air of so many lb of trip fuel, by an aeroplane whose balance is of no concern. */
export function oneLeg(
  { trip, flow, taxi }: { trip: number; flow: number; taxi: number },
  fuelPolicy: FuelPolicy,
  changes: Partial<AircraftType> = {},
): RouteRequest {
  const type: AircraftType = {
    id: 'any',
    name: 'any',
    maxTakeoffLb: pounds(9000),
    maxLandingLb: pounds(9000),
    maxZeroFuelLb: pounds(9000),
    cruiseKt: knots(100),
    fuelFlowLbPerHour: poundsPerHour(flow),
    climbAllowanceLb: pounds(0),
    taxiFuelLb: pounds(taxi),
    fuelCapacityLb: pounds(2000),
    fuelArmIn: inches(100),
    envelope: [
      { weightLb: pounds(0), forwardIn: inches(90), aftIn: inches(110) },
      { weightLb: pounds(9000), forwardIn: inches(90), aftIn: inches(110) },
    ],
    configurations: [
      {
        id: 'drums',
        name: 'drums',
        operatingWeightLb: pounds(2000),
        operatingArmIn: inches(100),
        drumPositions: [],
        seats: [],
        freightPlaces: [],
      },
    ],
    drumConfiguration: 'drums',
    tipArmIn: null,
    costPerBlockHour: cents(0),
    landingFee: cents(0),
    turnRoundMinutes: minutes(0),
    reference: 'made up',
    ...changes,
  };
  const end = (code: string) => ({
    place: {
      code,
      name: code,
      kind: 'base' as const,
      latitudeDeg: 0,
      longitudeDeg: 0,
      elevationFt: feet(0),
      stripClass: null,
      runway: null,
      landingCapacityDrumsPerDay: null,
      surface: { staleAfterHours: hours(24), expected: 'dry' as const },
    },
    surface: 'dry' as const,
    limit: null,
  });
  return {
    type,
    configuration: 'drums',
    legs: [
      {
        from: end('A'),
        to: end('B'),
        distanceNm: nauticalMiles((trip / flow) * 100),
        windKt: null,
        passengers: 0,
        passengersKg: kilograms(0),
        freightKg: kilograms(0),
        upliftOnArrival: false,
      },
    ],
    fuelPolicy,
    passengerRule: { drumsWithPassengers: 'refused', reference: 'none' },
    drum: { grossKg: kilograms(180), tareKg: kilograms(20), emptyKg: kilograms(20) },
  };
}
