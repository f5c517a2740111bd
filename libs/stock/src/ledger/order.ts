import type { IsoInstant } from '@drumline/units';
import type { Movement } from './movement.js';

/**
 * Order in which movements happened; ties: the later written counts as the later, then the id decides.
 */
export function byHappened(a: Movement, b: Movement): number {
  return (
    compareInstants(a.happenedAt, b.happenedAt) ||
    compareInstants(a.writtenAt, b.writtenAt) ||
    compareText(a.id, b.id)
  );
}

/** Order in which movements were written down, whenever they arrived. */
export function byWritten(a: Movement, b: Movement): number {
  return compareInstants(a.writtenAt, b.writtenAt) || compareText(a.id, b.id);
}

/** Less than 0: `a` is earlier. As text instants sort only where both are written to the same part of a second. */
export function compareInstants(a: IsoInstant, b: IsoInstant): number {
  return a.length === b.length ? compareText(a, b) : Date.parse(a) - Date.parse(b);
}

/** By code points: the same order everywhere. */
export function compareText(a: string, b: string): number {
  if (a === b) return 0;
  return a < b ? -1 : 1;
}
