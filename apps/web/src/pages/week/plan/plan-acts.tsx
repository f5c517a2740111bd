import { useState } from 'react';
import { useLocation } from 'wouter';
import { mayOfAll, useMay, useMe } from '../../../api/index.js';
import { Button, DayPackLink } from '../../../ui/index.js';
import { PlanDialog } from './plan-dialog.js';
import { isUnderWay } from './plan-read.js';
import { useLatestPlans } from './use-latest-plans.js';

/** Of the week: plan again, the plans before, the board and the day on paper. */
export const PlanActs = ({ isFirst }: { readonly isFirst: boolean }) => {
  const [, navigate] = useLocation();
  const seesPlans = mayOfAll(useMe(), 'run plan', 'view');
  return (
    <>
      <RePlan kind="main" isFirst={isFirst} />
      {seesPlans && (
        <Button press="e" onPress={() => navigate('/week/plans')}>
          Compare
        </Button>
      )}
      <Button onPress={() => window.print()}>Print week</Button>
      <DayPackLink />
    </>
  );
};

/** For who sees the board. */
export const BackToWeek = () => {
  const [, navigate] = useLocation();
  const seesBoard = mayOfAll(useMe(), 'approve flight', 'view');
  return seesBoard && <Button onPress={() => navigate('/week')}>Back to Week</Button>;
};

interface RePlanProps {
  readonly kind: 'main' | 'plain';
  /** No plan stands. */
  readonly isFirst?: boolean;
}

/** Asks for a plan, at once where the address says so; while one is under way, leads there. */
export const RePlan = ({ kind, isFirst = false }: RePlanProps) => {
  const [isOpen, setOpen] = useState(() => window.location.hash === '#plan');
  const [path, navigate] = useLocation();
  const may = useMay();
  const close = () => {
    setOpen(false);
    if (window.location.hash === '#plan') navigate(path, { replace: true });
  };
  const underWay = useLatestPlans().find((plan) => isUnderWay(plan) && !path.endsWith(plan.id));
  if (underWay !== undefined)
    return (
      <Button kind={kind} press="p" onPress={() => navigate(`/week/compare/${underWay.id}`)}>
        Plan under way
      </Button>
    );
  if (!may('run plan', 'decide')) return null;
  return (
    <>
      <Button kind={kind} press="p" onPress={() => setOpen(true)}>
        {isFirst ? 'Plan the week' : 'Re-plan from now'}
      </Button>
      {isOpen && <PlanDialog onClose={close} />}
    </>
  );
};
