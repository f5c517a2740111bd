import { Link, useLocation } from 'wouter';
import { z } from 'zod';
import { useAct, useMay, useNow, useRead, useSettings } from '../../../api/index.js';
import { Button, MessageLine, ProblemLine } from '../../../ui/index.js';
import { KeptList } from '../kept/kept-list.js';
import { isTheOne, type Section, sectionAt } from '../sections.js';
import { bringIn } from './bring-in.js';
import { doubtsIn, exampleLines, linesIn, missingIn, scenarioOf } from './draft.js';
import { forgetDraft, useDraft, useDraftKeeper, useUnsaved } from './draft-store.js';
import { below, MissingList } from './missing-list.js';

/** In the order in which each can speak of those before it; the last ones a first plan can do without. */
const steps: readonly Section[] = [
  'settings',
  'policy',
  'places',
  'bases',
  'caches',
  'aircraftTypes',
  'stripLimits',
  'aircraft',
  'pilots',
  'programmes',
  'helicopters',
  'helicopterTasks',
].map(sectionAt);

/** The smallest territory, by forms: nothing is written before it is whole, and one act brings it in. */
export const BeginPage = ({ at: [name, id] }: { readonly at: readonly string[] }) => {
  const draft = useDraft();
  const currency = String((draft.settings as { currency?: string } | undefined)?.currency ?? 'cr');
  const now = useNow();
  const unsavedIn = useUnsaved();
  const unsaved = steps.filter((step) => unsavedIn(step) !== undefined);
  const missing = missingIn(draft, now);
  const section = steps.find((step) => step.name === name) ?? steps[0]!;
  const next = steps[steps.indexOf(section) + 1];
  const [, go] = useLocation();
  const bring = useAct(() => bringIn(scenarioOf(draft, now), 'time of day'), '/api/');
  const mayBring = useMay()('import and export', 'enter');
  const isThere = useSettings().value !== undefined;
  const off = !mayBring
    ? 'The operations manager or set-up does this.'
    : isThere
      ? 'A territory is set up here already: see the top of the page.'
      : missing.length > 0
        ? 'Something is missing still: see the list.'
        : unsaved.length > 0
          ? `Typed and not saved: ${unsaved.map(({ title }) => title).join('; ')}. Save it there, or forget it.`
          : undefined;
  const submit = async () => {
    if ((await bring.run()) === undefined) return;
    forgetDraft();
    go('/set-up');
  };
  if (isThere && Object.keys(draft).length === 0 && unsaved.length === 0) return <AlreadyThere />;
  return (
    <div className="set-up-begin">
      {isThere && <AlreadyThere isBegun />}
      <div className="set-up-steps">
        <Link href="/set-up">Where it stands</Link>
        <ol aria-label="Steps">
          {steps.map((step) => (
            <li key={step.name}>
              <Link href={wayTo(step, unsavedIn(step))} aria-current={step === section ? 'step' : undefined}>
                {step.title}
              </Link>{' '}
              <small>
                {linesIn(draft, step).length > 0 ? `${linesIn(draft, step).length}` : 'none yet'}
                {unsavedIn(step) !== undefined && ', one not saved'}
              </small>
            </li>
          ))}
        </ol>
        {next !== undefined && (
          <p>
            Next step: <Link href={wayTo(next, unsavedIn(next))}>{next.title}</Link>
          </p>
        )}
      </div>
      <Step key={section.name} section={section} at={id} currency={currency} />
      <aside className="set-up-missing">
        <MissingList
          missing={missing}
          to={(list, id) => `/set-up/begin/${list}${below(id)}`}
          currency={currency}
        />
        <Doubts doubts={doubtsIn(draft, now)} />
        <p>
          <small>What you type stays in this browser, saved or not, until the territory is brought in.</small>
        </p>
        <Button kind="main" busy={bring.isSending} offBecause={off} onPress={() => void submit()}>
          Bring the territory in
        </Button>
        <ProblemLine problem={bring.problem} />
      </aside>
    </div>
  );
};

const Doubts = ({ doubts }: { readonly doubts: readonly string[] }) =>
  doubts.length > 0 && (
    <section className="section" aria-label="Worth a look">
      <h2>Worth a look</h2>
      <ul>
        {doubts.map((words) => (
          <li key={words}>{words}</li>
        ))}
      </ul>
    </section>
  );

/** A second territory is never begun; what was begun before the other one came stays to be looked at. */
const AlreadyThere = ({ isBegun = false }: { readonly isBegun?: boolean }) => (
  <div className="set-up-already">
    <MessageLine
      kind="note"
      what="A territory is set up here already"
      why="There is one to an installation, so no other is begun here."
      next={isBegun ? 'What you began stays in this browser, to copy from; it cannot be brought in.' : ''}
    >
      <Link className="button small" href="/set-up">
        Open Set-up
      </Link>
    </MessageLine>
  </div>
);

/** Where something was typed and not saved, the step opens at it. */
const wayTo = (section: Section, id?: string): string =>
  `/set-up/begin/${section.name}${isTheOne(section) ? '' : below(id)}`;

const exampleSchema = z.record(z.string(), z.unknown());

interface StepProps {
  readonly section: Section;
  readonly at: string | undefined;
  readonly currency: string;
}

const Step = ({ section, at, currency }: StepProps) => {
  const keeper = useDraftKeeper(section);
  const [, go] = useLocation();
  const example = useRead('/api/demo/example', exampleSchema).value;
  return (
    <KeptList
      section={section}
      keeper={keeper}
      at={at}
      open={(id) => go(wayTo(section, id))}
      currency={currency}
      examples={example === undefined ? [] : exampleLines(example, section)}
    />
  );
};
