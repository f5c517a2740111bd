import type { ActName } from '../undo/opposing-act.js';
import type { WeekFlight } from '../week-read.js';

export type FormName = 'decline' | 'call off' | 'amend' | 'let go' | 'keep';

/** What the office may do with a flight; docs/flight-states.md. */
export interface OpenActs {
  readonly approve: boolean;
  readonly amend: boolean;
  readonly decline: boolean;
  readonly callOff: boolean;
  readonly give: boolean;
  readonly letGo: boolean;
  readonly hold: boolean;
  readonly keep: boolean;
}

/** By its state. Of a day that is over it can be said that it flew, called off, or put on another day, and nothing else. */
export const openActs = (flight: Deciding): OpenActs => {
  const can = actsOfState(flight);
  return flight.unheard
    ? { ...can, approve: false, give: false, letGo: false, hold: false, keep: false }
    : can;
};

/** What its acts hang on. */
type Deciding = Pick<WeekFlight, 'state' | 'needsDecision' | 'unheard'>;

const actsOfState = ({ state, needsDecision }: Deciding): OpenActs => ({
  approve: state === 'offered',
  amend: ['offered', 'approved', 'given', 'loaded'].includes(state),
  decline: state === 'offered',
  callOff: ['approved', 'given', 'loaded'].includes(state),
  give: state === 'approved',
  letGo: state === 'approved' || state === 'given',
  hold: state === 'offered',
  keep: needsDecision !== null && ['offered', 'approved', 'given'].includes(state),
});

/** Why Approve cannot be pressed; undefined: it can. */
export const approveOff = (
  { needsDecision }: Pick<WeekFlight, 'needsDecision'>,
  fault: { readonly problem: string } | undefined,
): string | undefined => {
  if (fault !== undefined) return `Approve is off: ${fault.problem}`;
  if (needsDecision === null) return undefined;
  return `Approve is off: it needs a decision first. ${needsDecision} Amend it, keep it as it is, or decline it.`;
};

interface Fault {
  readonly problem: string;
  readonly remedy: string;
}

/** Why Keep cannot be pressed: what the server would refuse it for; undefined: it can. `faults` absent: they are not known yet. */
export const keepOff = (faults: readonly Fault[] | undefined): string | undefined => {
  if (faults === undefined) return "Keep is off: today's facts of it are not read yet.";
  const [first] = faults;
  return first && `Keep is off: ${first.problem} ${first.remedy}`;
};

/** The act that a form sends, by its button. */
export const actOfForm: Readonly<Record<FormName, ActName>> = {
  decline: 'Decline',
  'call off': 'Call off',
  amend: 'Amend',
  'let go': 'Let go',
  keep: 'Keep',
};

/** Whether what a form sends may still be done: somebody else may have been quicker. */
export const isFormOpen = (form: FormName, flight: Deciding): boolean => {
  const can = openActs(flight);
  switch (form) {
    case 'decline':
      return can.decline;
    case 'call off':
      return can.callOff;
    case 'amend':
      return can.amend;
    case 'let go':
      return can.letGo;
    case 'keep':
      return can.keep;
  }
};

/** Flights that can be let go together. */
export const canBeLetGo = (flights: readonly WeekFlight[]): readonly WeekFlight[] =>
  flights.filter((flight) => openActs(flight).letGo);

/** Reasons of the trade; the text says more. */
export const reasons = [
  'Weather',
  'Strip not fit',
  'Aircraft not serviceable',
  'No pilot',
  'Not needed any more',
  'Another flight does it',
  'Other',
] as const;

export type ReasonWord = (typeof reasons)[number];

/** What is kept as the reason; undefined: not enough is said yet. */
export const reasonText = (word: ReasonWord | '', text: string): string | undefined => {
  const more = text.trim();
  if (word === '') return undefined;
  if (word === 'Other') return more.length >= 3 ? more : undefined;
  return more === '' ? word : `${word}: ${more}`;
};
