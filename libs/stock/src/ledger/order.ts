import type { Movement } from './movement.js';

/**
 * Order in which movements happened; ties: the later written counts as the later, then the id decides. As text instants
 * do not sort (seconds are optional), so they are compared as times.
 */
export function byHappened(a: Movement, b: Movement): number {
  return (
    Date.parse(a.happenedAt) - Date.parse(b.happenedAt) ||
    Date.parse(a.writtenAt) - Date.parse(b.writtenAt) ||
    byId(a, b)
  );
}

/** Order in which movements were written down, whenever they arrived. */
export function byWritten(a: Movement, b: Movement): number {
  return Date.parse(a.writtenAt) - Date.parse(b.writtenAt) || byId(a, b);
}

function byId(a: Movement, b: Movement): number {
  if (a.id === b.id) return 0;
  return a.id < b.id ? -1 : 1;
}
