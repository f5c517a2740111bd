import { instantOf } from '@drumline/units';
import { type ReactNode, useEffect, useRef, useState } from 'react';
import { type ApiProblem, useCalendar, useSettings } from '../../../api/index.js';
import { Button, Choice, Entry, MessageLine, ProblemLine, useFocusBack } from '../../../ui/index.js';
import { atTheScreen, instantToday, type Outcome, type Source, useEntry } from './entered.js';

interface EntryFormProps {
  readonly title: string;
  /** The title stands elsewhere on the page. */
  readonly titleUnseen?: boolean;
  /** What is sent, without who and when; a text: why it cannot be sent yet. */
  readonly entry: object | string;
  readonly press: string;
  readonly kind?: 'main' | 'last';
  readonly path?: string;
  /** It may have been heard by radio or read from paper. */
  readonly fromElsewhere?: boolean;
  readonly onClose: () => void;
  readonly children: ReactNode;
}

/** An entry to the ledger: its fields, how it came to the desk, and what became of it. Esc leaves it. */
export const EntryForm = (props: EntryFormProps) => {
  const {
    title,
    entry,
    press,
    kind = 'main',
    path,
    fromElsewhere = false,
    titleUnseen,
    onClose,
    children,
  } = props;
  const form = useRef<HTMLFormElement>(null);
  const [source, setSource] = useState(atTheScreen);
  const [outcome, setOutcome] = useState<Outcome>();
  const { run, isSending, problem } = useEntry(path);
  const happened = useHappened(source);
  useFocusBack(form);
  useEffect(
    () => form.current?.querySelector<HTMLElement>('input, select')?.focus({ preventScroll: true }),
    [],
  );
  const why = typeof entry === 'string' ? entry : happened.fault;
  const send = async () => {
    if (typeof entry === 'string' || why !== undefined || isSending) return;
    setOutcome(undefined);
    setOutcome(await run(entry, source, happened.instant));
  };
  return (
    <form
      ref={form}
      className={`drums-form ${titleUnseen ? 'drums-one-line' : ''}`}
      aria-label={title}
      onSubmit={(event) => {
        event.preventDefault();
        void send();
      }}
      onKeyDown={(event) => event.key === 'Escape' && onClose()}
    >
      <h2 className={titleUnseen ? 'unseen' : undefined}>{title}</h2>
      {children}
      {fromElsewhere && <SourceFields source={source} onChange={setSource} fault={happened.fault} />}
      <OutcomeLines outcome={outcome} problem={problem} />
      <div className="drums-acts">
        <Button kind={kind} type="submit" busy={isSending} offBecause={why}>
          {press}
        </Button>
        <Button onPress={onClose}>{outcome === undefined ? 'Leave it' : 'Close'}</Button>
      </div>
    </form>
  );
};

const useHappened = ({ at }: Source): { readonly instant: string | null; readonly fault?: string } => {
  const { today } = useCalendar();
  const zone = useSettings().value?.data.timeZone ?? 'UTC';
  if (at === '') return { instant: null };
  const instant = instantToday(at, (clock) => instantOf(today, clock, zone));
  return instant === null ? { instant, fault: 'Write the time as 06:50.' } : { instant };
};

interface SourceFieldsProps {
  readonly source: Source;
  readonly onChange: (source: Source) => void;
  readonly fault: string | undefined;
}

const SourceFields = ({ source, onChange, fault }: SourceFieldsProps) => (
  <div className="drums-row">
    <Choice
      label="How it came"
      value={source.means}
      options={[
        ['screen', 'seen by me'],
        ['radio', 'by radio'],
        ['paper', 'from paper'],
      ]}
      onChange={(means) => onChange({ ...source, means })}
    />
    <Entry label="Who says so, if not you" value={source.by} onChange={(by) => onChange({ ...source, by })} />
    <Entry
      label="Time today, if not now"
      value={source.at}
      fault={fault}
      onChange={(at) => onChange({ ...source, at: at.trim() })}
      input={{ placeholder: '06:50', maxLength: 5 }}
    />
  </div>
);

const OutcomeLines = ({
  outcome,
  problem,
}: {
  readonly outcome: Outcome | undefined;
  readonly problem: ApiProblem | undefined;
}) => (
  <>
    <ProblemLine problem={problem} />
    {outcome?.outcome === 'in the ledger' && <MessageLine kind="note" what="In the ledger" />}
    {outcome?.outcome === 'proposed' && (
      <MessageLine
        kind="note"
        what="Waits for a second person of fuel quality"
        why="Nothing has changed yet."
        next="They find it under Held."
      />
    )}
    {outcome?.raised?.map((raised) => (
      <MessageLine key={raised.id} kind="note" what={raised.what} why={raised.whatNext} />
    ))}
  </>
);
