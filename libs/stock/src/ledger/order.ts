import type { IsoInstant } from '@drumline/units';
import type { Movement, MovementKind } from './movement.js';

/**
 * Order in which movements happened. Of one moment: the later written counts as the later; written at one moment too,
 * as on paper that is written to the minute, a drum's life gives the order, and for the rest the id.
 */
export function byHappened(a: Movement, b: Movement): number {
  return (
    compareInstants(a.happenedAt, b.happenedAt) ||
    compareInstants(a.writtenAt, b.writtenAt) ||
    placeInLife[a.kind] - placeInLife[b.kind] ||
    compareText(a.id, b.id)
  );
}

/**
 * Where a kind stands in a drum's life: it comes, may be used or not, is flown out and comes off, is used up, is gone.
 * A hold follows a release, and both come before any use: in doubt the drum is held, and a use of it is raised.
 */
const placeInLife: Readonly<Record<MovementKind, number>> = {
  joined: 0,
  corrected: 0,
  received: 1,
  found: 1,
  filled: 2,
  weighed: 3,
  counted: 3,
  'retest passed': 3,
  released: 4,
  held: 5,
  condemned: 5,
  loaded: 6,
  'left at': 7,
  'brought home': 8,
  slung: 9,
  opened: 10,
  dipped: 11,
  drawn: 12,
  transferred: 12,
  spilled: 12,
  emptied: 13,
  lost: 14,
};

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
