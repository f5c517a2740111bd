import type { Cents, Inches, Kilograms, Knots, Minutes, Pounds, PoundsPerHour } from '@drumline/units';

/** One aeroplane type as the operator's approved tables give it; weights in lb, arms in inches aft of the datum. */
export interface AircraftType {
  readonly id: string;
  readonly name: string;
  readonly maxTakeoffLb: Pounds;
  readonly maxLandingLb: Pounds;
  readonly maxZeroFuelLb: Pounds;
  readonly cruiseKt: Knots;
  readonly fuelFlowLbPerHour: PoundsPerHour;
  /** Added to the trip fuel of each leg. */
  readonly climbAllowanceLb: Pounds;
  /** Burned before take-off, once a flight from a base. */
  readonly taxiFuelLb: Pounds;
  readonly fuelCapacityLb: Pounds;
  readonly fuelArmIn: Inches;
  readonly envelope: readonly EnvelopePoint[];
  readonly configurations: readonly CabinConfiguration[];
  /** The configuration used for positioning flights with drums. */
  readonly drumConfiguration: string;
  /** Centre of gravity aft of which the aeroplane sits on its tail on the ground; null: not published, not checked. */
  readonly tipArmIn: Inches | null;
  /** Per block hour, fuel included. */
  readonly costPerBlockHour: Cents;
  readonly landingFee: Cents;
  readonly turnRoundMinutes: Minutes;
  /** Document and revision the figures come from. */
  readonly reference: string;
  readonly note?: string;
}

/** Limits between two points are interpolated linearly. */
export interface EnvelopePoint {
  readonly weightLb: Pounds;
  readonly forwardIn: Inches;
  readonly aftIn: Inches;
}

/** Seats in or out, boards, nets: each has its own operating weight, arm and places. */
export interface CabinConfiguration {
  readonly id: string;
  readonly name: string;
  readonly operatingWeightLb: Pounds;
  readonly operatingArmIn: Inches;
  /** Standing places of drums, in order from the front. */
  readonly drumPositions: readonly LoadPlace[];
  readonly seats: readonly LoadPlace[];
  readonly freightPlaces: readonly LoadPlace[];
}

/** A place in the cabin with its arm and floor limit. A smaller `unloadOrder` comes out of the door first. */
export interface LoadPlace {
  readonly id: string;
  readonly armIn: Inches;
  readonly limitLb: Pounds;
  /** Drums nearer the door leave first; places with the same number can leave in any order. */
  readonly unloadOrder: number;
}

/** One line of the operator's strip table: a place, a type, and what the surface takes away. */
export interface StripLimit {
  readonly place: string;
  readonly type: string;
  readonly takeoffLb: Pounds;
  readonly landingLb: Pounds;
  readonly whenSoft: SoftPenalty | 'closed';
  readonly reference: string;
}

export interface SoftPenalty {
  readonly takeoffLessLb: Pounds;
  readonly landingLessLb: Pounds;
}

/** The operator's fuel policy: data with a document reference, never a constant. */
export interface FuelPolicy {
  readonly reference: string;
  /** Of the trip fuel only. */
  readonly contingencyPercent: number;
  /** Contingency is never less than this many minutes at cruise flow; absent: no floor. */
  readonly contingencyFloorMinutes?: Minutes;
  readonly finalReserveMinutes: Minutes;
  /** Ramp fuel is rounded up to this step. */
  readonly roundUpToLb: Pounds;
  /** Added to the air time of each leg for the block time; burns nothing beyond the taxi figure. */
  readonly fixedMinutesPerLeg: Minutes;
}

/** The figures a drum is planned by until named drums are assigned. */
export interface PlanningDrum {
  readonly grossKg: Kilograms;
  readonly tareKg: Kilograms;
  readonly emptyKg: Kilograms;
}

/** What the operator says of passengers and drums on one leg. */
export interface PassengerRule {
  readonly drumsWithPassengers: 'refused';
  readonly reference: string;
}

/** The cabin configuration of that id; throws where the type has none such. */
export function configurationOf(type: AircraftType, id: string): CabinConfiguration {
  const configuration = type.configurations.find((one) => one.id === id);
  if (!configuration) throw new Error(`type ${type.id} has no cabin configuration ${id}`);
  return configuration;
}
