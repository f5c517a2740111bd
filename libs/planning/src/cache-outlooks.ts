import {
  type CacheProjection,
  type Draw,
  type SlingLoad,
  type StockCourse,
  stockCourse,
} from '@drumline/stock';
import { type IsoDate, litres } from '@drumline/units';
import { projectScenario, withLandings } from './flights/project.js';
import { usableDrums } from './problem/standing-flights.js';
import { stockOutlook } from './problem/stock-outlook.js';
import type { Scenario, SlingMove, StandingFlight, StandingState } from './scenario.js';

/** A flight with the drums that it has still to set down. */
export interface FlightToCome extends Pick<StandingFlight, 'id' | 'state' | 'date' | 'stops'> {
  readonly half: 'morning' | 'afternoon';
  /** Why somebody has to decide on it; null: nothing to decide. */
  readonly needsDecision: string | null;
}

/** Drums that a flight is to set down at a cache. */
export interface Delivery extends Omit<FlightToCome, 'id' | 'stops'> {
  readonly flight: string;
  readonly drums: number;
  /** Of them, on hold: they count nothing until others go in their place. */
  readonly heldDrums: number;
  /** Of those that may be used. */
  readonly litres: number;
}

/** Fuel that is planned to leave a cache into an aircraft; `for`: programme, or what an uplift is for. */
export interface PlannedDraw extends Omit<Draw, 'place'> {
  readonly kind: 'helicopter task' | 'planned uplift';
  /** The helicopter of a task. */
  readonly helicopter: string | null;
}

/** A sling, and what it takes along with all flights landed: its place may have less than is planned. */
export interface SlingToCome extends SlingMove {
  readonly load: SlingLoad;
  /** Of that, what would stay behind if no flight landed that somebody has still to decide on. */
  readonly inQuestion: SlingLoad;
}

/** What lies ahead of a cache, from the stock of the scenario on. */
export interface CacheOutlook {
  readonly place: string;
  readonly noDeliveries: CacheProjection;
  /** With the flights that somebody has approved, whatever has become of them since. */
  readonly approved: CacheProjection;
  /** With the offered ones too. */
  readonly offered: CacheProjection;
  readonly deliveries: readonly Delivery[];
  readonly draws: readonly PlannedDraw[];
  /** Slings into it and out of it. */
  readonly slings: readonly SlingToCome[];
}

/**
 * The outlook of every cache of the scenario, in its order: one projection without deliveries, one with the approved
 * flights and one with the offered ones as well. `flights`: what each has still to set down; drums that stand at a cache
 * already are in the stock of the scenario. Litres; deliveries, draws and slings by date.
 */
export function cacheOutlooks(scenario: Scenario, flights: readonly FlightToCome[]): readonly CacheOutlook[] {
  const settled = flights.filter(({ state }) => isApproved(state));
  const noDeliveries = projectScenario(scenario, []);
  const approved = projectScenario(scenario, settled);
  const offered = stockCourse(withLandings(scenario, stockOutlook(scenario), flights));
  const loadIn =
    ({ slingLoads }: StockCourse) =>
    (sling: SlingMove) =>
      slingLoads.get(sling) ?? asPlanned(sling, scenario);
  const loadOf = loadIn(offered);
  const decidedLoadOf = loadIn(decidedCourse(scenario, flights) ?? offered);
  const slings = scenario.slings
    .map((sling) => ({
      ...sling,
      load: loadOf(sling),
      inQuestion: lessThan(loadOf(sling), decidedLoadOf(sling)),
    }))
    .sort(byDate);
  return scenario.caches.map(({ place }, index) => ({
    place,
    noDeliveries: noDeliveries[index]!,
    approved: approved[index]!,
    offered: offered.caches[index]!,
    deliveries: deliveriesTo(place, flights, scenario.policy.drum.fillLitres),
    draws: drawsAt(place, scenario),
    slings: slings.filter(({ from, to }) => from === place || to === place),
  }));
}

/** Without the flights that somebody has still to decide on; null: there are none. */
function decidedCourse(scenario: Scenario, flights: readonly FlightToCome[]): StockCourse | null {
  const decided = flights.filter(({ needsDecision }) => needsDecision === null);
  return decided.length === flights.length
    ? null
    : stockCourse(withLandings(scenario, stockOutlook(scenario), decided));
}

const lessThan = (all: SlingLoad, decided: SlingLoad): SlingLoad => ({
  drums: Math.max(0, all.drums - decided.drums),
  litres: litres(Math.max(0, all.litres - decided.litres)),
});

/** Of a sling after the last day that is projected. */
const asPlanned = ({ drums }: SlingMove, { policy }: Scenario): SlingLoad => ({
  drums,
  litres: litres(drums * policy.drum.fillLitres),
});

const isApproved = (state: StandingState): boolean => state !== 'offered';

function deliveriesTo(
  place: string,
  flights: readonly FlightToCome[],
  fillLitres: number,
): readonly Delivery[] {
  return flights
    .flatMap(({ id, stops, ...flight }) =>
      stops
        .filter((stop) => stop.place === place && stop.drums > 0)
        .map(({ place: _, drums, heldDrums = 0 }) => ({
          ...flight,
          flight: id,
          drums,
          heldDrums,
          litres: usableDrums({ drums, heldDrums }) * fillLitres,
        })),
    )
    .sort(byDate);
}

function drawsAt(place: string, { helicopterTasks, plannedUplifts }: Scenario): readonly PlannedDraw[] {
  const tasks = helicopterTasks
    .filter((task) => task.place === place && task.litres > 0)
    .map(({ date, litres, programme, helicopter }) => ({
      kind: 'helicopter task' as const,
      date,
      litres,
      for: programme,
      helicopter,
    }));
  const uplifts = plannedUplifts
    .filter((uplift) => uplift.place === place)
    .map(({ place: _, ...uplift }) => ({ kind: 'planned uplift' as const, ...uplift, helicopter: null }));
  return [...tasks, ...uplifts].sort(byDate);
}

const byDate = (one: { readonly date: IsoDate }, other: { readonly date: IsoDate }): number =>
  one.date < other.date ? -1 : one.date > other.date ? 1 : 0;
