import {
  type CargoToPlace,
  configurationOf,
  drumInNoBook,
  type NamedDrum,
  type NamedLoad,
  placeCargo,
  placeDrums,
  type RouteRequest,
} from '@drumline/loading';
import { type Drum, holdOn } from '@drumline/stock';
import { type Kilograms, poundsFromKilograms } from '@drumline/units';
import { sketchFlight } from '../flights/flight-sketch.js';
import { flightLoads } from '../problem/flight-loads.js';
import { territoryOf } from '../problem/territory.js';
import type { Scenario, StandingFlight } from '../scenario.js';

/** A drum picked for a flight, by number; its position once somebody has given it one. */
export interface PickedDrum {
  readonly number: string;
  /** The stop where it is to be left. */
  readonly place: string;
  /** Null, or one that the cabin does not have: to be found. */
  readonly position: string | null;
  /** It is aboard, in the book or not: what its crew says it weighs; null: nothing. Absent: it has to be in the book. */
  readonly toldKg?: Kilograms | null;
}

export type LoadOfFlight =
  | { readonly found: true; readonly load: NamedLoad }
  | {
      readonly found: false;
      readonly why: string;
      /** Its drums and cargo are known, and stand nowhere so that they hold. */
      readonly cannotStand?: true;
    };

/**
 * The named load of a flight on its day: route, surfaces, winds and fuel by the scenario, each drum with its own weight,
 * passengers and freight of a booked flight in their places. A drum that is aboard and in no book has the weight its crew
 * has told, else the planning weight. Drums that all have a position stay there, checked or not;
 * else every drum gets one that holds, with the fewest moved.
 */
export function loadOfFlight(
  scenario: Scenario,
  flight: StandingFlight,
  picked: readonly PickedDrum[],
): LoadOfFlight {
  const { onDay } = sketchFlight(scenario, flightLoads(scenario, territoryOf(scenario)), flight);
  const route = { request: onDay.request, route: onDay.load };
  const drums: NamedDrum[] = [];
  for (const one of picked) {
    const { number, place } = one;
    const drum = drumByNumber(scenario, one);
    if (!drum) return { found: false, why: `There is no drum ${number} in the book` };
    const offAfterLeg = onDay.request.legs.findIndex(({ to }) => to.place.code === place);
    if (offAfterLeg < 0) return { found: false, why: `${flight.id} does not land at ${place}` };
    drums.push({ ...drum, offAfterLeg });
  }
  const placed = placeCargo(route, cargoOf(onDay.request), []);
  if (!placed.found) return { ...placed, cannotStand: true };
  const load: NamedLoad = { ...route, drums: [], cargo: placed.cargo };
  const { type, configuration } = onDay.request;
  const places = new Set(configurationOf(type, configuration).drumPositions.map(({ id }) => id));
  const positions = new Map(
    picked.flatMap(({ number, position }) => (position && places.has(position) ? [[number, position]] : [])),
  );
  if (positions.size === picked.length) {
    const standing = drums.map((drum) => ({ ...drum, position: positions.get(drum.number)! }));
    return { found: true, load: { ...load, drums: standing } };
  }
  return withDrums(load, drums, positions);
}

/** Positions for the drums beside the cargo as it stands; where there are none, the cargo is placed anew. */
function withDrums(
  load: NamedLoad,
  drums: readonly NamedDrum[],
  positions: ReadonlyMap<string, string>,
): LoadOfFlight {
  const beside = placeDrums(load, drums, positions);
  if (beside.found) return { found: true, load: { ...load, drums: beside.drums } };
  const anew = placeCargo(load, cargoOf(load.request), drums);
  return anew.found
    ? { found: true, load: { ...load, cargo: anew.cargo, drums: anew.drums } }
    : { ...beside, cannotStand: true };
}

/** Null: it is in no book, and nobody has said that it is aboard. */
function drumByNumber(
  { drums, batches, policy }: Scenario,
  { number, toldKg }: PickedDrum,
): Omit<NamedDrum, 'offAfterLeg'> | null {
  const drum = drums.find((one) => one.number === number);
  if (drum) return asNamed(drum, batches);
  return toldKg === undefined ? null : drumInNoBook(number, toldKg, policy);
}

const asNamed = (drum: Drum, batches: Scenario['batches']): Omit<NamedDrum, 'offAfterLeg'> => {
  const { number, batch, grossKg, tareKg, litres } = drum;
  const held = holdOn(drum, batches);
  return {
    ...{ number, batch, grossKg, tareKg, litres },
    ...(held === undefined ? {} : { held: `${held.what} is held: ${held.hold.reason}.` }),
  };
};

/** Passengers one by one and freight as a lot that may be spread, leg by leg. */
function cargoOf({ legs }: RouteRequest): CargoToPlace[] {
  return legs.flatMap(({ passengers, passengersKg, freightKg }, leg) => {
    const onLeg = { firstLeg: leg, lastLeg: leg };
    const each = passengers === 0 ? 0 : poundsFromKilograms(passengersKg) / passengers;
    const people = Array.from({ length: passengers }, (_, index) => ({
      name: `passenger ${index + 1}`,
      weightLb: each as CargoToPlace['weightLb'],
      kind: 'passenger' as const,
      divisible: false,
      ...onLeg,
    }));
    const freight: CargoToPlace = {
      name: 'freight',
      weightLb: poundsFromKilograms(freightKg),
      kind: 'freight',
      divisible: true,
      ...onLeg,
    };
    return freightKg > 0 ? [...people, freight] : people;
  });
}
