import type { ProjectionsAnswer } from '@drumline/contract';
import type { CacheBelowCritical } from './morning-answer.js';

/** Caches that fall below critical within so many days although every approved and offered flight flies; first day first. */
export const cachesBelowCritical = (
  { items, dates }: Pick<ProjectionsAnswer, 'items' | 'dates'>,
  offeredDays: number,
): readonly CacheBelowCritical[] =>
  items
    .flatMap(({ place, criticalLitres, projections: { offered } }) => {
      const day = offered.belowCriticalDay;
      if (day === null || day > offeredDays) return [];
      // Index 0 is now, 1 the end of the first day.
      return [{ place, date: dates[day - 1] ?? null, litres: offered.usableLitres[day]!, criticalLitres }];
    })
    .toSorted((one, other) => (one.date ?? '').localeCompare(other.date ?? ''));
