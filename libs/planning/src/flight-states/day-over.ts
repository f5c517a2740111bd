import { dateWords, type IsoDate } from '@drumline/units';
import { hasLeft } from '../flights/flight-state.js';
import type { FlightState } from '../scenario.js';
import { standingState } from './replan-freedom.js';
import { stateMeanings } from './transitions.js';

/** A flight of a day that is over, never reported off: nobody knows whether it flew, and nothing can be planned on it. */
export const isUnheardOf = (
  { state, date }: { readonly state: FlightState; readonly date: IsoDate },
  today: IsoDate,
): boolean => date < today && isAhead(state);

/** States of a flight on which somebody has still to say something: did it fly, is it down, where are its drums. */
export const unfinishedStates: readonly FlightState[] = (Object.keys(stateMeanings) as FlightState[]).filter(
  (state) => standingState(state) !== null && state !== 'reported' && state !== 'closed',
);

/** Why a flight of a day that is over is not approved, given or offered any more. */
export const dayOverWords = (date: IsoDate, today: IsoDate): string =>
  `${dateWords(date)} is over; today is ${dateWords(today)}.`;

const isAhead = (state: FlightState): boolean => {
  const standing = standingState(state);
  return standing !== null && !hasLeft(standing);
};
