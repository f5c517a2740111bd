import { type RouteLoad, type RouteRequest, routeLoad } from '@drumline/loading';
import type { SurfaceState } from '@drumline/network';
import { flightLoads } from './problem/flight-loads.js';
import { territoryOf } from './problem/territory.js';
import type { Scenario } from './scenario.js';

/** What one type may carry from a base to a strip and back, with the strip dry and with it soft. */
export interface PayloadRow {
  readonly base: string;
  readonly strip: string;
  readonly type: string;
  /** Null: the type is not approved at the strip. */
  readonly dry: RouteLoad | null;
  readonly soft: RouteLoad | null;
}

/**
 * Payload of every base, strip and type for a round trip in the drum configuration, with the winds of the first
 * day; the base dry. Rows in the order of the scenario: strips, then bases, then types.
 */
export function payloadTable(scenario: Scenario): PayloadRow[] {
  const { loadOf } = flightLoads(scenario, territoryOf(scenario));
  const codes = (kind: 'base' | 'strip') =>
    scenario.places.filter((place) => place.kind === kind).map(({ code }) => code);
  const approved = new Set(scenario.stripLimits.map(({ place, type }) => `${place} ${type}`));
  const row = (base: string, strip: string, type: string): PayloadRow => {
    if (!approved.has(`${strip} ${type}`)) return { base, strip, type, dry: null, soft: null };
    const { request } = loadOf(type, [base, strip, base], 0);
    const on = (surface: SurfaceState) => routeLoad(withSurface(request, strip, surface));
    return { base, strip, type, dry: on('dry'), soft: on('soft') };
  };
  return codes('strip').flatMap((strip) =>
    codes('base').flatMap((base) => scenario.aircraftTypes.map(({ id }) => row(base, strip, id))),
  );
}

/** The same flight with one strip in another state and every other place dry. */
function withSurface(request: RouteRequest, strip: string, surface: SurfaceState): RouteRequest {
  const end = (at: RouteRequest['legs'][number]['from']) => ({
    ...at,
    surface: at.place.code === strip ? surface : ('dry' as const),
  });
  return { ...request, legs: request.legs.map((leg) => ({ ...leg, from: end(leg.from), to: end(leg.to) })) };
}
