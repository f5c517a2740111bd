import type { FlightState, StandingState } from '../scenario.js';
import { transitions } from './transitions.js';

/** What a re-plan may do with a flight: change it; only after a named person let go of it; nothing, ever. */
export type ReplanFreedom = 'free' | 'when let go' | 'never';

/** Read from the state machine: what the planner may re-plan, and what can be let go. */
export function replanFreedom(state: FlightState): ReplanFreedom {
  const can = (act: 'replan' | 'let go') =>
    transitions.some((line) => line.act === act && line.from.includes(state));
  if (can('replan')) return 'free';
  return can('let go') ? 'when let go' : 'never';
}

/** States on which the mark "Needs a decision" may stand. */
export const markableStates: readonly FlightState[] = transitions
  .filter(({ act }) => act === 'mark')
  .flatMap(({ from }) => from);

const standing: Readonly<Record<FlightState, StandingState | null>> = {
  idea: null,
  offered: 'offered',
  approved: 'approved',
  given: 'given',
  loaded: 'loaded',
  away: 'away',
  home: 'home',
  reported: 'reported',
  closed: 'closed',
  declined: null,
  'called off': null,
  'turned back': 'home',
  'ended elsewhere': 'home',
};

/**
 * The state in which a flight stands in a scenario; null: it is not part of a plan. A flight that turned back or ended
 * elsewhere has been flown: its stops are then to say what it really left, and where.
 */
export function standingState(state: FlightState): StandingState | null {
  return standing[state];
}
