import { useState } from 'react';
import type { Calendar } from '../../../api/index.js';
import { Button, MessageLine, useKeys } from '../../../ui/index.js';
import { RefusedLine } from '../acts/refused-line.js';
import { nextToDecide } from '../board/board-rows.js';
import { focusBox } from '../board/focus-box.js';
import type { Week, WeekFlight } from '../week-read.js';
import { askedForm } from './asked-form.js';
import { forget, type Held, sendNow, takeBack, useHeld, useLastDone } from './held-act.js';
import { type ActName, opposingAct, sentWords } from './opposing-act.js';

interface JustDoneLineProps {
  readonly week: Week;
  readonly calendar: Calendar;
  /** Opens the card of a flight; by key the focus goes into it. */
  readonly onOpen: (flight: string, byKey: boolean) => void;
}

/** What is not sent yet and can be taken back, and what became of the act before; docs/decisions. */
export const JustDoneLine = ({ week, calendar, onOpen }: JustDoneLineProps) => {
  const held = useHeld();
  const done = useLastDone();
  const flight = week.flights.find(({ id }) => id === done?.flight);
  const sent = done?.kind === 'sent' && held === null ? flight : undefined;
  return (
    <>
      {/* There before it says something: what appears together with its words is not read aloud everywhere. */}
      <p role="status" className={sent === undefined ? 'unseen' : 'just-done'}>
        {sent !== undefined && done?.kind === 'sent' && <b>{sentWords(done.act, sent)}</b>}
      </p>
      {held !== null && <NotSent held={held} />}
      {done?.kind === 'taken back' && held === null && (
        <MessageLine
          kind="note"
          what={`${done.act} of ${done.flight} was taken back`}
          why="Base has not heard of it."
        />
      )}
      {done?.kind === 'refused' && (
        <div>
          <RefusedLine problem={done.problem} act={done.act} flight={flight} when={calendar.when} />
          <p>You had given as the reason: {done.reason}</p>
          <Button small onPress={forget}>
            Seen
          </Button>
        </div>
      )}
      {sent !== undefined && done?.kind === 'sent' && (
        <Sent key={`${done.act} ${done.flight}`} act={done.act} flight={sent} week={week} onOpen={onOpen} />
      )}
    </>
  );
};

/** The seconds are seen, not read aloud one by one. */
const NotSent = ({ held: { act, flight, secondsLeft } }: { readonly held: Held }) => (
  <div className="message note">
    <p role="status">
      <b>
        {act} of {flight} is not sent yet.
      </b>{' '}
      Nothing takes it back once base has it.
    </p>
    <p aria-hidden="true">It is sent in {secondsLeft} s.</p>
    <div className="acts">
      <Button small press="Ctrl+Z" onPress={() => leave(takeBack, flight)}>
        Undo
      </Button>
      <Button small onPress={() => leave(() => void sendNow(), flight)}>
        Send now
      </Button>
    </div>
  </div>
);

const leave = (act: () => void, flight: string): void => {
  act();
  focusBox(flight);
};

interface SentProps {
  readonly act: ActName;
  readonly flight: WeekFlight;
  readonly week: Week;
  readonly onOpen: JustDoneLineProps['onOpen'];
}

/** Base has it: on to the next; asked to undo, the page says which act takes it back, and opens its form. */
const Sent = ({ act, flight, week, onOpen }: SentProps) => {
  const [isAsked, setAsked] = useState(false);
  const { words, opens } = opposingAct(act, flight);
  const ask = () => {
    setAsked(true);
    onOpen(flight.id, false);
    if (opens !== null) askedForm.set({ flight: flight.id, form: opens });
  };
  useKeys({ 'Ctrl+Z': { does: `Undo: opens what takes back ${act} on ${flight.id}`, act: ask } });
  const next = nextToDecide(week);
  return (
    <>
      {isAsked && <MessageLine kind="note" what={words} />}
      {next !== undefined && next !== flight.id && (
        <Button small press="n" onPress={() => onOpen(next, true)}>
          {`Next to decide: ${next}`}
        </Button>
      )}
    </>
  );
};
