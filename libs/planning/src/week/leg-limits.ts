import {
  configurationOf,
  isSoftNearest,
  type LegLimit,
  type LegRequest,
  type RouteRequest,
  routeLoad,
} from '@drumline/loading';
import type { Place, SurfaceState } from '@drumline/network';
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
  /**
   * Tightest first; where the strip is soft, its dry landing limit is there to compare. Where nobody knows its surface, the
   * soft one is there if it is the nearest of the weights (`isSoftNearest`), and binds in the place of what is planned on.
   */
  readonly limits: readonly LegLimitLine[];
}

/** Every limit of every leg on which drums are aboard; `heard` says of a place what is known of its surface, or "unknown". */
export function legsWithLimits(
  { onDay, aboard }: FlightSketch,
  heard: (place: Place) => string,
): readonly LegWithLimits[] {
  const { request, load } = onDay;
  const spareUnder = printedSpares(request, load, aboard);
  return load.legs.flatMap((leg, index) => {
    if (aboard[index] === 0) return [];
    const ends = request.legs[index]!;
    const linesOf = (at: LegRequest, limits: readonly LegLimit[], drums: number) =>
      limits.map((limit, nth) => ({
        ...lineOf(request, at, limit),
        ...spareUnder(index, limit, at),
        binds: nth === 0 && aboard[index]! >= drums,
      }));
    const other = otherLanding(request, index);
    const [otherLine] = other === null ? [] : linesOf(other.ends, [other.limit], other.drums);
    const planned = linesOf(ends, leg.limits, leg.drums);
    return [
      {
        from: leg.from,
        to: leg.to,
        surface: ends.to.surface,
        drumsAboard: aboard[index]!,
        drumsPossible: leg.drums,
        limits: otherLine === undefined ? planned : withOther(planned, otherLine, heard(ends.to.place)),
      },
    ];
  });
}

/** The dry landing limit after the first, to compare; the soft one in its order where it is the nearest of the weights. */
function withOther(
  planned: readonly LegLimitLine[],
  other: LegLimitLine,
  heard: string,
): readonly LegLimitLine[] {
  if (other.surface !== 'soft') return [planned[0]!, { ...other, binds: false }, ...planned.slice(1)];
  const plannedOn = planned.find(({ name }) => name === other.name)!.surface!;
  const nearestSpareLb = planned.find(({ limitLb }) => limitLb !== null)!.spareLb;
  if (!isSoftNearest({ heard, plannedOn, softSpareLb: other.spareLb, nearestSpareLb })) return planned;
  const tighter = planned.filter(({ spareLb }) => spareLb <= other.spareLb);
  const rest = planned.slice(tighter.length).map((line) => ({ ...line, binds: false }));
  return [...tighter, { ...other, binds: other.binds && tighter.length === 0 }, ...rest];
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

/**
 * The landing limit of the leg if its strip were soft, or dry where it is soft, with the drums that may go then; null: the
 * type may not land there in that state, or the strip is closed.
 */
function otherLanding(request: RouteRequest, index: number) {
  const { to } = request.legs[index]!;
  if (to.surface === 'closed') return null;
  const changed = withSurface(request, to.place, to.surface === 'soft' ? 'dry' : 'soft');
  const { limits, drums } = routeLoad(changed).legs[index]!;
  const limit = limits.find(({ name }) => name === 'strip landing limit');
  return limit === undefined ? null : { ends: changed.legs[index]!, limit, drums };
}
