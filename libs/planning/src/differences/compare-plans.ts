import type { CacheProjection } from '@drumline/stock';
import { minutesOfDay } from '@drumline/units';
import type { FlightChange, PlanDifference, PlannedFlight } from '../flight-plan.js';
import { drumsByStop, likelyPairs, routeOf } from '../flights/likely-pairs.js';
import { isPlannersNumber } from '../flights/planned-trips.js';
import { lowestLevel } from './lowest-level.js';
import { planTotals } from './plan-totals.js';

/** What a comparison looks at: the flights and the levels that result. */
export interface ComparedPlan {
  readonly flights: readonly PlannedFlight[];
  readonly caches: readonly CacheProjection[];
}

/**
 * What changed between two plans for the same days. Flights that have a number of their own are matched by it; those
 * that the planner numbered by likeness (`likelyPairs`). A flight on another day or aircraft is moved, whatever its drums, and so is one that keeps the number people know it by if its
 * take-off is more than a quarter of an hour off. Booked flights without drums in both plans are left out. The
 * lowest level of a cache is over the ends of days, the opening not counted.
 */
export function comparePlans(before: ComparedPlan, after: ComparedPlan): PlanDifference {
  const changes = matchFlights(before.flights.filter(carries), after.flights.filter(carries));
  const same = changes.pairs.filter((change) => !isMoved(change) && !otherDrums(change));
  return {
    removed: changes.unmatchedBefore,
    added: changes.unmatchedAfter,
    moved: changes.pairs.filter(isMoved),
    drumsChanged: changes.pairs.filter((change) => !isMoved(change) && otherDrums(change)),
    same,
    pilotChanged: same.filter(({ before, after }) => before.pilot !== after.pilot),
    totals: { before: planTotals(before.flights), after: planTotals(after.flights) },
    lowest: lowestLevels(before.caches, after.caches),
  };
}

const carries = (flight: PlannedFlight): boolean => flight.kind === 'positioning' || flight.drums > 0;
const isMoved = ({ before, after }: FlightChange): boolean =>
  before.date !== after.date || before.aircraft !== after.aircraft || isRetimed(before, after);
/** Minutes; fewer are within what a crew waits at a strip: common practice, no source. */
const leastRetiming = 15;
const isRetimed = (before: PlannedFlight, after: PlannedFlight): boolean =>
  before.id === after.id &&
  !isPlannersNumber(before.id) &&
  Math.abs(minutesOfDay(before.departs) - minutesOfDay(after.departs)) > leastRetiming;
const otherDrums = ({ before, after }: FlightChange): boolean => drumsByStop(before) !== drumsByStop(after);
const keepsId = (flight: PlannedFlight): boolean =>
  flight.state !== 'offered' || flight.kind === 'booked' || !isPlannersNumber(flight.id);

interface Matching {
  readonly pairs: readonly FlightChange[];
  readonly unmatchedBefore: readonly PlannedFlight[];
  readonly unmatchedAfter: readonly PlannedFlight[];
}

function matchFlights(before: readonly PlannedFlight[], after: readonly PlannedFlight[]): Matching {
  const partner = new Map<PlannedFlight, PlannedFlight>();
  const taken = new Set<PlannedFlight>();
  const pair = (earlier: PlannedFlight, later: PlannedFlight): void => {
    if (partner.has(earlier) || taken.has(later)) return;
    partner.set(earlier, later);
    taken.add(later);
  };
  const byId = new Map(after.map((flight) => [flight.id, flight]));
  for (const flight of before) {
    const sameId = byId.get(flight.id);
    if (sameId && keepsId(flight) && routeOf(sameId) === routeOf(flight)) pair(flight, sameId);
  }
  for (const { earlier, later } of likelyPairs(before, after)) pair(earlier, later);
  return {
    pairs: before.flatMap((flight) => {
      const match = partner.get(flight);
      return match ? [{ before: flight, after: match }] : [];
    }),
    unmatchedBefore: before.filter((flight) => !partner.has(flight)),
    unmatchedAfter: after.filter((flight) => !taken.has(flight)),
  };
}

function lowestLevels(before: readonly CacheProjection[], after: readonly CacheProjection[]) {
  const afterByPlace = new Map(after.map((cache) => [cache.place, cache]));
  return before.flatMap((cache) => {
    const later = afterByPlace.get(cache.place);
    if (!later) return [];
    return [
      {
        place: cache.place,
        beforeLitres: lowestLevel(cache).litres,
        afterLitres: lowestLevel(later).litres,
        minimumLitres: later.minimumLitres,
        criticalLitres: later.criticalLitres,
      },
    ];
  });
}
