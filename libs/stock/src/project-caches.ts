import { type IsoDate, type Litres, litres } from '@drumline/units';
import { averageDraw, daysOfCover } from './days-of-cover.js';
import type { Cache, Draw } from './drum.js';
import { openingStock, type StockPicture } from './opening-stock.js';
import type { CacheProjection } from './projection.js';
import { ageOut, drawAndClose, fullDrums, openSite, putDown, type Site, slingOut, startDay } from './site.js';
import { litresIn } from './standing-drum.js';

/** Stock today and everything that is known to move it. Draws, landings and slings on other dates are left out. */
export interface StockOutlook {
  readonly picture: StockPicture;
  readonly caches: readonly Cache[];
  /** The days of the plan, in order; at least one. */
  readonly dates: readonly IsoDate[];
  /** Litres in a full drum. */
  readonly fillLitres: Litres;
  readonly draws: readonly Draw[];
  readonly landings: readonly Landing[];
  readonly slings: readonly DrumMove[];
}

/** Full drums set down at a place by an aeroplane. */
export interface Landing {
  readonly date: IsoDate;
  readonly place: string;
  readonly litres: Litres;
  /** Null: filled fresh, fit throughout the plan. */
  readonly retestDue: IsoDate | null;
  /** On hold: they stand there and may not be used; absent: fit. */
  readonly held?: true;
}

/** Sealed drums carried from one place to another on a day. */
export interface DrumMove {
  readonly date: IsoDate;
  readonly from: string;
  readonly to: string;
  readonly drums: number;
}

/** What a sling takes along, where its place has too little: fewer drums than planned, or none. */
export interface SlingLoad {
  readonly drums: number;
  readonly litres: Litres;
}

/** The levels, and the load of every sling on the days of the plan. */
export interface StockCourse {
  readonly caches: readonly CacheProjection[];
  readonly slingLoads: ReadonlyMap<DrumMove, SlingLoad>;
}

type Sites = ReadonlyMap<string, Site>;

/** The levels of `stockCourse` alone. */
export const projectCaches = (outlook: StockOutlook): readonly CacheProjection[] =>
  stockCourse(outlook).caches;

/**
 * Levels of every given cache, day by day, in the order given (conventions, "Order of a day", "Book projection").
 * A sling takes sealed fit drums whether or not that leaves the reserve whole, and only as many as stand there and are on
 * the level (conventions, "Slings"); they keep their retest dates. Drums slung from a place that is not among the caches
 * arrive full and fresh. Litres.
 */
export function stockCourse(outlook: StockOutlook): StockCourse {
  const { dates, fillLitres } = outlook;
  const sites = openSites(outlook);
  const slingLoads = new Map<DrumMove, SlingLoad>();
  const movements = movementsByDay(outlook);
  dates.forEach((day, index) => {
    const today = movements.get(day);
    for (const site of sites.values()) startDay(site);
    for (const landing of today?.landings ?? []) land(sites, landing, fillLitres);
    for (const move of today?.slings ?? []) slingLoads.set(move, sling(sites, move, fillLitres));
    for (const site of sites.values()) {
      if (index > 0) ageOut(site, day, dates[index - 1]!, index);
      drawAndClose(site, today?.asked.get(site.cache.place) ?? litres(0), day);
    }
  });
  return { caches: [...sites.values()].map((site) => asProjection(site, outlook)), slingLoads };
}

function openSites({ picture, caches, dates }: StockOutlook): Sites {
  const opening = dates[0]!;
  const stocks = openingStock(
    caches.map((cache) => cache.place),
    picture,
    opening,
  );
  return new Map(caches.map((cache) => [cache.place, openSite(cache, stocks.get(cache.place)!, opening)]));
}

interface Movements {
  readonly landings: Landing[];
  readonly slings: DrumMove[];
  readonly asked: Map<string, Litres>;
}

function movementsByDay({ dates, draws, landings, slings }: StockOutlook): ReadonlyMap<IsoDate, Movements> {
  const days = new Map<IsoDate, Movements>(
    dates.map((day) => [day, { landings: [], slings: [], asked: new Map() }]),
  );
  for (const landing of landings) days.get(landing.date)?.landings.push(landing);
  for (const move of slings) days.get(move.date)?.slings.push(move);
  for (const { date, place, litres: more } of draws) {
    const asked = days.get(date)?.asked;
    asked?.set(place, litres((asked.get(place) ?? 0) + more));
  }
  return days;
}

function land(sites: Sites, landing: Landing, fill: Litres): void {
  const { date, place, litres, retestDue, held = false } = landing;
  const site = sites.get(place);
  if (site === undefined) return;
  const drums = fullDrums(litres, fill, { retestDue, name: `landed ${date}` });
  putDown(site, held ? drums.map((drum) => ({ ...drum, held })) : drums, 'landed');
}

function sling(sites: Sites, { date, from, to, drums }: DrumMove, fill: Litres): SlingLoad {
  const source = sites.get(from);
  const target = sites.get(to);
  const moved = source
    ? slingOut(source, drums, date)
    : fullDrums(litres(drums * fill), fill, { retestDue: null, name: `slung ${date}` });
  if (target) putDown(target, moved, 'slungIn');
  return { drums: moved.length, litres: litresIn(moved) };
}

function asProjection({ cache, days, agedOut }: Site, outlook: StockOutlook): CacheProjection {
  const by = (figure: Exclude<keyof (typeof days)[number], 'slingShortDrums'>) =>
    days.map((day) => litres(day[figure]));
  const usable = by('usable');
  const mean = averageDraw(by('drawn').slice(1));
  return {
    place: cache.place,
    dates: outlook.dates,
    book: by('book'),
    usable,
    standing: by('standing'),
    landed: by('landed'),
    slungIn: by('slungIn'),
    slungOut: by('slungOut'),
    drawn: by('drawn'),
    unmet: by('unmet'),
    slingShortDrums: days.map((day) => day.slingShortDrums),
    pastRetest: by('pastRetest'),
    agedOut,
    minimumLitres: cache.minimumLitres,
    criticalLitres: cache.criticalLitres,
    reserveLitres: cache.medevacReserveLitres,
    capacityLitres: litres(cache.capacityDrums * outlook.fillLitres),
    belowMinimumDay: firstDay(usable, (level) => level < cache.minimumLitres),
    belowCriticalDay: firstDay(usable, (level) => level < cache.criticalLitres),
    runOutDay: firstDay(usable, (level) => level <= 0),
    daysOfCover: daysOfCover(usable[0]!, mean),
  };
}

function firstDay(levels: readonly Litres[], short: (level: Litres) => boolean): number | null {
  const day = levels.findIndex(short);
  return day < 0 ? null : day;
}
