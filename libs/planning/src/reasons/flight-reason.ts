import { type CacheProjection, projectCaches, type StockOutlook } from '@drumline/stock';
import type { IsoDate } from '@drumline/units';
import type { FlightReason, ShortLevel } from '../flight-plan.js';
import { outlookAround, withLandings } from '../flights/project.js';
import { drumsOf } from '../problem/standing-flights.js';
import type { Scenario, StandingFlight } from '../scenario.js';
import { dayWords, drumWords, litreWords } from '../wording.js';

/** What the reasons of a plan's flights are found from. */
export interface ReasonPicture {
  readonly scenario: Scenario;
  /** Every draw and sling, no landing. */
  readonly outlook: StockOutlook;
  readonly flights: readonly StandingFlight[];
  /** Levels with every flight flown. */
  readonly caches: readonly CacheProjection[];
  /** What each cache is to hold at the end, by place. */
  readonly endTargets: ReadonlyMap<string, number>;
}

/**
 * Why a flight flies: it is taken out of the plan and the levels are worked out again. The first cache and day that
 * falls short without it is what it protects.
 */
export function flightReason(picture: ReasonPicture, flight: StandingFlight): FlightReason {
  if (drumsOf(flight) === 0)
    return { protects: null, ifDeclined: 'It carries no drums.', text: 'It flies anyway.' };
  const without = levelsWithout(picture, flight);
  const first = firstFall(picture, without);
  if (!first) return noShortage(flight, without);
  const { place, date, level } = first;
  return {
    protects: { place, date, level },
    ifDeclined: [shortWords(first), ...laterWords(picture, without, first)].join(' '),
    text: protectsWords(first),
  };
}

/** One cache with the flight and without it. */
interface Compared {
  readonly withIt: CacheProjection;
  readonly without: CacheProjection;
}

interface Fall {
  readonly place: string;
  readonly day: number;
  readonly date: IsoDate;
  readonly level: ShortLevel;
  readonly litres: number;
  readonly withLitres: number;
  readonly limit: number;
  /** It is below that level with the flight as well, only less so. */
  readonly already: boolean;
}

function levelsWithout(
  { scenario, outlook, flights, caches }: ReasonPicture,
  flight: StandingFlight,
): readonly Compared[] {
  const others = withLandings(
    scenario,
    outlook,
    flights.filter((other) => other.id !== flight.id),
  );
  const around = outlookAround(
    others,
    flight.stops.map(({ place }) => place),
  );
  const byPlace = new Map(caches.map((cache) => [cache.place, cache]));
  return projectCaches(around).map((without) => ({ withIt: byPlace.get(without.place)!, without }));
}

/** The earliest fall of any cache, and of those on one day the worst. */
function firstFall(picture: ReasonPicture, compared: readonly Compared[]): Fall | null {
  const falls = compared.flatMap((cache) => fallsOf(picture, cache));
  return falls.filter((fall) => !fall.already).sort(byDayThenHarm)[0] ?? falls.sort(byDayThenHarm)[0] ?? null;
}

const harm: readonly ShortLevel[] = ['run out', 'below critical', 'below minimum', 'short of the end target'];
const byDayThenHarm = (one: Fall, other: Fall): number =>
  one.day - other.day || harm.indexOf(one.level) - harm.indexOf(other.level);

/** The first day of each level below which the cache falls without the flight. */
function fallsOf({ endTargets }: ReasonPicture, { withIt, without }: Compared): readonly Fall[] {
  const last = without.usable.length - 1;
  const fall = (level: ShortLevel, limit: number, from: number): readonly Fall[] => {
    const isShort = (litres: number): boolean => (level === 'run out' ? litres <= limit : litres < limit);
    const days = [...without.usable.keys()].filter((day) => day >= from && isShort(without.usable[day]!));
    const short = days.filter((day) => without.usable[day]! < withIt.usable[day]!);
    const day = short.find((each) => !isShort(withIt.usable[each]!)) ?? short[0];
    if (day === undefined) return [];
    return [
      {
        place: without.place,
        day,
        date: without.dates[day - 1]!,
        level,
        litres: without.usable[day]!,
        withLitres: withIt.usable[day]!,
        limit,
        already: isShort(withIt.usable[day]!),
      },
    ];
  };
  return [
    // A strip that need hold nothing may stand empty.
    ...(without.criticalLitres > 0 ? fall('run out', 0, 1) : []),
    ...fall('below critical', without.criticalLitres, 1),
    ...fall('below minimum', without.minimumLitres, 1),
    ...fall('short of the end target', endTargets.get(without.place) ?? 0, last),
  ];
}

function shortWords(fall: Fall): string {
  const { place, level, litres, withLitres, limit } = fall;
  const day = dayWords(fall.date);
  if (fall.already)
    return `${place} is ${level} on ${day} anyway: ${litreWords(litres)} without it, ${litreWords(withLitres)} with it, of ${litreWords(limit)}.`;
  switch (level) {
    case 'run out':
      return `Without it ${place} runs out on ${day}: ${litreWords(litres)}.`;
    case 'short of the end target':
      return `Without it ${place} ends short of its target on ${day}: ${litreWords(litres)} of ${litreWords(limit)}.`;
    case 'below critical':
    case 'below minimum':
      return `Without it ${place} is ${level} on ${day}: ${litreWords(litres)} of ${litreWords(limit)}.`;
  }
}

/** A worse fall on a later day, of the same cache or another. */
function laterWords(picture: ReasonPicture, compared: readonly Compared[], first: Fall): readonly string[] {
  const worse = compared
    .flatMap((cache) => fallsOf(picture, cache))
    .filter((fall) => !fall.already && harm.indexOf(fall.level) < harm.indexOf(first.level))
    .sort(byDayThenHarm)[0];
  return worse ? [shortWords(worse)] : [];
}

function protectsWords({ place, level, date, withLitres, litres, limit, already }: Fall): string {
  const day = dayWords(date);
  const figures = `${litreWords(withLitres)} with it, ${litreWords(litres)} without`;
  if (already) return `Lessens the shortage of ${place} on ${day}: ${figures}, of ${litreWords(limit)}.`;
  switch (level) {
    case 'run out':
      return `Keeps ${place} from running out on ${day}: ${figures}.`;
    case 'below critical':
      return `Keeps ${place} above critical on ${day}: ${figures}, critical ${litreWords(limit)}.`;
    case 'below minimum':
      return `Keeps ${place} above minimum on ${day}: ${figures}, minimum ${litreWords(limit)}.`;
    case 'short of the end target':
      return `Brings ${place} to its end target on ${day}: ${figures}, target ${litreWords(limit)}.`;
  }
}

function noShortage(flight: StandingFlight, compared: readonly Compared[]): FlightReason {
  const changed = compared.find(({ without, withIt }) => without.usable.at(-1)! < withIt.usable.at(-1)!);
  if (!changed) {
    const text = `Moves ${drumWords(drumsOf(flight))}; no cache falls short without it.`;
    return { protects: null, ifDeclined: 'Without it no cache falls short.', text };
  }
  const { place } = changed.without;
  const end = `${place} ends at ${litreWords(changed.without.usable.at(-1)!)} instead of ${litreWords(changed.withIt.usable.at(-1)!)}`;
  return {
    protects: null,
    ifDeclined: `Without it no cache falls short; ${end}.`,
    text: `Adds stock that no cache needs by the end: without it ${end}.`,
  };
}
