import type { Cache } from '@drumline/stock';

/** Changes that one person of the right role could make alone, and may not. */
export const isForTwo = (kind: string, before: unknown, after: unknown): boolean =>
  kind === 'caches' && before !== null && after !== null && isBelowCritical(before as Cache, after as Cache);

/** Below the critical level in force, nobody lowers a level alone. */
const isBelowCritical = ({ criticalLitres }: Cache, after: Cache): boolean =>
  Math.min(after.minimumLitres, after.criticalLitres) < criticalLitres;
