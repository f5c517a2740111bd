import {
  configurationOf,
  type LegLimit,
  type LegRequest,
  type RouteRequest,
  routeLoad,
  stripWeights,
} from '@drumline/loading';
import type { SurfaceState } from '@drumline/network';
import { type Pounds, pounds, poundsFromKilograms } from '@drumline/units';
import type { FlightSketch } from '../flights/flight-sketch.js';
import { withSurface } from '../flights/flight-stops.js';

/** One limit of a leg with the drums of the flight aboard. */
export interface LegLimitLine {
  readonly name: LegLimit['name'];
  readonly place: string | null;
  /** State of the strip that the limit is for; null: it has nothing to do with a strip. */
  readonly surface: SurfaceState | null;
  /** Null: it is no weight. */
  readonly limitLb: Pounds | null;
  /** Standing places; null: it is no number of places. */
  readonly positions: number | null;
  /** Over where it is negative. */
  readonly spareLb: Pounds;
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
  const drumLb = poundsFromKilograms(request.drum.grossKg);
  return load.legs.flatMap((leg, index) => {
    if (aboard[index] === 0) return [];
    const ends = request.legs[index]!;
    const lineOf = lineFor(request, ends, aboard[index]! * drumLb);
    const lines = leg.limits.map((limit, at) => lineOf(limit, at === 0));
    const dry = ends.to.surface === 'soft' ? dryLanding(request, index) : null;
    return [
      {
        from: leg.from,
        to: leg.to,
        surface: ends.to.surface,
        drumsAboard: aboard[index]!,
        drumsPossible: leg.drums,
        limits:
          dry === null
            ? lines
            : [
                lines[0]!,
                lineFor(dry.request, dry.request.legs[index]!, aboard[index]! * drumLb)(dry.limit, false),
                ...lines.slice(1),
              ],
      },
    ];
  });
}

const lineFor =
  (request: RouteRequest, ends: LegRequest, aboardLb: number) =>
  (limit: LegLimit, binds: boolean): LegLimitLine => ({
    name: limit.name,
    place: limit.place,
    surface: limit.place === null ? null : (limit.place === ends.to.place.code ? ends.to : ends.from).surface,
    limitLb: limitLbOf(request, ends, limit.name),
    positions:
      limit.name === 'drum positions'
        ? configurationOf(request.type, request.configuration).drumPositions.length
        : null,
    spareLb: pounds(limit.roomLb - aboardLb),
    binds,
  });

function limitLbOf({ type }: RouteRequest, { from, to }: LegRequest, name: LegLimit['name']): Pounds | null {
  const [off, on] = [stripWeights(from), stripWeights(to)];
  switch (name) {
    case 'max take-off weight':
      return type.maxTakeoffLb;
    case 'max landing weight':
      return type.maxLandingLb;
    case 'max zero-fuel weight':
      return type.maxZeroFuelLb;
    case 'strip take-off limit':
      return off.forbiddenBy === null ? off.takeoffLb : null;
    case 'strip landing limit':
      return on.forbiddenBy === null ? on.landingLb : null;
    default:
      return null;
  }
}

/** The landing limit of the leg if its strip were dry; null: the type may not land there either way. */
function dryLanding(request: RouteRequest, index: number) {
  const dry = withSurface(request, request.legs[index]!.to.place, 'dry');
  const limit = routeLoad(dry).legs[index]!.limits.find(({ name }) => name === 'strip landing limit');
  return limit === undefined ? null : { request: dry, limit };
}
