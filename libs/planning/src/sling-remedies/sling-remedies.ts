import { type CacheProjection, projectCaches, type StockOutlook } from '@drumline/stock';
import { type Hours, type IsoDate, type Litres, litres, print } from '@drumline/units';
import type { FlightToCome } from '../cache-outlooks.js';
import { outlookAround, withLandings } from '../flights/project.js';
import { stockOutlook } from '../problem/stock-outlook.js';
import type { Scenario, SlingMove } from '../scenario.js';
import { hoursOn, type SlingWork, slingWork, whyNotThatDay } from './helicopter-day.js';

/** A cache that falls below its minimum before a sling that feeds it has come. */
export interface SlingRemedy {
  readonly place: string;
  /** The first day that ends below the minimum, and what is usable that evening. */
  readonly shortOn: IsoDate;
  readonly shortLitres: Litres;
  readonly minimumLitres: Litres;
  readonly criticalLitres: Litres;
  /** As it is planned. */
  readonly sling: SlingMove;
  /** Null: no earlier day is better. */
  readonly move: SlingMoved | null;
  /** Days between that one and the sling's own that will not do, the sling's own first. */
  readonly notOn: readonly { readonly date: IsoDate; readonly why: string }[];
}

/** The sling on an earlier day, and what that does between the two days. */
export interface SlingMoved {
  readonly date: IsoDate;
  /** Whether the cache then ends any day below its minimum. */
  readonly effect: 'removes' | 'lessens';
  readonly fed: LowestLevels;
  readonly source: LowestLevels;
  readonly work: SlingWork;
  /** Of the helicopter on its new day and on the day that it leaves, the sling counted in. */
  readonly hoursThen: Hours;
  readonly hoursOwnDay: Hours;
}

/** The lowest evening of a cache among those that differ. */
export interface LowestLevels {
  readonly place: string;
  readonly minimumLitres: Litres;
  readonly before: LowestLevel;
  readonly after: LowestLevel;
}

interface LowestLevel {
  readonly date: IsoDate;
  readonly litres: Litres;
}

/**
 * For every cache that ends a day below its minimum before a sling that feeds it: the smallest change of that sling's day
 * that removes the shortage or, where none does, the one that lessens it most. All flights count, offered ones too. A
 * day will do where the helicopter is free and near and keeps to its hours, the drums stand at the source, the source
 * stays above its minimum, and the pad has room. Litres, hours; caches in the order of the scenario.
 */
export function slingRemedies(scenario: Scenario, flights: readonly FlightToCome[]): readonly SlingRemedy[] {
  if (scenario.slings.length === 0) return [];
  const outlook = withLandings(scenario, stockOutlook(scenario), flights);
  return projectCaches(outlook).flatMap((cache) => {
    const day = cache.usable.findIndex((level, index) => index > 0 && level < cache.minimumLitres);
    if (day < 0) return [];
    const shortOn = cache.dates[day - 1]!;
    const sling = scenario.slings
      .filter(({ to, date }) => to === cache.place && date > shortOn)
      .toSorted((one, other) => (one.date < other.date ? -1 : 1))[0];
    if (sling === undefined) return [];
    const { place, minimumLitres, criticalLitres } = cache;
    return [
      {
        ...{ place, shortOn, shortLitres: cache.usable[day]!, minimumLitres, criticalLitres, sling },
        ...bestMove({ scenario, sling, outlook: outlookAround(outlook, [sling.from, sling.to]) }),
      },
    ];
  });
}

/** One sling, among the caches that it can touch. */
interface Asked {
  readonly scenario: Scenario;
  readonly sling: SlingMove;
  readonly outlook: StockOutlook;
}

function bestMove(asked: Asked): Pick<SlingRemedy, 'move' | 'notOn'> {
  const { scenario, sling, outlook } = asked;
  const before = projectCaches(outlook);
  const notOn: { readonly date: IsoDate; readonly why: string }[] = [];
  let lessening: { readonly move: SlingMoved; readonly missing: number; readonly tried: number } | null =
    null;
  for (const date of outlook.dates.filter((day) => day < sling.date).toReversed()) {
    const then = moved(scenario, sling, date);
    const after = projectCaches({ ...outlook, slings: then.scenario.slings });
    const why = whyNotThatDay(then.sling, then.scenario) ?? whyNotSo({ ...asked, before, after });
    if (why !== null) {
      notOn.push({ date, why });
      continue;
    }
    const missing = missingAt(sling.to, after);
    const move = asMoved({ ...asked, before, after }, then);
    if (missing === 0) return { move, notOn };
    if (lessening === null || missing < lessening.missing) lessening = { move, missing, tried: notOn.length };
  }
  return lessening === null
    ? { move: null, notOn }
    : { move: lessening.move, notOn: notOn.slice(0, lessening.tried) };
}

interface Then {
  readonly scenario: Scenario;
  readonly sling: SlingMove;
}

const moved = (scenario: Scenario, sling: SlingMove, date: IsoDate): Then => {
  const then = { ...sling, date };
  const slings = scenario.slings.map((each) => (each === sling ? then : each));
  return { scenario: { ...scenario, slings }, sling: then };
};

interface Compared extends Asked {
  readonly before: readonly CacheProjection[];
  readonly after: readonly CacheProjection[];
}

/** What the stock has against a day; null: nothing. */
function whyNotSo({ sling: { from, to }, before, after }: Compared): string | null {
  const [source, pad] = [levelsOf(from, after), levelsOf(to, after)];
  if (source === undefined || pad === undefined) return 'its stock is not kept as a cache';
  if (sum(source.slingShortDrums) > sum(levelsOf(from, before)!.slingShortDrums))
    return `too few sealed drums that are fit stand at ${from} by then`;
  const lowest = lowestOf(source, differing(levelsOf(from, before)!, source));
  if (lowest !== null && lowest.litres < source.minimumLitres)
    return lowest.litres < 0
      ? `${from} would run out, ${print(litres(-lowest.litres), 'L')} short`
      : `${from} would fall to ${print(lowest.litres, 'L')}, minimum ${print(source.minimumLitres, 'L')}`;
  if (isOverfull(pad) && !isOverfull(levelsOf(to, before)!)) return `${to} has no room for them by then`;
  if (missingAt(to, after) >= missingAt(to, before)) return `it would not lessen what ${to} is short of`;
  return null;
}

function asMoved({ scenario, sling, before, after }: Compared, then: Then): SlingMoved {
  const lowest = (place: string): LowestLevels => {
    const [was, is] = [levelsOf(place, before)!, levelsOf(place, after)!];
    const days = differing(was, is);
    return {
      place,
      minimumLitres: is.minimumLitres,
      before: lowestOf(was, days)!,
      after: lowestOf(is, days)!,
    };
  };
  return {
    date: then.sling.date,
    effect: missingAt(sling.to, after) === 0 ? 'removes' : 'lessens',
    fed: lowest(sling.to),
    source: lowest(sling.from),
    work: slingWork(sling, scenario),
    hoursThen: hoursOn(then.sling.date, sling.helicopter, then.scenario),
    hoursOwnDay: hoursOn(sling.date, sling.helicopter, scenario),
  };
}

const levelsOf = (place: string, projections: readonly CacheProjection[]): CacheProjection | undefined =>
  projections.find((each) => each.place === place);

/** Litres short of the minimum, evening by evening, added up. */
const missingAt = (place: string, projections: readonly CacheProjection[]): number => {
  const { usable, minimumLitres } = levelsOf(place, projections)!;
  return sum(usable.slice(1).map((level) => Math.max(0, minimumLitres - level)));
};

const isOverfull = ({ standing, capacityLitres }: CacheProjection): boolean =>
  standing.some((level) => level > capacityLitres);

/** Evenings on which the levels are not the same; index 1 is the first day. */
const differing = (was: CacheProjection, is: CacheProjection): readonly number[] =>
  is.usable.flatMap((level, index) => (index > 0 && level !== was.usable[index] ? [index] : []));

const lowestOf = ({ usable, dates }: CacheProjection, days: readonly number[]): LowestLevel | null => {
  if (days.length === 0) return null;
  const day = days.reduce((lowest, each) => (usable[each]! < usable[lowest]! ? each : lowest));
  return { date: dates[day - 1]!, litres: litres(usable[day]!) };
};

const sum = (figures: readonly number[]): number => figures.reduce((all, each) => all + each, 0);
