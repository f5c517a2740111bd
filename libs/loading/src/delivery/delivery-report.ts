import type { SurfaceState } from '@drumline/network';
import type { ClockTime, IsoDate } from '@drumline/units';

/** What a report says of a drum; the words of the ledger. */
export type DeliveredCondition = 'sound' | 'seal broken' | 'damaged' | 'leaking';

export interface DeliveredDrum {
  readonly number: string;
  readonly condition: DeliveredCondition;
}

/** What happened to the drums of one landing. */
export interface DeliveryReport {
  readonly flight: string;
  /** Leg of the flight, from 1. */
  readonly leg: number;
  readonly place: string;
  readonly date: IsoDate;
  /** Local. */
  readonly time: ClockTime;
  readonly left: readonly DeliveredDrum[];
  readonly back: readonly DeliveredDrum[];
  readonly surface: SurfaceState | null;
  readonly by: string;
}

/** Conditions as a text message writes them; a sound drum has no word. */
export const conditionWords: readonly (readonly [DeliveredCondition, string])[] = [
  ['seal broken', 'SEAL'],
  ['damaged', 'DAMAGED'],
  ['leaking', 'LEAKING'],
];
