import { Link } from 'wouter';
import { type Calendar, useRead, useSettings } from '../../../api/index.js';
import { inWords } from '../../../ui/index.js';
import { differencesSchema } from '../compare/differences-read.js';
import { newerPlan } from '../compare/newer-plan.js';
import { isUnderWay } from '../plan/plan-read.js';
import { useLatestPlans } from '../plan/use-latest-plans.js';
import type { Today } from './card-read.js';
import { insteadWords, riseWords } from './instead-words.js';

interface InsteadProps {
  readonly flight: string;
  readonly today: Today;
  /** Id of the plan in force. */
  readonly standing: string | null;
  readonly calendar: Calendar;
}

/** What could be done in the place of the flight: fewer drums, and what a plan that waits to be accepted would do. */
export const Instead = ({ flight, today, standing, calendar }: InsteadProps) => {
  const { fewer, load } = today;
  return (
    <>
      <Proposed flight={flight} standing={standing} calendar={calendar} />
      <p>
        {fewer !== null &&
          (fewer.drums > 0
            ? `${fewer.drums} of ${inWords(load.drums, 'drums')} may go. `
            : 'None of its drums may go. ')}
        Amend says at once what another day, aircraft or pilot would break; a re-plan looks at all of them
        together.
      </p>
    </>
  );
};

const Proposed = ({ flight, standing, calendar }: Omit<InsteadProps, 'today'>) => {
  const currency = useSettings().value?.data.currency ?? '';
  const newer = newerPlan(useLatestPlans(), standing ?? '');
  const waits =
    newer !== undefined && !isUnderWay(newer) && newer.acceptedByName === null ? newer : undefined;
  const differences = useRead(
    waits === undefined ? null : `/api/plans/${waits.id}/differences`,
    differencesSchema,
  ).value;
  const words = differences === undefined ? null : insteadWords(differences, flight, calendar.day);
  if (waits === undefined || differences === undefined || words === null) return null;
  return (
    <p>
      Plan of {calendar.when(waits.asOf)}, not accepted yet: {words} Whole plan{' '}
      <b>{riseWords(differences, currency)}</b>.{' '}
      <Link href={`/week/compare/${waits.id}`}>See the differences</Link>
    </p>
  );
};
