import { Button, MessageLine } from '../../../ui/index.js';
import type { EndedPlan, ListedPlan } from '../plan/plan-read.js';

/** A run that ended without a plan: why, and what would do. */
export const NoPlan = ({ run, plan }: { readonly run: ListedPlan; readonly plan: EndedPlan }) => {
  const { state } = run;
  if (state === 'infeasible')
    return (
      <MessageLine what="No plan is possible as things stand" next="Change one of these, then plan again.">
        <ul>
          {(plan.outcome?.reasons ?? []).map((reason) => (
            <li key={reason}>{reason}</li>
          ))}
        </ul>
      </MessageLine>
    );
  if (state === 'cancelled')
    return (
      <MessageLine
        kind="note"
        what="Stopped before there was a plan"
        why="The flights that stand are unchanged."
        next="Plan again, and give it a few seconds more."
      />
    );
  return (
    <MessageLine
      what="The plan could not be made"
      why={`The flights that stand are unchanged. ${plan.outcome?.error ?? ''}`}
      next="Plan again; if it fails again, tell set-up."
    >
      <Button small onPress={() => window.location.reload()}>
        Read again
      </Button>
    </MessageLine>
  );
};
