import { useRef } from 'react';
import { useLocation } from 'wouter';
import { z } from 'zod';
import { post, useAct, useCalendar, useList, useMay } from '../../../api/index.js';
import { Button, ProblemLine, useFocusBack } from '../../../ui/index.js';
import { wereLetGoWords } from '../acts/let-go-words.js';
import { RePlan } from '../plan/plan-acts.js';
import type { EndedPlan, FoundPlan } from '../plan/plan-read.js';
import type { DifferenceGroup } from './difference-lines.js';
import type { Differences } from './differences-read.js';
import { acceptWords, leftOutOff } from './left-out.js';
import { LetGoFoot } from './let-go-foot.js';
import { openToLetGo } from './open-to-let-go.js';

const flightSchema = z.object({
  id: z.string(),
  state: z.string(),
  revision: z.number(),
  needsDecision: z.string().nullable(),
});

interface AcceptFootProps {
  readonly plan: EndedPlan;
  readonly found: FoundPlan;
  readonly differences: Differences;
  readonly groups: readonly DifferenceGroup[];
  readonly leaving: Leaving;
}

/** Lines left out by key; null: the plan is taken whole. */
export interface Leaving {
  readonly leftOut: readonly string[] | null;
  readonly set: (leftOut: readonly string[] | null) => void;
}

/** Whoever may accept the plan does it here, until it is accepted. */
export const AcceptFoot = (props: AcceptFootProps) => {
  const may = useMay();
  if (props.plan.accepted !== null || !may('accept plan', 'decide')) return null;
  return <OpenFoot {...props} />;
};

/** Accept, checked once more on the facts of today by the server; first the frozen flights that cannot be flown. */
const OpenFoot = ({ plan, found, differences, groups, leaving }: AcceptFootProps) => {
  const foot = useRef<HTMLElement>(null);
  useFocusBack(foot);
  const { today } = useCalendar();
  const [, navigate] = useLocation();
  const flights = useList(`/api/flights?from=${today}`, flightSchema).value ?? [];
  const stuck = openToLetGo(found, flights);
  const letGo = plan.request.letGo ?? [];
  const without = leaving.leftOut ?? [];
  const accept = useAct(() => post(`/api/plans/${plan.id}/accept`, { without }), '/api/plans');
  const off =
    stuck.length === 0
      ? leftOutOff(differences, without, groups)
      : `The plan counts on ${stuck.map(({ id }) => id).join(', ')}, which cannot be flown as ${stuck.length === 1 ? 'it stands' : 'they stand'}. Let go and plan again, or keep on the Week board.`;
  return (
    <footer ref={foot} className="compare-foot">
      <ProblemLine problem={accept.problem} />
      {letGo.length > 0 && <p>{wereLetGoWords(letGo)}</p>}
      {stuck.length > 0 && <LetGoFoot stuck={stuck} note={differences.faults[0]?.text.slice(0, 200) ?? ''} />}
      <div className="acts">
        <Button
          kind="main"
          press="y"
          busy={accept.isSending}
          offBecause={off}
          onPress={() => void accept.run()}
        >
          {acceptWords(groups)}
        </Button>
        <LineByLine leaving={leaving} canLeave={differences.mayLeaveOut.length > 1} />
        <Button onPress={() => navigate('/week')}>Keep what stands</Button>
        <RePlan kind="plain" />
        <span className="slate">
          Accepting is checked on today's facts. Offered flights are then decided one by one.
        </span>
      </div>
    </footer>
  );
};

/** Every line that decides something gets a tick; what is left is checked anew before it can be accepted. */
const LineByLine = ({ leaving, canLeave }: { readonly leaving: Leaving; readonly canLeave: boolean }) => {
  if (!canLeave) return null;
  return leaving.leftOut === null ? (
    <Button press="b" onPress={() => leaving.set([])}>
      Accept line by line
    </Button>
  ) : (
    <Button press="b" onPress={() => leaving.set(null)}>
      Take every line
    </Button>
  );
};
