import type { CacheProjection } from '@drumline/stock';
import { type Hours, type IsoDate, minutesOfDay } from '@drumline/units';
import { describeOneFlight } from '../flights/describe-flights.js';
import { hasLeft } from '../flights/flight-state.js';
import { projectScenario } from '../flights/project.js';
import type { Scenario, StandingFlight, StandingStop } from '../scenario.js';
import { flightCard } from '../week/flight-card.js';

/** A flight of today that has not left, and what it would be worth if it were the only one that gets away. */
export interface WindowFlight {
  readonly flight: string;
  readonly aircraft: string;
  /** As many of its drums as may go by today's facts. */
  readonly drums: number;
  readonly blockHours: Hours;
  /** Chance that the weather lets it reach every stop, by the odds of its half day. */
  readonly chance: number;
  /** Litre-days below minimum, and below critical once more, that it avoids. */
  readonly harmAvoided: number;
  /** By the hour flown, the chance that it goes counted in: what the order is by. */
  readonly harmPerHour: number;
  /** The first cache and day that fall below minimum when none of today's flights goes, and this one would help. */
  readonly protects: { readonly place: string; readonly date: IsoDate } | null;
}

/**
 * Today's flights that have not left, the one first whose drums avoid most harm by the hour when no other of them goes:
 * litre-days below minimum and below critical over the days ahead, times the chance of the weather, over block hours.
 * The measure is our own; no source.
 */
export function oneWindow(scenario: Scenario): readonly WindowFlight[] {
  const { firstDay, flights } = scenario;
  const open = flights.filter(({ date, state }) => date === firstDay && !hasLeft(state));
  const others = flights.filter((flight) => !open.includes(flight));
  const nothing = projectScenario(scenario, others);
  return open
    .map((flight) => windowFlight(scenario, flight, { others, nothing }))
    .sort((one, other) => other.harmPerHour - one.harmPerHour || (one.flight < other.flight ? -1 : 1));
}

interface WithoutToday {
  readonly others: readonly StandingFlight[];
  readonly nothing: readonly CacheProjection[];
}

function windowFlight(
  scenario: Scenario,
  flight: StandingFlight,
  { others, nothing }: WithoutToday,
): WindowFlight {
  const fewer = flightCard(scenario, flight.id)?.fewer?.stops;
  const stops = fewer === undefined ? flight.stops : fewerHeld(flight.stops, fewer);
  const flown = projectScenario(scenario, [...others, { ...flight, stops }]);
  const blockHours = describeOneFlight(scenario, scenario.flights, flight.id)?.blockHours ?? (0 as Hours);
  const chance = chanceOf(scenario, { ...flight, stops });
  const harmAvoided = harmOf(nothing) - harmOf(flown);
  return {
    flight: flight.id,
    aircraft: flight.aircraft,
    drums: stops.reduce((sum, { drums }) => sum + drums, 0),
    blockHours,
    chance,
    harmAvoided,
    harmPerHour: blockHours > 0 ? (harmAvoided * chance) / blockHours : 0,
    protects: firstHelped(nothing, flown),
  };
}

/** Where fewer drums may go, those on hold stay behind first. */
function fewerHeld(planned: readonly StandingStop[], fewer: readonly StandingStop[]) {
  return fewer.map(({ place, drums }) => {
    const before = planned.find((stop) => stop.place === place);
    const left = (before?.drums ?? drums) - drums;
    return { place, drums, heldDrums: Math.max(0, (before?.heldDrums ?? 0) - left) };
  });
}

function harmOf(caches: readonly CacheProjection[]): number {
  const under = (level: number, limit: number) => Math.max(0, limit - level);
  return caches.reduce(
    (sum, { usable, minimumLitres, criticalLitres }) =>
      usable
        .slice(1)
        .reduce((days, level) => days + under(level, minimumLitres) + under(level, criticalLitres), sum),
    0,
  );
}

const noon = minutesOfDay('12:00');

function chanceOf({ weather }: Scenario, { departs, stops }: StandingFlight): number {
  const isMorning = departs === undefined || minutesOfDay(departs) < noon;
  return stops.reduce((chance, { place }) => {
    const odds = weather.find((each) => each.place === place);
    return chance * (1 - ((isMorning ? odds?.morningCancel : odds?.afternoonCancel) ?? 0));
  }, 1);
}

function firstHelped(
  nothing: readonly CacheProjection[],
  flown: readonly CacheProjection[],
): WindowFlight['protects'] {
  const helped = nothing.flatMap(({ place, usable, dates, minimumLitres }, at) => {
    const day = usable.findIndex(
      (level, index) => index > 0 && level < minimumLitres && flown[at]!.usable[index]! > level,
    );
    return day < 1 ? [] : [{ place, date: dates[day - 1]! }];
  });
  return (
    helped.toSorted((one, other) => (one.date < other.date ? -1 : one.date > other.date ? 1 : 0))[0] ?? null
  );
}
