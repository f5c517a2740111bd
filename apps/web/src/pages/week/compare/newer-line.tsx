import { useLocation } from 'wouter';
import { type Calendar, useSettings } from '../../../api/index.js';
import { Button, figure, MessageLine } from '../../../ui/index.js';
import { isUnderWay, type ListedPlan } from '../plan/plan-read.js';
import { useLatestPlans } from '../plan/use-latest-plans.js';
import { newerPlan } from './newer-plan.js';

/** The plan that is shown is not the newest: who made the newer one, and the way to it. */
export const NewerLine = ({ id, calendar }: { readonly id: string; readonly calendar: Calendar }) => {
  const [, navigate] = useLocation();
  const currency = useSettings().value?.data.currency ?? '';
  const newer = newerPlan(useLatestPlans(), id);
  if (newer === undefined) return null;
  const open = () => navigate(`/week/compare/${newer.id}`, { replace: true });
  return (
    <div className="newer-plan">
      <MessageLine kind="note" what={whatWords(newer)} why={whyWords(newer, calendar, currency)}>
        <Button small press="n" onPress={open}>
          Open the newer in its place
        </Button>
      </MessageLine>
    </div>
  );
};

const whatWords = (newer: ListedPlan): string => {
  if (isUnderWay(newer)) return 'A newer plan is being made';
  return newer.number === null ? 'There is a newer plan' : `Plan ${newer.number} has been accepted since`;
};

const whyWords = (
  { asOf, requestedByName, cost, acceptedByName }: ListedPlan,
  { when }: Calendar,
  currency: string,
): string => {
  const whole = cost === null ? '' : ` Whole plan ${figure(Math.round(cost.total / 100))} ${currency}.`;
  const who = acceptedByName === null ? `asked for by ${requestedByName}` : `accepted by ${acceptedByName}`;
  return `By the facts of ${when(asOf)}, ${who}.${whole}`;
};
