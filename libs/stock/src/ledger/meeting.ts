import type { IsoInstant } from '@drumline/units';
import type { Hold } from '../drum.js';
import type { DrumLife, TransferPart } from './drum-life.js';
import type { Movement } from './movement.js';
import { raise } from './raise.js';
import type { Raised, RaisedKind } from './raised.js';

/** A movement as it meets the book: the drum before it, and what else is known of the drum. */
export interface Meeting {
  readonly number: string;
  readonly life: DrumLife;
  readonly movement: Movement;
  readonly part: TransferPart;
  /** It was received or filled at some time, before or after. */
  readonly hasOrigin: boolean;
  readonly batchHold: (batch: string, at: IsoInstant) => Hold | null;
}

/** Where a movement finds the drum; null: it says nothing of that. */
export function placeBefore(movement: Movement): string | null {
  if (movement.kind === 'slung') return movement.from;
  return 'place' in movement ? movement.place : null;
}

/** What the movement of the meeting leaves to be looked at. */
export function say(
  { number, movement }: Meeting,
  kind: RaisedKind,
  what: string,
  whatNext: string,
): Raised[] {
  const place = placeBefore(movement);
  return [
    raise(kind, [movement], {
      drum: number,
      ...(place === null ? {} : { place }),
      ...('flight' in movement ? { flight: movement.flight } : {}),
      what: `Drum ${number}: "${movement.kind}" by ${movement.by} ${what}.`,
      whatNext,
    }),
  ];
}
