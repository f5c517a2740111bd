import { isOldCount } from '../../ui/index.js';
import type { Cache, Place } from './caches-read.js';

/** A cache with what its place is called. */
export interface NamedCache {
  readonly cache: Cache;
  readonly name: string;
  readonly kind: Place['kind'];
  readonly stripClass: number | null;
}

export const sorts = ['first', 'cover', 'name', 'room', 'count'] as const;
export type Sort = (typeof sorts)[number];

export const onlys = ['all', 'below', 'old'] as const;
export type Only = (typeof onlys)[number];

export interface Choices {
  readonly text: string;
  readonly sort: Sort;
  readonly only: Only;
  readonly kind: 'all' | Place['kind'];
}

export const named = (caches: readonly Cache[], places: readonly Place[]): readonly NamedCache[] => {
  const byCode = new Map(places.map((place) => [place.code, place]));
  return caches.map((cache) => {
    const place = byCode.get(cache.place);
    return {
      cache,
      name: place?.name ?? cache.place,
      kind: place?.kind ?? 'strip',
      stripClass: place?.stripClass ?? null,
    };
  });
};

/** Never counted, or longer ago than a week. */
export const isCountOld = ({ stock: { lastCount } }: Cache): boolean =>
  lastCount === null || isOldCount(lastCount.ageHours);

/** With every flight that is approved or offered. */
export const isBelowAhead = ({ projections: { offered } }: Cache): boolean =>
  offered.belowMinimumDay !== null;

/** The chosen caches in the chosen order; equals stay in the order of the territory. */
export const chosen = (caches: readonly NamedCache[], choices: Choices): readonly NamedCache[] => {
  const text = choices.text.trim().toLowerCase();
  const found = caches.filter(
    ({ cache, name, kind }) =>
      (text === '' || cache.place.toLowerCase().includes(text) || name.toLowerCase().includes(text)) &&
      (choices.kind === 'all' || kind === choices.kind) &&
      (choices.only !== 'below' || isBelowAhead(cache)) &&
      (choices.only !== 'old' || isCountOld(cache)),
  );
  if (choices.sort === 'name')
    return found.toSorted((one, other) => one.cache.place.localeCompare(other.cache.place));
  const order = orders[choices.sort];
  return found.toSorted((one, other) => byFirst(order(one.cache), order(other.cache)));
};

/** By the first figure that differs. */
const byFirst = (one: readonly number[], other: readonly number[]): number => {
  const at = one.findIndex((figure, index) => figure !== other[index]);
  return at < 0 ? 0 : one[at]! - other[at]!;
};

const never = Number.MAX_VALUE;

/** What nothing is drawn from comes last, what was never counted first. */
const orders = {
  first: ({ projections: { offered }, daysOfCover }: Cache) => [
    offered.belowCriticalDay ?? never,
    offered.belowMinimumDay ?? never,
    daysOfCover ?? never,
  ],
  cover: ({ daysOfCover }: Cache) => [daysOfCover ?? never],
  room: ({ projections, minimumLitres }: Cache) => [projections.offered.lowest.litres - minimumLitres],
  count: ({ stock: { lastCount } }: Cache) => [lastCount === null ? -never : -lastCount.ageHours],
} as const;
