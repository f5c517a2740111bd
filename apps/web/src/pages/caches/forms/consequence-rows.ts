import { inWords } from '../../../ui/index.js';
import { type DayName, whatFails } from '../cache-words.js';
import type { Consequence } from '../caches-read.js';

/** A cache that a change touches: the day on which it ends lowest, then and now. */
export interface TouchedRow {
  readonly place: string;
  /** Index of the figures, 0 is now. */
  readonly day: number;
  readonly before: number;
  readonly after: number;
  readonly words: string;
}

/**
 * For each cache the day to look at: where the change leaves it lowest or, where it lifts the cache, where it was lowest
 * before among the days that differ.
 */
export const touchedRows = ({ items }: Pick<Consequence, 'items'>, dayName: DayName): readonly TouchedRow[] =>
  items.map(({ place, before, after }) => {
    const [was, is] = [before.levels.usableLitres, after.levels.usableLitres];
    const differing = is.flatMap((litres, index) => (litres === was[index] ? [] : [index]));
    const days = differing.length === 0 ? is.map((_, index) => index) : differing;
    const day = days.reduce((lowest, index) =>
      Math.min(is[index]!, was[index]!) < Math.min(is[lowest]!, was[lowest]!) ? index : lowest,
    );
    return { place, day, before: was[day]!, after: is[day]!, words: wordsOf({ before, after }, dayName) };
  });

const wordsOf = (
  { before, after }: Pick<Consequence['items'][number], 'before' | 'after'>,
  dayName: DayName,
): string => {
  const [was, is] = [whatFails(before.levels, dayName), whatFails(after.levels, dayName)];
  const levels = `minimum ${inWords(after.minimumLitres, 'L')}, critical ${inWords(after.criticalLitres, 'L')}`;
  if (is === '')
    return was === ''
      ? `stays above its minimum (${levels}).`
      : `above its minimum (${levels}); before: ${was}.`;
  if (is === was) return `${is} (${levels}), as before the change.`;
  return was === ''
    ? `${is} (${levels}); before the change it stayed above its minimum.`
    : `${is} (${levels}); before the change already ${was}.`;
};
