import { type Calendar, useMay, useSender } from '../../../api/index.js';
import type { Card } from '../card/card-read.js';
import { holdBack } from '../undo/held-act.js';
import type { HeldName } from '../undo/opposing-act.js';
import type { Week, WeekFlight } from '../week-read.js';
import { AmendForm } from './amend-form.js';
import { canBeLetGo, type FormName, keepOff } from './flight-acts.js';
import { KeepForm } from './keep-form.js';
import { LetGoForm } from './let-go-form.js';
import type { Run } from './press-acts.js';
import { ReasonForm } from './reason-form.js';
import { type FlightActs, withReason } from './use-flight-acts.js';

interface OpenFormProps {
  readonly flight: WeekFlight;
  readonly card: Card | undefined;
  readonly week: Week;
  readonly calendar: Calendar;
  readonly form: FormName;
  readonly acts: FlightActs;
  readonly run: Run;
  /** Somebody was quicker: it can be read, but no longer sent. */
  readonly isTooLate: boolean;
  /** An act waits to be sent. */
  readonly onHeld: () => void;
  readonly onClose: () => void;
}

/** The form of an act at the foot of the card, with what follows from it. */
export const OpenForm = ({
  form,
  flight,
  card,
  week,
  calendar,
  acts,
  run,
  isTooLate,
  onHeld,
  onClose,
}: OpenFormProps) => {
  const may = useMay();
  const send = useSender();
  const common = { flight, busy: acts.isSending || isTooLate, onClose };
  const hold = (act: HeldName, path: 'decline' | 'call-off', reason: string) => {
    holdBack(act, { id: flight.id, reason }, () => send(() => withReason(flight, path, reason)));
    onHeld();
  };
  switch (form) {
    case 'decline':
    case 'call off':
      return (
        <ReasonForm
          {...common}
          act={form}
          calendar={calendar}
          consequence={card?.ifDeclined ?? null}
          laterIdeas={week.plan?.laterIdeas ?? 0}
          onSend={(reason) =>
            form === 'decline' ? hold('Decline', 'decline', reason) : hold('Call off', 'call-off', reason)
          }
        />
      );
    case 'keep':
      return (
        <KeepForm
          {...common}
          off={keepOff(card?.faults)}
          onSend={(reason) => void run('Keep', acts.keep.run(flight, reason))}
        />
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
