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
        what="Stopped, no plan kept"
        why="The flights that stand are unchanged; what was let go for it stays offered."
        next="Plan again, or approve those flights again on Week."
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
