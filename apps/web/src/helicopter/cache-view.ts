import {
  type Cache,
  type DrumToOpen,
  type OpeningStock,
  openingStock,
  orderOfUse,
  projectCaches,
} from '@drumline/stock';
import { type IsoDate, type Litres, litres } from '@drumline/units';
import type { PlacesNow } from './places-now.js';

export type Level = 'enough' | 'below minimum' | 'below critical';

/** A cache as its page shows it. */
export interface CacheView {
  readonly place: string;
  readonly name: string;
  readonly stock: OpeningStock;
  /** Null: no levels are set for it. */
  readonly levels: Cache | null;
  readonly level: Level | null;
  /** What routine draws may take. */
  readonly drawableLitres: Litres;
  readonly fit: readonly DrumToOpen[];
  readonly notFit: readonly DrumToOpen[];
  /** First days that end below a level, approved flights counted; null: no level is set. */
  readonly ahead: FallsAhead | null;
}

/** Null: no day ahead ends below it. */
export interface FallsAhead {
  readonly belowMinimumOn: IsoDate | null;
  readonly belowCriticalOn: IsoDate | null;
}

export const cacheView = (now: PlacesNow, place: string): CacheView => {
  const { places, outlook, today } = now;
  const stock = openingStock([place], outlook.picture, today).get(place)!;
  const levels = outlook.caches.find((cache) => cache.place === place) ?? null;
  const drums = orderOfUse(place, outlook.picture, today);
  return {
    place,
    name: places.places.find(({ code }) => code === place)?.name ?? place,
    stock,
    levels,
    level: levels === null ? null : levelOf(stock.usableLitres, levels),
    drawableLitres: litres(Math.max(0, stock.usableLitres - (levels?.medevacReserveLitres ?? 0))),
    fit: drums.filter(({ fitness }) => fitness === 'fit'),
    notFit: drums.filter(({ fitness }) => fitness !== 'fit'),
    ahead: levels === null ? null : fallsAhead(now, levels),
  };
};

const levelOf = (usable: Litres, { minimumLitres, criticalLitres }: Cache): Level =>
  usable < criticalLitres ? 'below critical' : usable < minimumLitres ? 'below minimum' : 'enough';

const fallsAhead = ({ outlook }: PlacesNow, levels: Cache): FallsAhead => {
  const ahead = projectCaches(outlook).find(({ place }) => place === levels.place);
  const firstBelow = (limit: Litres): IsoDate | null => {
    const day = ahead?.usable.findIndex((level, index) => index > 0 && level < limit) ?? -1;
    return day < 1 ? null : ahead!.dates[day - 1]!;
  };
  return {
    belowMinimumOn: firstBelow(levels.minimumLitres),
    belowCriticalOn: firstBelow(levels.criticalLitres),
  };
};

/** Places of this helicopter's work first, in the order of their days; then every other cache. */
export const placesInOrder = ({ places, outlook }: PlacesNow): readonly string[] => {
  const work = [
    ...places.tasks.map(({ date, place }) => ({ date, place })),
    ...places.slings.flatMap(({ date, from, to }) => [
      { date, place: from },
      { date, place: to },
    ]),
  ].toSorted((one, other) => one.date.localeCompare(other.date));
  return [...new Set([...work.map(({ place }) => place), ...outlook.caches.map(({ place }) => place)])];
};

/** Programme of today's work here, else of today's work elsewhere; null: this helicopter has none today. */
export const programmeOfTheDay = ({ places, today }: PlacesNow, place: string): string | null => {
  const tasks = places.tasks.filter(({ date }) => date === today);
  return (tasks.find((task) => task.place === place) ?? tasks[0])?.programme ?? null;
};

/** Litres of today's tasks of a programme at a place that nobody has drawn yet: base's count, and this phone's since. */
export const leftToDraw = (
  { outlook, today }: PlacesNow,
  { programme, place }: { readonly programme: string; readonly place: string },
): Litres =>
  litres(
    outlook.draws
      .filter((draw) => draw.date === today && draw.place === place && draw.for === programme)
      .reduce((sum, draw) => sum + draw.litres, 0),
  );
