import { type Inches, type Pounds, poundsFromKilograms } from '@drumline/units';
import type { AircraftType, CabinConfiguration, LoadPlace, PlanningDrum } from './aircraft-type.js';
import type { LegLoad, RouteLoad } from './route-load.js';

/** The fuel of a flight as `routeLoad` gives it; any RouteLoad will do. */
export interface FlightFuel extends Pick<RouteLoad, 'rampFuelLb'> {
  readonly legs: readonly Pick<LegLoad, 'from' | 'to' | 'fuelAtTakeoffLb' | 'fuelAtLandingLb'>[];
}

/** A flight as the balance sees it, before any drum is placed. */
export interface FlightCabin {
  readonly type: AircraftType;
  /** Cabin configuration id. */
  readonly configuration: string;
  readonly fuel: FlightFuel;
  readonly cargo: readonly Cargo[];
}

/** Passengers, freight, seats, boards or empties aboard on the legs from `firstLeg` to `lastLeg` (0 is the first). */
export interface Cargo {
  readonly name: string;
  readonly weightLb: Pounds;
  /** Id of a seat, freight place or drum position; null: not decided yet, and then no balance can be judged. */
  readonly place: string | null;
  readonly firstLeg: number;
  readonly lastLeg: number;
}

/** A drum aboard from the first leg on, taken out at the end of leg `offAfterLeg` (0 is the first). */
export interface DrumAboard {
  readonly id: string;
  readonly weightLb: Pounds;
  readonly offAfterLeg: number;
}

export interface PlacedDrum extends DrumAboard {
  /** Id of a drum position of the configuration. */
  readonly position: string;
}

/** Drums of planning weight for a flight on which so many come out at the end of each leg. */
export function planningDrums(dropsByLeg: readonly number[], drum: PlanningDrum): DrumAboard[] {
  const weightLb = poundsFromKilograms(drum.grossKg);
  return dropsByLeg.flatMap((drums, offAfterLeg) =>
    Array.from({ length: drums }, (_, i) => ({ id: `${offAfterLeg + 1}.${i + 1}`, weightLb, offAfterLeg })),
  );
}

/** The seat, freight place or drum position of that id. */
export const placeOf = (
  { seats, freightPlaces, drumPositions }: CabinConfiguration,
  id: string | null,
): LoadPlace | undefined => [...seats, ...freightPlaces, ...drumPositions].find((place) => place.id === id);

/** A place with what stands there, on one leg. */
export interface Standing {
  readonly place: LoadPlace;
  readonly weightLb: number;
}

/** Cargo aboard on a leg, where it stands; cargo without a known place is left out. */
export const cargoOnLeg = (
  configuration: CabinConfiguration,
  cargo: readonly Cargo[],
  leg: number,
): Standing[] =>
  cargo.flatMap(({ place: id, weightLb, firstLeg, lastLeg }) => {
    const place = placeOf(configuration, id);
    return place && firstLeg <= leg && leg <= lastLeg ? [{ place, weightLb }] : [];
  });

/** Fuel at the moments of a leg; the ramp counts on the first leg only. */
export const fuelOnLeg = ({ rampFuelLb, legs }: FlightFuel, leg: number) => ({
  rampLb: leg === 0 ? rampFuelLb : null,
  takeoffLb: legs[leg]!.fuelAtTakeoffLb,
  landingLb: legs[leg]!.fuelAtLandingLb,
});

export const momentOf = (masses: readonly Standing[]): number =>
  masses.reduce((sum, { place, weightLb }) => sum + place.armIn * weightLb, 0);

export const weightOf = (masses: readonly { readonly weightLb: number }[]): number =>
  masses.reduce((sum, { weightLb }) => sum + weightLb, 0);

/**
 * The order in which drums come out of the door: smaller `unloadOrder` first and, where the order is free, the one that
 * holds the tail down most, which is the safest order against tipping.
 */
export function outOfTheDoor(leaving: readonly Standing[], tipArmIn: Inches): Standing[] {
  const tailMoment = ({ place, weightLb }: Standing) => weightLb * (place.armIn - tipArmIn);
  return [...leaving].sort(
    (a, b) => a.place.unloadOrder - b.place.unloadOrder || tailMoment(b) - tailMoment(a),
  );
}
