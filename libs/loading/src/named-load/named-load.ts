import { type Kilograms, type Litres, type Pounds, poundsFromKilograms } from '@drumline/units';
import { configurationOf } from '../aircraft-type.js';
import type { Cargo, FlightCabin, PlacedDrum } from '../cabin.js';
import { type PrintedLeg, printedLb, printedLbOf, printedLegs } from '../printed-weights.js';
import { type RouteLoad, type RouteRequest } from '../route-load.js';

/** A drum that is known by its number, with the weight a scale gave it. */
export interface NamedDrum {
  readonly number: string;
  readonly batch: string;
  readonly grossKg: Kilograms;
  readonly tareKg: Kilograms;
  /** 0 for an empty. */
  readonly litres: Litres;
  /** Aboard and in no book: what its weight is by. Absent: by the book. */
  readonly notInBook?: 'weight by the crew' | 'planning weight';
  /** Why it may not be loaded nor used: "Batch J27-041 is held: water found." Absent: it is not held. */
  readonly held?: string;
  /** Taken out at the end of this leg (0 is the first); aboard from the first leg on. */
  readonly offAfterLeg: number;
}

/** A named drum in its position. */
export interface StandingDrumAboard extends NamedDrum {
  readonly position: string;
}

/** A flight with everything that is to be aboard, each thing in its place. */
export interface NamedLoad {
  /** Who flies where, by which rules; passengers and freight are those of `cargo`. */
  readonly request: RouteRequest;
  /** What `routeLoad` says of the request: its fuel is the flight's. */
  readonly route: RouteLoad;
  readonly drums: readonly StandingDrumAboard[];
  readonly cargo: readonly Cargo[];
}

/** Drums as the balance takes them, with their own weight: exact, or in whole pounds as printed. */
export const drumsAboard = (drums: readonly StandingDrumAboard[], as: 'exact' | 'printed'): PlacedDrum[] =>
  drums.map(({ number, grossKg, offAfterLeg, position }) => ({
    id: number,
    weightLb: as === 'exact' ? poundsFromKilograms(grossKg) : printedLbOf(grossKg),
    offAfterLeg,
    position,
  }));

/** The cabin of a named load, with exact figures. */
export const cabinOf = ({ request, route, cargo }: NamedLoad): FlightCabin => ({
  type: request.type,
  configuration: request.configuration,
  fuel: route,
  cargo,
});

/** The cabin of a named load with every figure in whole pounds, as its sheet adds them. */
export function printedCabinOf(load: NamedLoad): FlightCabin {
  const legs = printedLegsOf(load);
  return {
    ...cabinOf(load),
    fuel: {
      rampFuelLb: printedLb(load.route.rampFuelLb),
      legs: legs.map(({ from, to, fuelLb, taxiLb, fuelAtLandingLb }) => ({
        from,
        to,
        fuelAtTakeoffLb: (fuelLb - taxiLb) as Pounds,
        fuelAtLandingLb,
      })),
    },
    cargo: load.cargo.map((one) => ({ ...one, weightLb: printedLb(one.weightLb) })),
  };
}

/** The column of every leg in whole pounds. */
export function printedLegsOf({ request, route, drums, cargo }: NamedLoad): PrintedLeg[] {
  return printedLegs({
    operatingWeightLb: configurationOf(request.type, request.configuration).operatingWeightLb,
    taxiFuelLb: request.type.taxiFuelLb,
    fuel: route,
    rowsByLeg: request.legs.map((_, leg) => [
      ...drums
        .filter(({ offAfterLeg }) => leg <= offAfterLeg)
        .map(({ grossKg }) => poundsFromKilograms(grossKg)),
      ...cargo.filter((one) => isAboard(one, leg)).map(({ weightLb }) => weightLb),
    ]),
  });
}

export const isAboard = ({ firstLeg, lastLeg }: Cargo, leg: number): boolean =>
  firstLeg <= leg && leg <= lastLeg;
