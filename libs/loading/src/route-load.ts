import type { Place, SurfaceState } from '@drumline/network';
import type { Cents, Hours, Kilograms, Knots, Litres, NauticalMiles, Pounds } from '@drumline/units';
import type { AircraftType, FuelPolicy, PassengerRule, PlanningDrum, StripLimit } from './aircraft-type.js';

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
  /** Payload room in kg before rounding to drums (what the binding weight limit leaves, positions apart). */
  readonly payloadKg: Kilograms;
  /** What would have to change for one more drum, in words and figures. */
  readonly relax: string;
}

/** Weight on arrival with the full load, against what the strip lets the type take off with. */
export interface UnloadOrStay {
  readonly place: string;
  readonly arrivalLb: Pounds;
  readonly takeoffLimitLb: Pounds;
  /** Over the limit by this much; negative: room to leave with everything aboard. */
  readonly overLb: Pounds;
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
