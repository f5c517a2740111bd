import { useState } from 'react';
import { type Calendar, useMay } from '../../api/index.js';
import { Button, MessageLine, ProblemLine } from '../../ui/index.js';
import { AmendForm } from './amend-form.js';
import type { Card } from './card-read.js';
import { lastActWords } from './card-words.js';
import { approveOff, canBeLetGo, type FormName, isFormOpen, openActs } from './flight-acts.js';
import { KeepForm } from './keep-form.js';
import { LetGoForm } from './let-go-form.js';
import { ReasonForm } from './reason-form.js';
import { type FlightActs, useFlightActs } from './use-flight-acts.js';
import type { Week, WeekFlight } from './week-read.js';

interface CardActsProps {
  readonly flight: WeekFlight;
  readonly card: Card | undefined;
  readonly week: Week;
  readonly calendar: Calendar;
}

/** The acts of the card: one press, or a form at its foot that says what follows. */
export const CardActs = ({ flight, card, week, calendar }: CardActsProps) => {
  const acts = useFlightActs();
  const [form, setForm] = useState<FormName>();
  const [tried, setTried] = useState('');
  const may = useMay();
  if (!may('approve flight', 'decide')) return null;
  const run = async (name: string, work: Promise<unknown>) => {
    setTried(name);
    if ((await work) === undefined) return;
    setForm(undefined);
    focusBox(flight.id);
  };
  const open = (name: FormName) => {
    acts.clear();
    setForm(name);
  };
  return (
    <div className="card-acts">
      <Refused acts={acts} flight={flight} tried={tried} when={calendar.when} />
      {form === undefined || !isFormOpen(form, flight) ? (
        <PressActs flight={flight} card={card} acts={acts} run={run} open={open} />
      ) : (
        <OpenForm
          form={form}
          {...{ flight, card, week, calendar, acts, run }}
          onClose={() => {
            acts.clear();
            setForm(undefined);
          }}
        />
      )}
    </div>
  );
};

/** The press is gone with what it did: the keyboard goes on from the flight's box. */
const focusBox = (id: string): void =>
  document.querySelector<HTMLElement>(`.week-board [data-flight="${CSS.escape(id)}"]`)?.focus();

type Run = (name: string, work: Promise<unknown>) => Promise<void>;

interface PressActsProps extends Pick<CardActsProps, 'flight' | 'card'> {
  readonly acts: FlightActs;
  readonly run: Run;
  readonly open: (form: FormName) => void;
}

const PressActs = ({ flight, card, acts, run, open }: PressActsProps) => {
  const can = openActs(flight);
  const fault = card?.faults[0];
  const fewer = card?.today?.fewer ?? null;
  const takesFewer = can.amend && fewer !== null && fewer.drums > 0;
  const busy = acts.isSending;
  return (
    <div className="acts">
      {takesFewer && (
        <Button
          kind="main"
          busy={busy}
          onPress={() => void run('Amend', acts.amend.run(flight, { stops: fewer.stops }))}
        >
          {`Amend to ${fewer.drums} ${fewer.drums === 1 ? 'drum' : 'drums'}`}
        </Button>
      )}
      {can.approve && (
        <Button
          kind={takesFewer ? 'plain' : 'main'}
          press="a"
          busy={busy}
          offBecause={approveOff(flight, fault)}
          onPress={() => void run('Approve', acts.approve.run(flight))}
        >
          Approve
        </Button>
      )}
      {can.give && (
        <Button
          kind="main"
          press="g"
          busy={busy}
          offBecause={giveOff(flight)}
          onPress={() => void run('Give', acts.give.run(flight))}
        >
          {flight.pilot === null ? 'Give to the pilot' : `Give to ${flight.pilot}`}
        </Button>
      )}
      {can.decline && (
        <Button kind="grave" press="d" onPress={() => open('decline')}>
          Decline
        </Button>
      )}
      {can.amend && (
        <Button press="m" onPress={() => open('amend')}>
          Amend
        </Button>
      )}
      {can.keep && (
        <Button press="k" onPress={() => open('keep')}>
          Keep as it is
        </Button>
      )}
      {can.letGo && (
        <Button press="l" onPress={() => open('let go')}>
          Let go
        </Button>
      )}
      {can.hold && (
        <Button press="h" busy={busy} onPress={() => void run('Hold in place', acts.hold.run(flight))}>
          {flight.heldInPlace ? 'Free to move' : 'Hold in place'}
        </Button>
      )}
      {can.callOff && (
        <Button kind="grave" press="c" onPress={() => open('call off')}>
          Call off
        </Button>
      )}
    </div>
  );
};

const giveOff = ({ pilot, needsDecision }: WeekFlight): string | undefined => {
  if (needsDecision !== null) return 'Give is off: it needs a decision first.';
  return pilot === null ? 'Give is off: no pilot is named. Amend names one.' : undefined;
};

interface OpenFormProps extends CardActsProps {
  readonly form: FormName;
  readonly acts: FlightActs;
  readonly run: Run;
  readonly onClose: () => void;
}

const OpenForm = ({ form, flight, card, week, calendar, acts, run, onClose }: OpenFormProps) => {
  const may = useMay();
  const common = { flight, busy: acts.isSending, onClose };
  const { withReason } = acts;
  switch (form) {
    case 'decline':
    case 'call off':
      return (
        <ReasonForm
          {...common}
          act={form}
          calendar={calendar}
          consequence={card?.ifDeclined ?? null}
          onSend={(reason) =>
            void (form === 'decline'
              ? run('Decline', withReason.run(flight, 'decline', reason))
              : run('Call off', withReason.run(flight, 'call-off', reason)))
          }
        />
      );
    case 'keep':
      return (
        <KeepForm {...common} onSend={(reason) => void run('Keep', withReason.run(flight, 'keep', reason))} />
      );
    case 'let go':
      return (
        <LetGoForm
          {...common}
          flights={canBeLetGo(week.flights)}
          chosen={flight.id}
          onSend={(flights, reason) => void run('Let go', acts.letGo.run(flights, reason))}
        />
      );
    case 'amend':
      return card === undefined ? null : (
        <AmendForm
          {...common}
          {...{ card, week, calendar }}
          mayAssign={may('assign crew', 'decide')}
          onSend={(amendment) => void run('Amend', acts.amend.run(flight, amendment))}
        />
      );
  }
};

interface RefusedProps {
  readonly acts: FlightActs;
  readonly flight: WeekFlight;
  readonly tried: string;
  readonly when: Calendar['when'];
}

/** Somebody was quicker: who, what and when. Otherwise the server's own words. */
const Refused = ({ acts: { problem }, flight, tried, when }: RefusedProps) =>
  problem?.kind === 'stale-version' ? (
    <MessageLine
      what={lastActWords(flight, when)}
      why={`Your ${tried} was not sent.`}
      next="The card shows the flight as it is now."
    />
  ) : (
    <ProblemLine problem={problem} />
  );
