import { ageInWords, inWords, isOldCount, type Level } from '../../ui/index.js';
import type { Cache, Levels } from './caches-read.js';

/** Names the day of an index of the figures: 0 is now. */
export type DayName = (index: number) => string;

export const dayNames =
  (dates: readonly string[], day: (date: string) => string): DayName =>
  (index) =>
    index === 0 ? 'now' : day(dates[index - 1]!);

export interface LevelFound {
  readonly level: Level;
  readonly words: string;
}

/** The worst that lies ahead of a cache, in a word or three. */
export const levelAhead = (cache: Cache, dayName: DayName): LevelFound => {
  const { belowCriticalDay, belowMinimumDay } = cache.projections.offered;
  if (belowCriticalDay !== null)
    return { level: 'critical', words: `Critical, ${dayName(belowCriticalDay)}` };
  if (belowMinimumDay !== null) return { level: 'below', words: `Below, ${dayName(belowMinimumDay)}` };
  const { lastCount } = cache.stock;
  if (lastCount !== null && isOldCount(lastCount.ageHours))
    return { level: 'unknown', words: `Count ${ageInWords(lastCount.ageHours)} old` };
  return { level: 'above', words: 'Above minimum' };
};

/** "lowest 375 L Wed 16"; where it runs out: "runs out Tue 15, 1,515 L short", as no cache holds less than nothing. */
export const lowestWords = (levels: Levels, dayName: DayName): string => {
  const { litres, day } = levels.lowest;
  if (levels.runOutDay === null || litres >= 0) {
    const ahead = `lowest ${inWords(litres, 'L')} ${dayName(day)}`;
    const now = levels.usableLitres[0]!;
    return now < litres ? `${inWords(now, 'L')} now, then ${ahead}` : ahead;
  }
  return `runs out ${dayName(levels.runOutDay)}, ${inWords(-litres, 'L')} short`;
};

/** "Below minimum Tue 15, below critical Tue 15, run out Thu 17." Empty: it stays above its minimum. */
export const whatFails = (
  { belowMinimumDay, belowCriticalDay, runOutDay }: Levels,
  dayName: DayName,
): string =>
  [
    ['below minimum', belowMinimumDay] as const,
    ['below critical', belowCriticalDay] as const,
    ['run out', runOutDay] as const,
  ]
    .flatMap(([words, day]) => (day === null ? [] : [`${words} ${dayName(day)}`]))
    .join(', ');

/**
 * "Without deliveries: run out Tue 15. 10.6 days of cover: 2,200 L now at the mean draw of 14 days, 207 L a day; the draws come
 * early, so it runs out before." A mean knows nothing of which day fuel leaves: where the two differ, it is said why.
 */
export const coverWords = (cache: Cache, dayName: DayName): string => {
  const { noDeliveries } = cache.projections;
  const fails = whatFails(noDeliveries, dayName);
  const without =
    fails === '' ? 'Without deliveries it stays above its minimum.' : `Without deliveries: ${fails}.`;
  const { daysOfCover } = cache;
  if (daysOfCover === null) return `${without} Nothing is drawn.`;
  const [now] = noDeliveries.usableLitres;
  const days = noDeliveries.usableLitres.length - 1;
  const mean =
    daysOfCover > 0
      ? `: ${inWords(now!, 'L')} now at the mean draw of ${inWords(days, 'days')}, ${inWords(now! / daysOfCover, 'L')} a day`
      : '';
  const early = drawsComeEarly(cache) ? '; the draws come early, so it runs out before' : '';
  return `${without} ${inWords(daysOfCover, 'days', 1)} of cover${mean}${early}.`;
};

const drawsComeEarly = ({ daysOfCover, projections: { noDeliveries } }: Cache): boolean =>
  daysOfCover !== null && noDeliveries.runOutDay !== null && noDeliveries.runOutDay < daysOfCover;

/** "68.1 days of cover"; a mean that the draws do not keep to is called one, as the cache runs out long before. */
export const coverInShort = (cache: Cache): string => {
  if (cache.daysOfCover === null) return 'no draws';
  return `${inWords(cache.daysOfCover, 'days', 1)}${drawsComeEarly(cache) ? ', mean draw' : ' of cover'}`;
};

/** What a graph shows, for whoever hears it. */
export const finding = (cache: Cache, dayName: DayName): string => {
  const { offered, noDeliveries } = cache.projections;
  const without = whatFails(noDeliveries, dayName);
  return [
    `${cache.place}: ${lowestWords(offered, dayName)}, minimum ${inWords(cache.minimumLitres, 'L')}.`,
    without === '' ? 'Without deliveries it stays above its minimum.' : `Without deliveries: ${without}.`,
  ].join(' ');
};

/** The operator's minimum against the suggested one. */
export const minimumGap = ({ minimumLitres, suggestedMinimum }: Cache): string => {
  const gap = minimumLitres - suggestedMinimum.litres;
  if (gap === 0) return 'as suggested';
  return `${inWords(Math.abs(gap), 'L')} ${gap < 0 ? 'under' : 'over'} the suggested`;
};
