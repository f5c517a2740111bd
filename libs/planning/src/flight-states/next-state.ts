import type { FlightState } from '../scenario.js';
import { listWords } from '../wording.js';
import type { FlightAct, FlightRole, Need, Transition } from './transition.js';
import { transitions } from './transitions.js';

/** How far a flight is. */
export interface FlightStanding {
  readonly id: string;
  readonly state: FlightState;
  /** From 1; a new one with every change. */
  readonly version: number;
  /** Why the flight needs a decision; null: it needs none. */
  readonly needsDecision: string | null;
}

/** What somebody does with a flight. */
export interface FlightStep {
  readonly act: FlightAct;
  readonly by: { readonly name: string; readonly role: FlightRole };
  readonly reason?: string;
  /** What the caller has seen to, of the needs that the flight itself does not answer. */
  readonly met: readonly Need[];
}

export interface Moved {
  readonly kind: 'moved';
  readonly flight: FlightStanding;
  /** The flight's drums go back to the pick list. */
  readonly handsDrumsBack: boolean;
  /** A step that was skipped: something to look at; null: none was. */
  readonly raised: string | null;
}

export interface Refused {
  readonly kind: 'refused';
  readonly words: string;
}

/** The flight after an act, or in words why not and what to do instead (docs/flight-states.md). */
export function nextState(flight: FlightStanding, step: FlightStep): Moved | Refused {
  const line = transitions.find(({ act, from }) => act === step.act && from.includes(flight.state));
  if (!line) return refused(cannotNow(flight, step.act));
  if (!line.who.includes(step.by.role)) return refused(notYours(flight, step, line));
  const missing = line.needs.filter((need) => !isMet(need, flight, step));
  if (missing.length > 0)
    return refused(
      `${flight.id}: to ${step.act} ${listWords(missing.map((need) => needWords(need, flight)))}.`,
    );
  return {
    kind: 'moved',
    flight: {
      ...flight,
      state: line.to === 'same' ? flight.state : line.to,
      version: flight.version + (line.newVersion ? 1 : 0),
      needsDecision: line.mark === 'set' ? (step.reason ?? `${step.by.name} will not fly it`) : null,
    },
    handsDrumsBack: line.handsDrumsBack ?? false,
    raised: line.raises ? `${flight.id}: ${line.raises}.` : null,
  };
}

/** The acts that a role may do in a state, needs aside: the buttons to show. */
export function actsOpen(state: FlightState, role: FlightRole): readonly FlightAct[] {
  return transitions
    .filter(({ from, who }) => from.includes(state) && who.includes(role))
    .map(({ act }) => act);
}

function isMet(need: Need, flight: FlightStanding, { reason, met }: FlightStep): boolean {
  if (need === 'reason') return reason !== undefined && reason.trim() !== '';
  if (need === 'no open decision') return flight.needsDecision === null;
  return met.includes(need);
}

const wordsOfNeed: Readonly<Record<Need, string>> = {
  reason: 'a reason has to be given',
  'checked today': 'it has to pass the check against today’s limits',
  pilot: 'a pilot has to be named',
  'totals agreed': 'the two totals have to agree or their difference be signed',
  'surface known':
    'the surface has to be known from a fresh report, or the aeroplane loaded by the soft figures',
  'no held drum': 'every drum that is held has to stay behind',
  'every drum accounted for': 'every drum aboard has to be accounted for',
  'costs and hours': 'its costs and hours have to be entered',
  'no open decision': 'the decision it needs has to be taken first',
};

function needWords(need: Need, { needsDecision }: FlightStanding): string {
  return need === 'no open decision' ? `${wordsOfNeed[need]} (${needsDecision})` : wordsOfNeed[need];
}

function cannotNow({ id, state }: FlightStanding, act: FlightAct): string {
  const from = [...new Set(transitions.filter((line) => line.act === act).flatMap((line) => line.from))];
  return `${id} is ${state}: to ${act}, a flight has to be ${orWords(from)}.`;
}

function notYours({ id, state }: FlightStanding, { act, by }: FlightStep, { who }: Transition): string {
  return `${id} is ${state}: ${by.name} is ${by.role}; to ${act} it takes ${orWords(who)}.`;
}

const refused = (words: string): Refused => ({ kind: 'refused', words });

const orWords = (words: readonly string[]): string =>
  words.length < 2 ? words.join('') : `${words.slice(0, -1).join(', ')} or ${words.at(-1)}`;
