import type { FlightState } from '../scenario.js';
import { type FlightStanding, type FlightStep, type Moved, nextState, type Refused } from './next-state.js';
import type { FlightAct } from './transition.js';
import { transitions } from './transitions.js';

/** What comes in from a crew, perhaps hours later, and from more than one of them. */
export const reportedActs = [
  'load',
  'take off',
  'land',
  'turn back',
  'end elsewhere',
  'refuse',
  'report',
] as const satisfies readonly FlightAct[];

export type ReportedAct = (typeof reportedActs)[number];

/** Kept beside a flight that is past it: nothing moves. */
export interface Kept {
  readonly kind: 'kept';
  /** Something to look at; null: it says what is known. */
  readonly raised: string | null;
}

/**
 * A report as it comes in. What its flight is past is kept and never refused; what is still to come is refused by the
 * state machine where a need is not met.
 */
export function receiveReport(
  flight: FlightStanding,
  step: FlightStep & { readonly act: ReportedAct },
): Moved | Kept | Refused {
  const moves = transitions.some(({ act, from }) => act === step.act && from.includes(flight.state));
  if (moves || isToCome(flight.state, step.act)) return nextState(flight, step);
  if (leadsTo(step.act, flight.state)) return { kind: 'kept', raised: null };
  const { id, state } = flight;
  return { kind: 'kept', raised: `${id} is ${state}: "${step.act}" by ${step.by.name} came in after that.` };
}

/** The flight has not got so far that the report could be about the past. */
function isToCome(state: FlightState, act: ReportedAct): boolean {
  if (act === 'load') return ['idea', 'offered', 'approved'].includes(state);
  return act === 'report' && ['idea', 'offered', 'approved', 'given', 'loaded', 'away'].includes(state);
}

/** The report is what brought the flight there. */
const leadsTo = (act: ReportedAct, state: FlightState): boolean =>
  transitions.some((line) => line.act === act && line.to === state && act !== 'refuse');
