import { type ReactNode, useMemo, useState } from 'react';
import { type ApiProblem, type FieldFault, useCalendar, useTerritoryTime } from '../../../api/index.js';
import { Button, capital, MessageLine, ProblemLine } from '../../../ui/index.js';
import type { FieldSpec } from '../form/field-spec.js';
import { FormAround } from '../form/form-around.js';
import { OneForm } from '../form/one-form.js';
import { FormFields } from '../form/schema-form.js';
import { documentOf, type Typed, typedOf } from '../form/typed.js';
import { labelsAt, typedFault, unmended } from '../form/typed-faults.js';
import { doubtsOfOne, isTheOne, type Section, specOf } from '../sections.js';
import type { Keeper, KeptLine } from './kept.js';

export interface KeptFormProps {
  readonly section: Section;
  readonly keeper: Keeper;
  /** Null: a new one. */
  readonly line: KeptLine | null;
  /** What a new one begins as. */
  readonly begin?: unknown;
  readonly currency: string;
  readonly offBecause?: string | undefined;
  readonly onDone: (words: string) => void;
  /** Absent: it is always there. */
  readonly onClose?: (() => void) | undefined;
  /** What a change would do, shown before it is made. */
  readonly consequence?: ((data: unknown, line: KeptLine | null) => ReactNode) | undefined;
}

/** One thing, every field of it, with what is wrong by field. */
export const KeptForm = (props: KeptFormProps) => {
  const { section, keeper, line, begin, currency, offBecause, onDone, onClose, consequence } = props;
  const spec = useMemo(() => specOf(section, currency), [section, currency]);
  const first = line?.data ?? begin ?? {};
  const [typed, setTyped] = useState(() => typedOf(spec, keeper.unsaved?.of(line) ?? first));
  // What is saved is a change of what was opened: somebody else's change meanwhile is told, not laid over.
  const [opened] = useState(line);
  const data = documentOf(spec, typed);
  const doubts = doubtsOfOne(section, data).map((doubt) =>
    typedFault(spec, { ...doubt, problem: capital(doubt.problem) }),
  );
  const [refused, setRefused] = useState<unknown>();
  const problem = keeper.problem && stillToMend(inTypedFigures(keeper.problem, spec), refused, data);
  const type = (next: Typed) => {
    const to = documentOf(spec, next);
    const isAsFirst = JSON.stringify(to) === JSON.stringify(documentOf(spec, typedOf(spec, first)));
    keeper.unsaved?.keep(opened, isAsFirst ? undefined : to);
    setTyped(next);
  };
  const save = async () => {
    setRefused(data);
    // Before it is made: after it, what it breaks is broken already.
    const touched = await keeper.touched?.(data, opened);
    const done = await keeper.save(data, opened);
    if (done === undefined) return;
    keeper.unsaved?.keep(opened, undefined);
    onDone(`${doneWords(section.one, done)}${touched ?? ''}`);
  };
  const takeOut = async () => {
    const done = await keeper.takeOut(opened!);
    if (done === undefined) return;
    keeper.unsaved?.keep(opened, undefined);
    onDone(
      done === 'saved' ? `The ${section.one} is taken out; its history stays.` : doneWords(section.one, done),
    );
  };
  const same =
    line !== null && JSON.stringify(documentOf(spec, typedOf(spec, line.data))) === JSON.stringify(data);
  const off = offBecause ?? (same ? 'Nothing is changed yet.' : undefined);
  return (
    <OneForm
      label={line === null ? `New ${section.one}` : `${section.title}: ${line.id}`}
      onSubmit={() => {
        if (off === undefined && !keeper.isSending) void save();
      }}
      onClose={onClose}
      problem={keeper.problem}
    >
      <h2>{headOf(section, line)}</h2>
      <ChangedLine line={line} opened={opened} />
      <FormAround
        value={{
          faultAt: (path) => wordsAt(problem?.faults ?? [], path),
          doubtAt: (path) => wordsAt(doubts, path),
          offered: keeper.offered,
        }}
      >
        <FormFields spec={spec} typed={typed} path="" onChange={type} />
      </FormAround>
      {!same && consequence?.(data, line)}
      <ProblemLine problem={problem && withLabels(problem, spec)} />
      <div className="set-up-acts">
        <Button kind="main" type="submit" busy={keeper.isSending} offBecause={off}>
          Save
        </Button>
        {keeper.unsaved?.of(line) !== undefined && (
          <Button onPress={() => type(typedOf(spec, first))}>Forget what was typed</Button>
        )}
        {line !== null && !isTheOne(section) && (
          <Button kind="grave" busy={keeper.isSending} offBecause={offBecause} onPress={() => void takeOut()}>
            Take out
          </Button>
        )}
        {onClose !== undefined && <Button onPress={onClose}>Leave it</Button>}
      </div>
    </OneForm>
  );
};

const headOf = ({ one, title, named }: Section, line: KeptLine | null): string => {
  if (named?.length === 0) return title;
  if (line === null) return `New ${one}`;
  return named === null ? `This ${one}` : `${capital(one)} ${line.id}`;
};

const doneWords = (one: string, done: 'saved' | 'waits for a second person'): string =>
  done === 'saved'
    ? `Saved: ${one}.`
    : `Not in force yet: the ${one} waits for a second person, under "Waiting for signatures".`;

const inTypedFigures = (problem: ApiProblem, spec: FieldSpec): ApiProblem =>
  problem.withFaults(problem.faults.map((fault) => typedFault(spec, fault)));

/** What was changed since it was refused is no longer told as a fault: Save says what is wrong then. */
const stillToMend = (problem: ApiProblem, refused: unknown, data: unknown): ApiProblem | undefined => {
  const faults = unmended(problem.faults, refused, data);
  return problem.faults.length > 0 && faults.length === 0 ? undefined : problem.withFaults(faults);
};

const withLabels = (problem: ApiProblem, spec: FieldSpec): ApiProblem =>
  problem.withFaults(problem.faults.map((fault) => ({ ...fault, path: labelsAt(spec, fault.path) })));

const wordsAt = (found: readonly FieldFault[], path: string): string | undefined => {
  const first = found.find((fault) => fault.path === path);
  return first === undefined ? undefined : `${first.problem} ${first.remedy}`;
};

const ChangedLine = ({ line, opened }: Record<'line' | 'opened', KeptLine | null>) => {
  const { date, time } = useCalendar();
  const territoryTime = useTerritoryTime();
  if (line?.version === undefined) return null;
  const { version, changedBy, changedAt = '' } = line;
  const at = territoryTime(changedAt);
  const who = `${changedBy ?? 'the program, at import'}, ${date(at)} ${time(at)}`;
  if (version !== opened?.version)
    return (
      <MessageLine
        what="Changed by somebody else meanwhile"
        why={`Version ${version} by ${who}.`}
        next="What you see here began before it: open it again."
      />
    );
  return (
    <p>
      <small>
        Version {version}, by {who}
      </small>
    </p>
  );
};
