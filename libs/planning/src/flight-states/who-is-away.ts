import { epochMinutes, type Hours, type IsoInstant, instantAt, type Minutes, minutes } from '@drumline/units';
import type { FlightState } from '../scenario.js';

/** How a flight is spoken of while somebody waits for it. */
export type AwayWord = 'in the circuit' | 'down and well' | 'overdue';

export interface Round {
  readonly offAt: IsoInstant;
  readonly blockHours: Hours;
  readonly stops: number;
  /** Of the type, at each stop. */
  readonly turnRoundMinutes: Minutes;
}

/** When it is expected home: off, the planned block time, and a turn-round at every stop; to the minute. */
export function expectedBack({ offAt, blockHours, stops, turnRoundMinutes }: Round): IsoInstant {
  const round = Math.ceil(blockHours * 60 - 1e-6) + stops * turnRoundMinutes;
  return instantAt(minutes(epochMinutes(offAt) + round));
}

export interface Awaited {
  readonly state: FlightState;
  readonly expectedBackAt: IsoInstant;
  /** How late the operator lets a flight be before it is called overdue; null: the operator has not said. */
  readonly overdueAfterMinutes: Minutes | null;
}

/**
 * Down and well: its landing is reported. Overdue: it is not, and the operator's minutes after the expected time are
 * over. Without those minutes no flight is ever called overdue.
 */
export function awayWord({ state, expectedBackAt, overdueAfterMinutes }: Awaited, now: IsoInstant): AwayWord {
  if (state !== 'away') return 'down and well';
  if (overdueAfterMinutes === null) return 'in the circuit';
  const limit = epochMinutes(expectedBackAt) + overdueAfterMinutes;
  return epochMinutes(now) > limit ? 'overdue' : 'in the circuit';
}
