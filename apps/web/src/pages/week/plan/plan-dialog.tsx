import './plan.css';
import { useState } from 'react';
import { useLocation } from 'wouter';
import { type Calendar, newId, post, put, useAct, useCalendar, useMe } from '../../../api/index.js';
import { Button, Dialog, MessageLine, Picture, ProblemLine } from '../../../ui/index.js';
import { letGoBeforePlanWords } from '../acts/let-go-words.js';
import type { WeekFlight } from '../week-read.js';
import { FreedomList } from './freedom-list.js';
import { PlanFields } from './plan-fields.js';
import { type Freedoms, faultsOf, freedomsOf, type PlanForm, requestOf } from './plan-form.js';
import { type Standing, usePlanForm, useStanding } from './use-plan-form.js';

/** What a plan is to be like, and which flights it may change. Frozen ones are let go here, by name. */
export const PlanDialog = ({ onClose }: { readonly onClose: () => void }) => {
  const calendar = useCalendar();
  const standing = useStanding(calendar);
  if (standing.value !== undefined)
    return <PlanOptions standing={standing.value} calendar={calendar} onClose={onClose} />;
  return (
    <Dialog title="Re-plan" onClose={onClose}>
      <Picture read={standing}>{() => null}</Picture>
    </Dialog>
  );
};

interface PlanOptionsProps {
  readonly standing: Standing;
  readonly calendar: Calendar;
  readonly onClose: () => void;
}

const PlanOptions = ({ standing, calendar, onClose }: PlanOptionsProps) => {
  const { week, hasHandPlan, settings } = standing;
  const { fullName } = useMe();
  const { form, set } = usePlanForm(standing, calendar);
  const { ask, isSending, problem } = useAskForPlan();
  const freedoms = freedomsOf(week.flights);
  const faults = faultsOf(form);
  const letting = freedoms.whenLetGo.filter(({ id }) => form.letGo.has(id));
  const off = Object.keys(faults).length > 0 ? 'Put right what is at fault above.' : undefined;
  const send = () => off === undefined && !isSending && void ask(form, freedoms, calendar.today);
  return (
    <Dialog
      title={`${week.plan === null ? 'Plan the week' : 'Re-plan'} from ${form.from === calendar.today ? `now, ${calendar.day(calendar.now)} ${calendar.time(calendar.now)}` : calendar.day(form.from)}`}
      onClose={onClose}
      acts={
        <>
          <Button kind="main" busy={isSending} offBecause={off} onPress={send}>
            {letting.length === 0 ? 'Plan' : `Let go ${namesOf(letting)} and plan`}
          </Button>
          <Button onPress={onClose}>Leave it</Button>
        </>
      }
    >
      <form
        className="plan-form"
        onSubmit={(event) => {
          event.preventDefault();
          send();
        }}
      >
        <FreedomList freedoms={freedoms} form={form} set={set} day={calendar.day} by={fullName} />
        <PlanFields {...{ form, set, faults, hasHandPlan, currency: settings.currency, calendar }} />
        {/* Enter in a field asks for the plan. */}
        <input type="submit" hidden />
      </form>
      {letting.length > 0 && (
        <MessageLine kind="note" what="Let go first" why={letGoBeforePlanWords(letting)} />
      )}
      <ProblemLine problem={problem} />
    </Dialog>
  );
};

const namesOf = (flights: readonly WeekFlight[]): string =>
  flights.length > 4 ? `${flights.length} flights` : flights.map(({ id }) => id).join(', ');

/** Lets go what was ticked (a standing flight is let go by name and for itself), asks for the plan, and opens it. The id is there before, so that a second press is the same plan. */
const useAskForPlan = () => {
  const [id] = useState(newId);
  const [, navigate] = useLocation();
  const letGo = useAct((flights: readonly WeekFlight[], reason: string) =>
    post('/api/flights/let-go', { flights: flights.map(({ id, revision }) => ({ id, revision })), reason }),
  );
  const plan = useAct((request: ReturnType<typeof requestOf>) => put(`/api/plans/${id}`, request));
  const ask = async (form: PlanForm, freedoms: Freedoms, today: string): Promise<void> => {
    const going = freedoms.whenLetGo.filter((flight) => form.letGo.has(flight.id));
    if (going.length > 0 && (await letGo.run(going, form.note.trim())) === undefined) return;
    const asked = await plan.run(requestOf(form, freedoms, today));
    if (asked !== undefined) navigate(`/week/compare/${id}`);
  };
  return {
    ask,
    isSending: letGo.isSending || plan.isSending,
    problem: letGo.problem ?? plan.problem,
  };
};
