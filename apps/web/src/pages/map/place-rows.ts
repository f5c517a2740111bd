import { ageInWords, figure, inWords, isOldCount, type Level, stockInWords } from '../../ui/index.js';
import type { Cache, Outlook, Place } from './map-read.js';

/** Filled and sealed drums at a base: fit for use, and those that stand there and may not be used. */
export interface FilledDrums {
  readonly usable: number;
  readonly held: number;
  readonly pastRetest: number;
}

/** A place as mark, label and line of the table. */
export interface PlaceRow {
  readonly place: Place;
  /** Null: no cache is kept there, as at most bases. */
  readonly cache: Cache | null;
  readonly level: Level | null;
  /** Usable at the end of the day, or now; undefined without a cache. */
  readonly litres: number | undefined;
  /** "2,145 L, above minimum", "14 drums fit, 10 held"; "2,145 L ?": litres of a flight that needs a decision are in it. */
  readonly words: string;
  /** The same where there is little room. */
  readonly short: string;
}

interface At {
  readonly outlook: Outlook;
  /** Filled drums by place. */
  readonly filled: ReadonlyMap<string, FilledDrums>;
  /** Index of the figures: 0 is now. */
  readonly index: number;
}

/** From north to south: the order of the table and of the arrows. */
export const placeRows = (places: readonly Place[], { outlook, filled, index }: At): readonly PlaceRow[] => {
  const caches = new Map(outlook.items.map((cache) => [cache.place, cache]));
  return places
    .toSorted((one, other) => other.latitudeDeg - one.latitudeDeg || one.code.localeCompare(other.code))
    .map((place) => {
      const cache = caches.get(place.code) ?? null;
      if (cache === null) return withoutCache(place, filled.get(place.code));
      return { place, cache, ...levelAt(cache, { index, until: outlook.dates[index - 1] }) };
    });
};

const withoutCache = (place: Place, drums: FilledDrums | undefined): PlaceRow => {
  const words = drums === undefined ? '' : filledInWords(drums);
  return { place, cache: null, level: null, litres: undefined, words, short: words };
};

/** "24 drums fit", "14 drums fit, 10 held": what may not be used never stands in the first figure. */
export const filledInWords = ({ usable, held, pastRetest }: FilledDrums): string => {
  const off = [
    ...(held > 0 ? [`${figure(held)} held`] : []),
    ...(pastRetest > 0 ? [`${figure(pastRetest)} past retest`] : []),
  ];
  if (usable === 0 && off.length === 0) return '';
  return [`${inWords(usable, 'drums')} fit`, ...off].join(', ');
};

/** Index of the figures at the end of a day; 0, now, for a day that they do not reach. */
export const indexOf = ({ dates }: Pick<Outlook, 'dates'>, day: string): number => dates.indexOf(day) + 1;

interface Day {
  readonly index: number;
  /** Undefined: now. */
  readonly until: string | undefined;
}

const levelAt = (cache: Cache, { index, until }: Day): Omit<PlaceRow, 'place' | 'cache'> => {
  const litres = cache.projections.offered.usableLitres[index] ?? cache.stock.usableLitres;
  const [level, said, short] = levelOf(cache, litres);
  const amount = `${stockInWords(litres)}${isAsked(cache, until) ? ' ?' : ''}`;
  return { level, litres, words: `${amount}, ${said}`, short: short === '' ? amount : `${amount}, ${short}` };
};

/** It has litres of a flight that somebody has still to decide on, landed there or slung on from where they land. */
const isAsked = ({ place, deliveries, slings }: Cache, until: string | undefined): boolean =>
  until !== undefined &&
  (deliveries.some(
    ({ date, litres, needsDecision }) => needsDecision !== null && litres > 0 && date <= until,
  ) ||
    slings.some(({ to, date, inQuestion }) => to === place && inQuestion.litres > 0 && date <= until));

const levelOf = (cache: Cache, litres: number): readonly [Level, words: string, short: string] => {
  const { lastCount } = cache.stock;
  if (litres < cache.criticalLitres) return ['critical', 'below critical', 'critical'];
  if (litres < cache.minimumLitres) return ['below', 'below minimum', 'below'];
  if (lastCount !== null && isOldCount(lastCount.ageHours))
    return ['unknown', `count ${ageInWords(lastCount.ageHours)} old`, 'old count'];
  return ['above', litres > cache.minimumLitres ? 'above minimum' : 'at minimum', ''];
};

/** "strip, class 2". */
export const kindInWords = ({ kind, stripClass }: Place): string =>
  stripClass === null ? kind : `${kind}, class ${stripClass}`;

/** "one way, from 200°"; the side is the operator's to say. */
export const approachInWords = ({ runway }: Place): string | null => {
  if (runway === null || !runway.oneWay) return null;
  return runway.approachFromDeg === undefined
    ? 'one way; the side is not written down'
    : `one way, from ${String(Math.round(runway.approachFromDeg)).padStart(3, '0')}° true`;
};

/** What the places that are short say, for whoever hears the chart. */
export const shortInWords = (rows: readonly PlaceRow[]): string => {
  const short = rows.filter(({ level }) => level === 'critical' || level === 'below');
  return short.length === 0
    ? 'No cache is below its minimum.'
    : `${short.map(({ place, words }) => `${place.code} ${words}`).join('; ')}.`;
};
