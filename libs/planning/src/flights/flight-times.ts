import type { CacheProjection } from '@drumline/stock';
import { type ClockTime, clockTimeAt, minutes, minutesOfDay } from '@drumline/units';
import { groupBy } from '../group-by.js';
import type { Scenario } from '../scenario.js';
import { departureWindow } from './departure-window.js';
import type { FlightSketch } from './flight-sketch.js';
import { hasLeft } from './flight-state.js';
import { type DayFlight, type ScheduleClash, scheduleDay } from './schedule-day.js';

/** Flights of one day that no order lets fly one at a time within the flying day. */
export interface Clash extends ScheduleClash {
  readonly day: number;
}

/**
 * Departure of every flight, by id. On each day the flight whose cache runs short first departs first, then the one
 * that loses most by waiting for the afternoon's weather; a flight found again on its day and aircraft keeps its time where
 * that is still possible. Flights that find no place get their earliest time; the checker
 * then finds who is in two places at once.
 */
export function flightTimes(
  scenario: Scenario,
  sketches: readonly FlightSketch[],
  caches: readonly CacheProjection[],
): ReadonlyMap<string, ClockTime> {
  const times = new Map<string, ClockTime>();
  for (const { flights, schedule } of daySchedules(scenario, sketches, caches)) {
    for (const flight of flights) {
      const start = schedule.departures.get(flight.id) ?? flight.earliest;
      times.set(flight.id, clockTimeAt(minutes(Math.min(1439, start))));
    }
  }
  return times;
}

/** The days that have no schedule, with the flights that stand in each other's way; empty: every day has one. */
export function flightClashes(
  scenario: Scenario,
  sketches: readonly FlightSketch[],
  caches: readonly CacheProjection[],
): readonly Clash[] {
  return daySchedules(scenario, sketches, caches).flatMap(({ day, schedule }) =>
    schedule.clashes.map((clash) => ({ day, ...clash })),
  );
}

function daySchedules(
  scenario: Scenario,
  sketches: readonly FlightSketch[],
  caches: readonly CacheProjection[],
) {
  const byPlace = new Map(caches.map((cache) => [cache.place, cache]));
  return [...groupBy(sketches, ({ day }) => day)].map(([day, today]) => {
    const flights = today.map((sketch) => dayFlight(scenario, sketch, urgency(scenario, sketch, byPlace)));
    return { day, flights, schedule: scheduleDay(flights) };
  });
}

function dayFlight(scenario: Scenario, { flight, booked, onDay }: FlightSketch, urgency: number): DayFlight {
  const { load, request } = onDay;
  const departs = flight.departs ?? booked?.departs;
  const before = departs === undefined ? timeBefore(scenario, flight) : undefined;
  const window = departureWindow(scenario, {
    date: flight.date,
    legs: request.legs.map(({ from, to }, leg) => ({
      from: from.place,
      to: to.place,
      blockHours: load.legs[leg]!.blockHours,
    })),
    turnRoundMinutes: request.type.turnRoundMinutes,
    hasLeft: hasLeft(flight.state),
    ...(departs !== undefined && { departs }),
  });
  return {
    id: flight.id,
    aircraft: flight.aircraft,
    pilot: flight.pilot ?? null,
    ...window,
    ...(before !== undefined && { before }),
    heldMinutes: Math.ceil(Math.max(load.dutyHours, booked?.heldHours ?? 0) * 60 - 1e-6),
    urgency,
  };
}

/** People know a flight by its take-off time: what stands under its number, on its day and aircraft. */
function timeBefore(
  { flights }: Scenario,
  { id, date, aircraft }: FlightSketch['flight'],
): number | undefined {
  const stood = flights.find((each) => each.id === id && each.date === date && each.aircraft === aircraft);
  return stood?.departs === undefined ? undefined : minutesOfDay(stood.departs);
}

/** Days until the stop that is short first is short without what lands from now on; weather decides between equals. */
function urgency(
  scenario: Scenario,
  { flight, day, drums }: FlightSketch,
  caches: ReadonlyMap<string, CacheProjection>,
): number {
  if (drums === 0) return Number.POSITIVE_INFINITY;
  const byStop = flight.stops.map(({ place, drums }) => {
    const cache = caches.get(place);
    if (!cache) return Number.MAX_SAFE_INTEGER;
    const odds = scenario.weather.find((strip) => strip.place === place);
    const lostByWaiting = odds ? (odds.afternoonCancel - odds.morningCancel) * drums : 0;
    const critical = firstShortDay(cache, day, cache.criticalLitres);
    const minimum = firstShortDay(cache, day, cache.minimumLitres);
    return critical * 1000 + minimum * 10 - lostByWaiting;
  });
  return Math.min(...byStop);
}

/** First day, from `from` on, that ends below the level if nothing lands from then on; one past the last: none. */
function firstShortDay({ usable, landed }: CacheProjection, from: number, level: number): number {
  let landedSince = 0;
  for (let day = from; day < usable.length; day++) {
    landedSince += landed[day]!;
    if (usable[day]! - landedSince < level) return day;
  }
  return usable.length;
}
