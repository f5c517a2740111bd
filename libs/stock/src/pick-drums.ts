import type { IsoDate } from '@drumline/units';
import { takeSealed } from './cache-stock.js';
import type { Batch, Drum } from './drum.js';
import { type StandingDrum, standingDrums } from './standing-drum.js';

/** Drums that a flight is to take from a place. */
export interface PickRequest {
  /** Flight, or flight and stop. */
  readonly id: string;
  readonly place: string;
  readonly drums: number;
  /** The day by which the drums must still be fit: when the plan would burn them. */
  readonly plannedUse: IsoDate;
}

export interface Pick {
  readonly id: string;
  readonly drums: readonly StandingDrum[];
  /** Drums that nobody has filled yet. */
  readonly toFill: number;
}

/**
 * Named drums for each request, in the order of the requests: sealed, not held, fit at planned use, the earliest
 * retest date first and the lower number on ties. No drum is given twice.
 */
export function pickDrums(
  requests: readonly PickRequest[],
  drums: readonly Drum[],
  batches: readonly Batch[],
): readonly Pick[] {
  const standing = new Map(standingDrums(drums, batches));
  return requests.map(({ id, place, drums: wanted, plannedUse }) => {
    const { left, taken } = takeSealed(
      standing.get(place) ?? [],
      { drums: wanted, litres: Number.POSITIVE_INFINITY },
      plannedUse,
    );
    standing.set(place, left);
    return { id, drums: taken, toFill: wanted - taken.length };
  });
}
