import { type RouteRequest, routeLoad, unloadOrStay } from '@drumline/loading';
import type { Place, SurfaceState } from '@drumline/network';
import { knots } from '@drumline/units';
import type { PlannedStop } from '../flight-plan.js';
import type { ReasonPicture } from '../reasons/compared-levels.js';
import { ifSoftWords } from '../reasons/if-soft.js';
import type { FlightSketch } from './flight-sketch.js';

/** Every landing before the last: drums, unload or stay with what is aboard, what to do when soft or closed, how to land. */
export function flightStops(picture: ReasonPicture, sketch: FlightSketch): readonly PlannedStop[] {
  const { flight, onDay, dropsByLeg, stopByLeg, aboard } = sketch;
  const { request, load } = onDay;
  const arrivals = unloadOrStay(request, load.legs, aboard);
  return request.legs.slice(0, -1).map(({ to }, leg) => {
    const soft = drumsIfSoft(sketch, leg);
    const held = flight.stops[stopByLeg[leg]!]?.heldDrums;
    return {
      place: to.place.code,
      drums: dropsByLeg[leg]!,
      ...(held !== undefined && { heldDrums: held }),
      unloadOrStay: arrivals[leg]!,
      drumsIfSoft: soft,
      ifSoft: ifSoftWords(picture, {
        flight,
        stop: stopByLeg[leg]!,
        place: to.place.code,
        drumsIfSoft: soft,
      }),
      tailwindLimitKt: to.place.runway?.tailwindLimitKt ?? knots(0),
      committalPoint: to.place.runway?.committalPoint ?? null,
    };
  });
}

/** Of the drums for this stop, those that may still go when it is soft, the other stops served as planned; null: not even those for the others. */
function drumsIfSoft({ onDay, dropsByLeg, aboard }: FlightSketch, stop: number): number | null {
  const load = routeLoad(withSurface(onDay.request, onDay.request.legs[stop]!.to.place, 'soft'));
  if (!load.flyable) return null;
  const room = load.legs.map(
    (leg, index) => leg.drums - (aboard[index]! - (index <= stop ? dropsByLeg[stop]! : 0)),
  );
  const toStop = Math.min(...room.slice(0, stop + 1));
  const beyond = Math.min(0, ...room.slice(stop + 1));
  return toStop + beyond < 0 ? null : Math.min(dropsByLeg[stop]!, toStop + beyond);
}

/** The same flight with a place in another state. */
export const withSurface = (request: RouteRequest, place: Place, surface: SurfaceState): RouteRequest => ({
  ...request,
  legs: request.legs.map((leg) => ({
    ...leg,
    from: leg.from.place.code === place.code ? { ...leg.from, surface } : leg.from,
    to: leg.to.place.code === place.code ? { ...leg.to, surface } : leg.to,
  })),
});
