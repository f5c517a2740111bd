import type { PlaceFigures } from '../../stock/figures/place-figures.js';

/** A level in words, as on the hold sheet: of a cache that has exactly its minimum, that it has no more. */
export const levelWord = ({ usableLitres, cache }: Pick<PlaceFigures, 'usableLitres' | 'cache'>): string => {
  if (cache === null) return 'no levels';
  if (cache.level !== 'enough') return cache.level;
  return usableLitres > cache.minimumLitres ? 'above minimum' : 'at minimum';
};
