import '../../../styles/landscape-print.css';
import '../../../styles/level-graph.css';
import './compare.css';
import './compare-print.css';
import { useState } from 'react';
import { useLocation } from 'wouter';
import {
  type Calendar,
  mayOfAll,
  useCalendar,
  useLast,
  useMe,
  useRead,
  useSettings,
} from '../../../api/index.js';
import { Button, bothOf, Field, Picture, PrintedFoot, TitleBlock } from '../../../ui/index.js';
import { BackToWeek } from '../plan/plan-acts.js';
import { freedomsOf } from '../plan/plan-form.js';
import {
  type EndedPlan,
  endedPlanSchema,
  type FoundPlan,
  isUnderWay,
  type ListedPlan,
} from '../plan/plan-read.js';
import { PlanUnderWay, usePlanRun } from '../plan/plan-under-way.js';
import { gapWords, stateOf, weakProofWords } from '../plan/plan-words.js';
import { weekSchema } from '../week-read.js';
import { AcceptFoot, type Leaving } from './accept-foot.js';
import { differenceGroups } from './difference-lines.js';
import { DifferenceList } from './difference-list.js';
import { type Differences, differencesSchema } from './differences-read.js';
import { findingOf } from './finding.js';
import { LevelGraph } from './level-graph.js';
import { LowestLevels } from './lowest-levels.js';
import { NewerLine } from './newer-line.js';
import { NoPlan } from './no-plan.js';
import { AcceptedLine, PlanNotes } from './plan-notes.js';
import { printScale } from './print-scale.js';
import { TotalsTable } from './totals-table.js';

/** A plan beside what stood: the list of differences before anything is accepted; while it is made, how far it is. */
export const ComparePage = ({ id }: { readonly id: string }) => {
  const calendar = useCalendar();
  const run = usePlanRun(id);
  return (
    <>
      <CompareTitle run={run.value} calendar={calendar} />
      <Picture read={run}>
        {(value) =>
          isUnderWay(value) ? (
            <div className="work">
              <PlanUnderWay run={value} />
            </div>
          ) : (
            <EndedRun key={value.id} run={value} calendar={calendar} />
          )
        }
      </Picture>
    </>
  );
};

interface TitleProps {
  readonly run: ListedPlan | undefined;
  readonly calendar: Calendar;
}

const CompareTitle = ({ run, calendar }: TitleProps) => {
  const [, navigate] = useLocation();
  const currency = useSettings().value?.data.currency ?? '';
  return (
    <TitleBlock
      title={run !== undefined && isUnderWay(run) ? 'Plan under way' : 'Differences'}
      sub={run && `from ${calendar.day(run.asOf)}, ${calendar.time(run.asOf)}`}
      acts={
        <>
          <Button onPress={() => window.print()}>Print</Button>
          <Button press="e" onPress={() => navigate('/week/plans')}>
            Plans
          </Button>
          <BackToWeek />
        </>
      }
    >
      {run !== undefined && (
        <>
          <Field label="Proposed" note={`by ${run.requestedByName}`}>
            {run.number === null ? stateOf(run) : `Plan ${run.number}`}
          </Field>
          {run.request.note !== undefined && <Field label="Asked because">{run.request.note}</Field>}
          <LeftAlone />
          {run.cost !== null && (
            <Field label="Could be saved, whole plan" note={weakProofWords(run)}>
              {gapWords(run, currency)}
            </Field>
          )}
        </>
      )}
    </TitleBlock>
  );
};

/** What was flown this week: no plan touches it. */
const LeftAlone = () => {
  const seesFlights = mayOfAll(useMe(), 'approve flight', 'view');
  const week = useRead(seesFlights ? '/api/week' : null, weekSchema).value;
  const flown =
    week === undefined ? [] : freedomsOf(week.flights).never.filter(({ heldInPlace }) => !heldInPlace);
  if (flown.length === 0) return null;
  return (
    <Field label="Left alone" note="flown or away">
      {flown.map(({ id }) => id).join(', ')}
    </Field>
  );
};

const EndedRun = ({ run, calendar }: { readonly run: ListedPlan; readonly calendar: Calendar }) => {
  const ended = useRead(`/api/plans/${run.id}`, endedPlanSchema);
  const [leftOut, setLeftOut] = useState<readonly string[] | null>(null);
  const without = ended.value?.accepted?.leftOut ?? leftOut ?? [];
  const differences = useLast(
    useRead(run.cost === null ? null : differencesPath(run.id, without), differencesSchema),
  );
  if (run.cost === null)
    return (
      <Picture read={ended}>
        {(plan) => (
          <div className="work">
            <NoPlan run={run} plan={plan} />
          </div>
        )}
      </Picture>
    );
  return (
    <Picture read={bothOf(ended, differences)}>
      {([plan, found]) =>
        plan.outcome?.plan != null && (
          <Compared
            plan={plan}
            found={plan.outcome.plan}
            differences={found}
            leaving={{ leftOut: plan.accepted === null ? leftOut : null, set: setLeftOut }}
            calendar={calendar}
          />
        )
      }
    </Picture>
  );
};

const differencesPath = (id: string, without: readonly string[]): string =>
  `/api/plans/${id}/differences${without.length === 0 ? '' : `?without=${without.map(encodeURIComponent).join(',')}`}`;

interface ComparedProps {
  readonly plan: EndedPlan;
  readonly found: FoundPlan;
  readonly differences: Differences;
  readonly leaving: Leaving;
  readonly calendar: Calendar;
}

const Compared = ({ plan, found, differences, leaving, calendar }: ComparedProps) => {
  const currency = useSettings().value?.data.currency ?? '';
  const numbers = new Map(plan.accepted?.flights.map(({ planned, flight }) => [planned, flight]));
  const groups = differenceGroups(differences, calendar.day, numbers);
  const { leftOut } = leaving;
  const onTick = (key: string, taken: boolean) =>
    leaving.set(taken ? (leftOut ?? []).filter((each) => each !== key) : [...(leftOut ?? []), key]);
  return (
    <>
      <p className="compare-finding">{findingOf(differences, currency)}</p>
      <AcceptedLine plan={plan} differences={differences} />
      <NewerLine id={plan.id} calendar={calendar} />
      <div
        className="work-and-side on-landscape compare"
        style={{ '--print-scale': printScale(groups) } as React.CSSProperties}
      >
        {/* biome-ignore lint/a11y/noNoninteractiveTabindex: scrolled by key */}
        <section className="work" aria-label="Differences" tabIndex={0}>
          <DifferenceList {...{ groups, currency }} ticks={leftOut === null ? null : { leftOut, onTick }} />
          <div className="compare-under">
            <LevelGraph differences={differences} calendar={calendar} />
            <PlanNotes found={found} differences={differences} calendar={calendar} />
          </div>
        </section>
        {/* biome-ignore lint/a11y/noNoninteractiveTabindex: scrolled by key */}
        <aside className="side" aria-label="Totals and levels" tabIndex={0}>
          <TotalsTable
            differences={differences}
            currency={currency}
            firstDay={calendar.day(differences.asOf)}
          />
          <LowestLevels
            lowest={differences.lowest}
            lastDay={calendar.day(differences.lastDay)}
            laterIdeas={differences.laterIdeas}
          />
          <p className="slate">Planning figures. The commander's approved data decide.</p>
        </aside>
      </div>
      <AcceptFoot {...{ plan, found, differences, groups, leaving }} />
      <PrintedFoot>
        A proposal until it is accepted; planning figures: the commander's approved data decide.
      </PrintedFoot>
    </>
  );
};
