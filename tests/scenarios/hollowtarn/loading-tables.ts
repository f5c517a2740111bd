import { readFileSync } from 'node:fs';
import type {
  AircraftType,
  FuelPolicy,
  LegRequest,
  PlanningDrum,
  RouteRequest,
  StripLimit,
} from '@drumline/loading';
import type { GivenDistance, Place, SurfaceState } from '@drumline/network';
import { feet, hours, kilograms, minutes, nauticalMiles, pounds } from '@drumline/units';

/** The types, strip limits and distances of the invented territory; the door is aft, so the aft row comes out first. */
const tables: {
  readonly types: readonly AircraftType[];
  readonly stripLimits: readonly StripLimit[];
  readonly distances: readonly GivenDistance[];
} = read('loading.json');

export interface PayloadRow {
  readonly strip: string;
  readonly base: string;
  readonly type: string;
  readonly approved: boolean;
  readonly drumsDry: number;
  readonly payloadDryKg: number;
  readonly limitDry: string;
  readonly drumsSoft: number;
  readonly limitSoft: string;
  readonly rampFuelLb: number;
  readonly blockHours: number;
  readonly flightCostCr: number;
  readonly canLeaveLoaded: boolean;
}

export const payloadRows: readonly PayloadRow[] = read('payload-check.json');

export const drum: PlanningDrum = {
  grossKg: kilograms(180),
  tareKg: kilograms(20),
  emptyKg: kilograms(20),
};

/** Taxi + out + back + 10 % + 45 min, up to 10 lb; 3 min fixed on each leg. */
export const fuelPolicy: FuelPolicy = {
  reference: 'invented',
  contingencyPercent: 10,
  finalReserveMinutes: minutes(45),
  roundUpToLb: pounds(10),
  fixedMinutesPerLeg: minutes(3),
};

export const typeOf = (id: string): AircraftType => tables.types.find((type) => type.id === id)!;

export interface LegAboard {
  readonly passengers?: number;
  readonly passengersKg?: number;
  readonly freightKg?: number;
}

/** A flight over those places with nothing aboard but what is said by leg, all dry but what is said by place. */
export function flight(
  typeId: string,
  places: readonly string[],
  surfaces: Readonly<Record<string, SurfaceState>> = {},
  aboard: readonly LegAboard[] = [],
): RouteRequest {
  const end = (code: string) => ({
    place: placeNamed(code),
    surface: surfaces[code] ?? 'dry',
    limit: tables.stripLimits.find((line) => line.place === code && line.type === typeId) ?? null,
  });
  const legs = places.slice(1).map((to, i): LegRequest => {
    const load = aboard[i] ?? {};
    return {
      from: end(places[i]!),
      to: end(to),
      distanceNm: distance(places[i]!, to),
      windKt: null,
      passengers: load.passengers ?? 0,
      passengersKg: kilograms(load.passengersKg ?? 0),
      freightKg: kilograms(load.freightKg ?? 0),
      upliftOnArrival: false,
    };
  });
  return {
    type: typeOf(typeId),
    configuration: 'drums',
    legs,
    fuelPolicy,
    passengerRule: { drumsWithPassengers: 'refused', reference: 'operations manual 8.2' },
    drum,
  };
}

function distance(from: string, to: string) {
  const given = tables.distances.find(({ between }) => between.includes(from) && between.includes(to));
  if (!given) throw new Error(`no distance ${from}-${to} in the table`);
  return nauticalMiles(given.distanceNm);
}

/** Loading looks at a place's code only. */
const placeNamed = (code: string): Place => ({
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

function read<T>(name: string): T {
  return JSON.parse(readFileSync(new URL(name, import.meta.url), 'utf8')) as T;
}
