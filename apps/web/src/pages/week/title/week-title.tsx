import type { Calendar } from '../../../api/index.js';
import { Field, SurfaceWord, TitleBlock } from '../../../ui/index.js';
import { PlanActs } from '../plan/plan-acts.js';
import type { Week } from '../week-read.js';

/** Which days, which plan, what was heard since. */
export const WeekTitle = ({
  week,
  calendar,
}: {
  readonly week: Week | undefined;
  readonly calendar: Calendar;
}) => {
  const [first, last] = [week?.days[0], week?.days.at(-1)];
  return (
    <TitleBlock
      title="Week"
      sub={first && last && calendar.span(first.date, last.date)}
      acts={<PlanActs isFirst={week?.plan === null} />}
    >
      {week !== undefined && <PlanFields week={week} calendar={calendar} />}
    </TitleBlock>
  );
};

const PlanFields = ({
  week: { plan, heardSince, stripLimitsFrom },
  calendar,
}: {
  readonly week: Week;
  readonly calendar: Calendar;
}) => (
  <>
    <Field label="Plan" note={plan === null ? undefined : 'standing'}>
      {plan === null ? 'none yet' : plan.number}
    </Field>
    {plan !== null && (
      <Field
        label="By the facts of"
        wide={heardSince.length > 0}
        note={<span className="by-whom">accepted by {plan.acceptedByName}</span>}
      >
        {calendar.when(plan.asOf)}
      </Field>
    )}
    {stripLimitsFrom.length > 0 && (
      <Field
        label="Strip limits"
        wide
        note={stripLimitsFrom.length > 1 ? `and ${stripLimitsFrom.length - 1} more` : undefined}
      >
        {stripLimitsFrom[0]}
      </Field>
    )}
    {heardSince.length > 0 && (
      <Field label="Changed since the plan">
        {heardSince.slice(-3).map(({ place, state, at }) => (
          <span key={`${place} ${at}`} className="heard-since">
            {place} <SurfaceWord state={state as 'soft'} /> <small>{calendar.when(at)}</small>
          </span>
        ))}
        {heardSince.length > 3 && <small> and {heardSince.length - 3} more</small>}
      </Field>
    )}
  </>
);
