import type { Level } from '../../../ui/marks.js';
import { figure } from '../../../ui/qty.js';
import type { Lowest } from './differences-read.js';

/** The level at which a cache of the proposed plan is lowest. */
export const levelOf = (
  { minimumLitres, criticalLitres }: Pick<Lowest, 'minimumLitres' | 'criticalLitres'>,
  litres: number,
): Level & ('above' | 'below' | 'critical') => {
  if (litres < criticalLitres) return 'critical';
  return litres < minimumLitres ? 'below' : 'above';
};

/** Below nothing is what could not be drawn. */
export const lowestWords = (litres: number): string => (litres < 0 ? 'runs out' : `${figure(litres)} L`);

/** Caches that only flights not offered yet keep above minimum, and how low they are without those; null: there are none. */
export const keptByIdeasWords = (lowest: readonly Lowest[]): string | null => {
  const kept = lowest.filter(
    (cache) =>
      levelOf(cache, cache.afterLitres) !== 'above' &&
      levelOf(cache, cache.withIdeas.afterLitres) === 'above',
  );
  if (kept.length === 0) return null;
  const [first, ...more] = kept.map(({ place, afterLitres }) => [place, lowestWords(afterLitres)] as const);
  const others = more.map(([place, words]) => `, ${place} (${words})`).join('');
  return `Kept by ideas only, not offered yet: ${first![0]} (${first![1]} without them)${others}.`;
};
