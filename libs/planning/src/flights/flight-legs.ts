import {
  type Cargo,
  configurationOf,
  findPositions,
  planningDrums,
  type RouteRequest,
} from '@drumline/loading';
import { poundsFromKilograms } from '@drumline/units';
import type { PlannedLeg } from '../flight-plan.js';
import type { FlightSketch } from './flight-sketch.js';
import { printedSpares } from './printed-spares.js';

/** The legs of a flight: drums aboard and possible, the binding limit, what is left under it, and where drums stand. */
export function flightLegs({ onDay, aboard, dropsByLeg }: FlightSketch): readonly PlannedLeg[] {
  const { request, load } = onDay;
  const spareUnder = printedSpares(request, load, aboard);
  const positions = positionsByLeg(request, load, dropsByLeg);
  return load.legs.map((leg, index) => ({
    from: leg.from,
    to: leg.to,
    distanceNm: leg.distanceNm,
    windKt: leg.windKt,
    blockHours: leg.blockHours,
    surface: request.legs[index]!.to.surface,
    drumsAboard: aboard[index]!,
    drumsPossible: leg.drums,
    binding: leg.binding,
    spareLb: spareUnder(index, leg.binding).spareLb,
    relax: leg.relax,
    positions: positions[index]!,
  }));
}

/** Positions front to back on every leg; none where the drums find no place. */
function positionsByLeg(
  request: RouteRequest,
  fuel: FlightSketch['onDay']['load'],
  dropsByLeg: readonly number[],
): readonly (readonly string[])[] {
  const drums = planningDrums(dropsByLeg, request.drum);
  const { drumPositions } = configurationOf(request.type, request.configuration);
  const frontToBack = [...drumPositions].sort((one, other) => one.armIn - other.armIn).map(({ id }) => id);
  const { type, configuration } = request;
  for (const cargo of drums.length > 0 ? freightPlacings(request) : []) {
    const found = findPositions({ type, configuration, fuel, cargo }, drums);
    if (!found.found) continue;
    return request.legs.map((_, leg) => {
      const taken = new Set(
        found.drums.filter((drum) => drum.offAfterLeg >= leg).map((drum) => drum.position),
      );
      return frontToBack.filter((id) => taken.has(id));
    });
  }
  return request.legs.map(() => []);
}

/** The freight of the legs in each of the cabin's freight places in turn, all of it in one place. */
function freightPlacings(request: RouteRequest): readonly (readonly Cargo[])[] {
  const { freightPlaces } = configurationOf(request.type, request.configuration);
  const freight = (place: string | null): readonly Cargo[] =>
    request.legs.flatMap(({ freightKg }, leg) =>
      freightKg > 0
        ? [{ name: 'freight', weightLb: poundsFromKilograms(freightKg), place, firstLeg: leg, lastLeg: leg }]
        : [],
    );
  return freight(null).length === 0 ? [[]] : freightPlaces.map(({ id }) => freight(id));
}
