import { type FormName, openActs } from '../acts/flight-acts.js';
import type { WeekFlight } from '../week-read.js';

/** What takes back an act that has been sent: in words, and the form that does it; null: there is nothing to open. */
export interface Opposing {
  readonly words: string;
  readonly opens: FormName | null;
}

/** Acts of the card by their buttons. */
export type ActName =
  | 'Approve'
  | 'Give'
  | 'Amend'
  | 'Keep'
  | 'Let go'
  | 'Hold in place'
  | 'Decline'
  | 'Call off';

/** Acts that nothing takes back once base has them: they wait a moment before they are sent. */
export type HeldName = Extract<ActName, 'Decline' | 'Call off'>;

const doneWords: Readonly<Record<ActName, string>> = {
  Approve: 'approved',
  Give: 'given',
  Amend: 'amended',
  Keep: 'kept as it is',
  'Let go': 'let go',
  'Hold in place': 'held in place',
  Decline: 'declined',
  'Call off': 'called off',
};

/** "F07 was approved; base has it." */
export const sentWords = (done: ActName, { id, heldInPlace }: WeekFlight): string => {
  const isFreed = done === 'Hold in place' && !heldInPlace;
  return `${id} was ${isFreed ? 'freed to move' : doneWords[done]}; base has it.`;
};

/** What would take back what was done last to a flight, as the flight stands now. */
export const opposingAct = (done: ActName, flight: WeekFlight): Opposing => {
  const can = openActs(flight);
  const sent = sentWords(done, flight);
  if ((done === 'Approve' || done === 'Give' || done === 'Keep') && can.letGo)
    return { words: `${sent} Let go takes it back: it is offered again.`, opens: 'let go' };
  if (done === 'Amend' && can.amend) return { words: `${sent} Amend it again, as it was.`, opens: 'amend' };
  if (done === 'Let go' && can.approve)
    return { words: `${sent} Approve takes it back, if it may still be flown.`, opens: null };
  if (done === 'Hold in place' && can.hold) {
    const back = flight.heldInPlace ? 'Free to move' : 'Hold in place';
    return { words: `${sent} ${back} takes it back.`, opens: null };
  }
  return {
    words: `${sent} It is ${flight.state} now, and no act takes that back. Re-plan from now.`,
    opens: null,
  };
};
