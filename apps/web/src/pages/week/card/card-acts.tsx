import { useEffect, useState } from 'react';
import { type Calendar, useMay, useStore } from '../../../api/index.js';
import { actOfForm, type FormName, isFormOpen } from '../acts/flight-acts.js';
import { OpenForm } from '../acts/open-form.js';
import { PressActs } from '../acts/press-acts.js';
import { QuickerLine, RefusedLine } from '../acts/refused-line.js';
import { useFlightActs } from '../acts/use-flight-acts.js';
import { focusBox } from '../board/focus-box.js';
import { askedForm } from '../undo/asked-form.js';
import { useHeld, wasSent } from '../undo/held-act.js';
import type { ActName } from '../undo/opposing-act.js';
import type { Week, WeekFlight } from '../week-read.js';
import type { Card } from './card-read.js';

interface CardActsProps {
  readonly flight: WeekFlight;
  readonly card: Card | undefined;
  readonly week: Week;
  readonly calendar: Calendar;
}

/** The acts of the card: one press, or a form at its foot that says what follows. */
export const CardActs = ({ flight, card, week, calendar }: CardActsProps) => {
  const acts = useFlightActs();
  const [form, setForm] = useForm(flight);
  const [tried, setTried] = useState('');
  const may = useMay();
  const isHeldBack = useIsHeldBack(flight);
  if (!may('approve flight', 'decide') || isHeldBack) return null;
  const close = () => {
    setForm(undefined);
    focusBox(flight.id);
  };
  const run = async (name: ActName, work: Promise<unknown>) => {
    setTried(name);
    if ((await work) === undefined) return;
    wasSent(name, flight.id);
    close();
  };
  const open = (name: FormName) => {
    acts.clear();
    setForm(name);
  };
  const isTooLate = form !== undefined && !isFormOpen(form, flight);
  return (
    <div className="card-acts">
      <RefusedLine problem={acts.problem} act={tried} flight={flight} when={calendar.when} />
      {isTooLate && acts.problem === undefined && (
        <QuickerLine
          act={actOfForm[form]}
          flight={flight}
          when={calendar.when}
          next="What you had entered is below, to look at. Leave it closes it."
        />
      )}
      {form === undefined ? (
        <PressActs flight={flight} card={card} acts={acts} run={run} open={open} />
      ) : (
        <OpenForm
          form={form}
          {...{ flight, card, week, calendar, acts, run, isTooLate }}
          onHeld={close}
          onClose={() => {
            acts.clear();
            setForm(undefined);
          }}
        />
      )}
    </div>
  );
};

/** The form that is open, by a press here or by an undo that asks for it. */
const useForm = (flight: WeekFlight) => {
  const [form, setForm] = useState<FormName>();
  const asked = useStore(askedForm);
  useEffect(() => {
    if (asked?.flight !== flight.id) return;
    if (isFormOpen(asked.form, flight)) setForm(asked.form);
    askedForm.set(null);
  }, [asked, flight]);
  return [form, setForm] as const;
};

/** Until what was pressed is sent or taken back there is nothing else to press. */
const useIsHeldBack = ({ id }: WeekFlight): boolean => useHeld()?.flight === id;
