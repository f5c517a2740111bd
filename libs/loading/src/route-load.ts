import type { Place, SurfaceState } from '@drumline/network';
import {
  type Cents,
  cents,
  type Hours,
  hours,
  type Kilograms,
  type Knots,
  kilogramsFromPounds,
  type Litres,
  type NauticalMiles,
  type Pounds,
  pounds,
  poundsFromKilograms,
} from '@drumline/units';
import {
  type AircraftType,
  configurationOf,
  type FuelPolicy,
  type PassengerRule,
  type PlanningDrum,
  type StripLimit,
} from './aircraft-type.js';
import { type LegFuel, type RouteFuel, routeFuel } from './fuel.js';
import { type LegLimits, legLimits } from './leg-limits.js';
import { relaxWords, whyForbidden } from './relax.js';
import { unloadOrStay } from './unload-or-stay.js';

/** One flight as the loading rules see it: who flies where, over which strips in which state, with what already aboard. */
export interface RouteRequest {
  readonly type: AircraftType;
  /** Cabin configuration id. */
  readonly configuration: string;
  readonly legs: readonly LegRequest[];
  readonly fuelPolicy: FuelPolicy;
  readonly passengerRule: PassengerRule;
  readonly drum: PlanningDrum;
}

export interface LegRequest {
  readonly from: LegEnd;
  readonly to: LegEnd;
  readonly distanceNm: NauticalMiles;
  /** Plus is tailwind; null: no wind given, "still air" is said. */
  readonly windKt: Knots | null;
  readonly passengers: number;
  readonly passengersKg: Kilograms;
  readonly freightKg: Kilograms;
  /** Most drums that an approval of the authority lets fly beside the passengers; absent: none. */
  readonly drumsByApproval?: number;
  /** Planned uplift on arrival at `to`: cuts the ramp fuel up to there and refuels for the rest. */
  readonly upliftOnArrival: boolean;
}

export interface LegEnd {
  readonly place: Place;
  readonly surface: SurfaceState;
  /** The operator's line for this type at this place; null: the type is not approved there. */
  readonly limit: StripLimit | null;
}

export type LimitName =
  | 'max take-off weight'
  | 'strip take-off limit'
  | 'max landing weight'
  | 'strip landing limit'
  | 'max zero-fuel weight'
  | 'fuel capacity'
  | 'drum positions'
  | 'floor limit'
  | 'balance'
  | 'passengers aboard'
  | 'closed when soft'
  | 'closed'
  | 'type not approved'
  | 'unload or stay';

/** One limit on one leg: how much load (freight and drums) it leaves room for. */
export interface LegLimit {
  readonly name: LimitName;
  /** Place the limit belongs to; null for a limit of the aeroplane itself. */
  readonly place: string | null;
  /** Room for drums under this limit, before rounding down; 0 where it forbids. */
  readonly roomLb: Pounds;
  readonly drums: number;
}

export interface LegLoad {
  readonly from: string;
  readonly to: string;
  readonly distanceNm: NauticalMiles;
  readonly windKt: Knots | null;
  readonly airTimeHours: Hours;
  readonly blockHours: Hours;
  readonly tripFuelLb: Pounds;
  /** Fuel at brakes release and at touchdown. */
  readonly fuelAtTakeoffLb: Pounds;
  readonly fuelAtLandingLb: Pounds;
  /** Every limit that was looked at, tightest first. */
  readonly limits: readonly LegLimit[];
  readonly binding: LegLimit;
  /** Whole drums that may be aboard. */
  readonly drums: number;
  /** Payload room in kg before rounding to drums (what the tightest weight limit leaves, positions apart); 0 where the leg cannot be flown. */
  readonly payloadKg: Kilograms;
  /** What the tightest weight limit leaves beside those drums; negative: too heavy without a drum. */
  readonly spareLb: Pounds;
  /** What would have to change for one more drum, in words and figures. */
  readonly relax: string;
  /** Why the balance of this leg could not be judged (freight or passengers without a place); null: it was. */
  readonly balanceUnknown: string | null;
}

/** Weight on arrival with the full load, against what the strip lets the type take off with. */
export interface UnloadOrStay {
  readonly place: string;
  readonly arrivalLb: Pounds;
  /** The same as a sheet adds it, in whole pounds. */
  readonly printedArrivalLb: Pounds;
  readonly takeoffLimitLb: Pounds;
  /** Over the limit by this much; negative: room to leave with everything aboard. */
  readonly overLb: Pounds;
  readonly printedOverLb: Pounds;
  /** Under the limit by the exact and by the printed sum. */
  readonly canLeaveLoaded: boolean;
}

/** What one flight may carry. `flyable` is false when no drum-free flight is possible either; `why` then says it. */
export interface RouteLoad {
  readonly flyable: boolean;
  readonly why: string | null;
  readonly rampFuelLb: Pounds;
  readonly burnLb: Pounds;
  readonly legs: readonly LegLoad[];
  readonly unloadOrStay: readonly UnloadOrStay[];
  readonly blockHours: Hours;
  /** Block and a turn-round at every landing. */
  readonly dutyHours: Hours;
  /** Block hours and landing fees, to the cent. */
  readonly cost: Cents;
}

/** Fuel a flight takes out of the base's bulk, and the fuel of each planned uplift. */
export interface OwnFuel {
  readonly fromBaseLitres: Litres;
  readonly uplifts: readonly { readonly place: string; readonly litres: Litres }[];
}

/**
 * What one flight may carry on each leg and why, its fuel, times and cost. Weights are compared unrounded; drums are
 * whole drums of the planning weight. Capacities are per leg: drums for a later stop count on every leg they fly.
 * Rules "Fuel", "Drums on a leg", "Unload or stay", "Passengers and drums", "Duty" of the conventions.
 * Throws when the type has no such configuration.
 */
export function routeLoad(request: RouteRequest): RouteLoad {
  const configuration = configurationOf(request.type, request.configuration);
  const fuel = routeFuel(request);
  const limits = request.legs.map((leg, i) =>
    legLimits(request, configuration, leg, fuel.legs[i]!, i === 0 ? fuel.rampFuelLb : null),
  );
  const legs = request.legs.map((leg, i) => legLoad(request, leg, fuel.legs[i]!, limits[i]!));
  const firstForbidden = limits.findIndex(({ forbidden }) => forbidden !== null);
  const why =
    firstForbidden < 0
      ? null
      : whyForbidden(request, request.legs[firstForbidden]!, limits[firstForbidden]!.forbidden!);
  return {
    flyable: why === null,
    why,
    rampFuelLb: fuel.rampFuelLb,
    burnLb: fuel.burnLb,
    legs,
    unloadOrStay: unloadOrStay(
      request,
      legs,
      legs.map(({ drums }) => drums),
    ),
    ...timeAndCost(request.type, fuel),
  };
}

function legLoad(request: RouteRequest, leg: LegRequest, fuel: LegFuel, limits: LegLimits): LegLoad {
  const binding = limits.limits[0]!;
  const drums = limits.forbidden ? 0 : Math.min(...limits.limits.map((limit) => limit.drums));
  const drumLb = poundsFromKilograms(request.drum.grossKg);
  return {
    from: leg.from.place.code,
    to: leg.to.place.code,
    distanceNm: leg.distanceNm,
    windKt: leg.windKt,
    ...fuel,
    limits: limits.limits,
    binding,
    drums,
    payloadKg: kilogramsFromPounds(pounds(limits.forbidden ? 0 : Math.max(0, limits.weightRoomLb))),
    spareLb: pounds(limits.weightRoomLb - drums * drumLb),
    relax: relaxWords(request, leg, limits.limits, drums, fuel),
    balanceUnknown: limits.balanceUnknown,
  };
}

function timeAndCost(type: AircraftType, { legs }: RouteFuel) {
  const blockHours = legs.reduce((sum, leg) => sum + leg.blockHours, 0);
  return {
    blockHours: hours(blockHours),
    dutyHours: hours(blockHours + (legs.length * type.turnRoundMinutes) / 60),
    cost: cents(Math.round(blockHours * type.costPerBlockHour + legs.length * type.landingFee)),
  };
}
