import { kilograms, litres } from '@drumline/units';
import { exampleRequest } from '../example-flight.js';
import { type RouteRequest, routeLoad } from '../route-load.js';
import type { NamedDrum, NamedLoad, StandingDrumAboard } from './named-load.js';

/** A named drum of 160 kg of fuel with that tare, for the specs of this lib. */
export const exampleDrum = (number: string, tareKg = 20, offAfterLeg = 0): NamedDrum => ({
  number,
  batch: 'J27-012',
  grossKg: kilograms(160 + tareKg),
  tareKg: kilograms(tareKg),
  litres: litres(200),
  offAfterLeg,
});

/** The same, standing in a position. */
export const standing = (
  number: string,
  position: string,
  tareKg = 20,
  offAfterLeg = 0,
): StandingDrumAboard => ({
  ...exampleDrum(number, tareKg, offAfterLeg),
  position,
});

/** A flight of the example type over those places with these drums. */
export const exampleLoad = (
  places: readonly string[],
  drums: readonly StandingDrumAboard[],
  request: RouteRequest = exampleRequest(places),
): NamedLoad => ({ request, route: routeLoad(request), drums, cargo: [] });
