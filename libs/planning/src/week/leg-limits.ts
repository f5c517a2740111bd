import {
  configurationOf,
  type LegLimit,
  type LegRequest,
  type RouteRequest,
  routeLoad,
} from '@drumline/loading';
import type { SurfaceState } from '@drumline/network';
import type { FlightSketch } from '../flights/flight-sketch.js';
import { withSurface } from '../flights/flight-stops.js';
import { printedSpares, type SpareUnder } from '../flights/printed-spares.js';

/** One limit of a leg with the drums of the flight aboard. */
export interface LegLimitLine extends SpareUnder {
  readonly name: LegLimit['name'];
  readonly place: string | null;
  /** State of the strip that the limit is for; null: it has nothing to do with a strip. */
  readonly surface: SurfaceState | null;
  /** Standing places; null: it is no number of places. */
  readonly positions: number | null;
  /** It keeps a further drum off; where fewer go than possible, nothing does. */
  readonly binds: boolean;
}

export interface LegWithLimits {
  readonly from: string;
  readonly to: string;
  readonly surface: SurfaceState;
  readonly drumsAboard: number;
  readonly drumsPossible: number;
  /** Tightest first; where the strip is soft, its dry landing limit is there to compare. */
  readonly limits: readonly LegLimitLine[];
}

/** Every limit of every leg on which drums are aboard. */
export function legsWithLimits({ onDay, aboard }: FlightSketch): readonly LegWithLimits[] {
  const { request, load } = onDay;
  const spareUnder = printedSpares(request, load, aboard);
  return load.legs.flatMap((leg, index) => {
    if (aboard[index] === 0) return [];
    const ends = request.legs[index]!;
    const lines = leg.limits.map((limit, at) => ({
      ...lineOf(request, ends, limit),
      ...spareUnder(index, limit),
      binds: at === 0 && aboard[index]! >= leg.drums,
    }));
    const dry = ends.to.surface === 'soft' ? dryLanding(request, index) : null;
    const dryLines =
      dry === null
        ? []
        : [
            {
              ...lineOf(request, dry.ends, dry.limit),
              ...spareUnder(index, dry.limit, dry.ends),
              binds: false,
            },
          ];
    return [
      {
        from: leg.from,
        to: leg.to,
        surface: ends.to.surface,
        drumsAboard: aboard[index]!,
        drumsPossible: leg.drums,
        limits: [lines[0]!, ...dryLines, ...lines.slice(1)],
      },
    ];
  });
}

const lineOf = (request: RouteRequest, { from, to }: LegRequest, { name, place }: LegLimit) => ({
  name,
  place,
  surface: place === null ? null : (place === to.place.code ? to : from).surface,
  positions:
    name === 'drum positions'
      ? configurationOf(request.type, request.configuration).drumPositions.length
      : null,
});

/** The landing limit of the leg if its strip were dry; null: the type may not land there either way. */
function dryLanding(request: RouteRequest, index: number) {
  const dry = withSurface(request, request.legs[index]!.to.place, 'dry');
  const limit = routeLoad(dry).legs[index]!.limits.find(({ name }) => name === 'strip landing limit');
  return limit === undefined ? null : { ends: dry.legs[index]!, limit };
}
