import type { CacheProjection } from '@drumline/stock';
import { type Litres, litres } from '@drumline/units';

export interface LowestLevel {
  readonly litres: Litres;
  /** Day of the plan, from 1. */
  readonly day: number;
}

/**
 * The lowest level of a cache at the end of a day, and the first such day, in litres. The opening is not counted: no
 * flight can change it.
 */
export function lowestLevel({ usable }: Pick<CacheProjection, 'usable'>): LowestLevel {
  const lowest = Math.min(...usable.slice(1));
  return { litres: litres(lowest), day: usable.findIndex((level, day) => day > 0 && level === lowest) };
}
