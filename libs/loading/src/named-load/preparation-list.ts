import type { Inches, Pounds } from '@drumline/units';
import { type AircraftType, configurationOf, type PlanningDrum } from '../aircraft-type.js';
import { type FlightFuel, planningDrums } from '../cabin.js';
import { findPositions } from '../find-positions.js';

/** What a loader prepares in a cabin before the drums come: one page for each configuration. */
export interface PreparationList {
  readonly type: string;
  readonly configuration: string;
  readonly operatingWeightLb: Pounds;
  readonly operatingArmIn: Inches;
  readonly reference: string;
  /** Front to back. */
  readonly positions: readonly PreparedPosition[];
  readonly freightPlaces: readonly {
    readonly id: string;
    readonly armIn: Inches;
    readonly limitLb: Pounds;
  }[];
  readonly seats: number;
  /** For each number of drums of planning weight: where they stand with that fuel, or why they cannot. */
  readonly standings: readonly {
    readonly drums: number;
    readonly positions: readonly string[];
    readonly why: string | null;
  }[];
}

export interface PreparedPosition {
  readonly id: string;
  readonly armIn: Inches;
  readonly limitLb: Pounds;
  /** Deepest first: 1 is loaded first. Positions with the same figure are loaded in any order. */
  readonly loadOrder: number;
  /** 1 comes out first. */
  readonly unloadOrder: number;
}

/**
 * The preparation list of a cabin configuration: positions with their limits and order, and for every number of drums
 * the positions that balance with the fuel given. A drum more moves as few of the others as it can.
 */
export function preparationList(
  type: AircraftType,
  configuration: string,
  fuel: FlightFuel,
  drum: PlanningDrum,
): PreparationList {
  const cabin = configurationOf(type, configuration);
  const orders = [...new Set(cabin.drumPositions.map(({ unloadOrder }) => unloadOrder))].sort(
    (a, b) => a - b,
  );
  const frontToBack = [...cabin.drumPositions].sort((a, b) => a.armIn - b.armIn);
  return {
    type: type.id,
    configuration: cabin.name,
    operatingWeightLb: cabin.operatingWeightLb,
    operatingArmIn: cabin.operatingArmIn,
    reference: type.reference,
    positions: frontToBack.map(({ id, armIn, limitLb, unloadOrder }) => ({
      id,
      armIn,
      limitLb,
      loadOrder: orders.length - orders.indexOf(unloadOrder),
      unloadOrder: orders.indexOf(unloadOrder) + 1,
    })),
    freightPlaces: cabin.freightPlaces.map(({ id, armIn, limitLb }) => ({ id, armIn, limitLb })),
    seats: cabin.seats.length,
    standings: standingsByCount(
      { type, configuration, fuel, drum },
      frontToBack.map(({ id }) => id),
    ),
  };
}

function standingsByCount(
  {
    type,
    configuration,
    fuel,
    drum,
  }: { type: AircraftType; configuration: string; fuel: FlightFuel; drum: PlanningDrum },
  frontToBack: readonly string[],
): PreparationList['standings'] {
  let standing: ReadonlyMap<string, string> = new Map();
  return frontToBack.map((_, index) => {
    const drums = planningDrums([index + 1], drum);
    const found = findPositions({ type, configuration, fuel, cargo: [] }, drums, standing);
    if (!found.found) return { drums: index + 1, positions: [], why: found.why };
    standing = new Map(found.drums.map(({ id, position }) => [id, position]));
    const taken = new Set(standing.values());
    return { drums: index + 1, positions: frontToBack.filter((id) => taken.has(id)), why: null };
  });
}
