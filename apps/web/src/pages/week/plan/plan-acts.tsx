import { useState } from 'react';
import { useLocation } from 'wouter';
import { useList, useMay } from '../../../api/index.js';
import { Button } from '../../../ui/index.js';
import { PlanDialog } from './plan-dialog.js';
import { isUnderWay, listedPlanSchema } from './plan-read.js';

interface PlanActsProps {
  readonly isListOpen?: boolean;
  /** The run that the page shows. */
  readonly shown?: string;
}

/** Of the week: plan again, see the run under way, and the runs before. */
export const PlanActs = ({ isListOpen = false, shown }: PlanActsProps) => {
  const [isOpen, setOpen] = useState(false);
  const [, navigate] = useLocation();
  const may = useMay();
  const underWay = useList('/api/plans', listedPlanSchema).value?.find(
    (plan) => isUnderWay(plan) && plan.id !== shown,
  );
  return (
    <>
      {underWay !== undefined ? (
        <Button kind="main" press="p" onPress={() => navigate(`/week/compare/${underWay.id}`)}>
          Plan under way
        </Button>
      ) : (
        may('run plan', 'decide') && (
          <Button kind="main" press="p" onPress={() => setOpen(true)}>
            Re-plan from now
          </Button>
        )
      )}
      {!isListOpen && (
        <Button press="e" onPress={() => navigate('/week/plans')}>
          Compare
        </Button>
      )}
      {isOpen && <PlanDialog onClose={() => setOpen(false)} />}
    </>
  );
};
