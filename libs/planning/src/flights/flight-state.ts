import type { FlightState } from '../scenario.js';

/** Away or later: a fact, which nothing moves or forbids any more. */
export const hasLeft = (state: FlightState): boolean => left.includes(state);

/** Back at a base: what it landed is known, and the weather has no say any more. */
export const isFlown = (state: FlightState): boolean => flown.includes(state);

const flown: readonly FlightState[] = ['home', 'reported', 'closed'];
const left: readonly FlightState[] = ['away', ...flown];
