import { useState } from 'react';
import { Button, Choice, type Column, EmptyLine, Lines, MessageLine } from '../../../ui/index.js';
import type { FieldSpec } from '../form/field-spec.js';
import { isTheOne, type Section, specOf } from '../sections.js';
import { cellWords, fieldsIn } from './cell-words.js';
import type { Keeper, KeptLine } from './kept.js';
import { KeptForm, type KeptFormProps } from './kept-form.js';

interface KeptListProps extends Pick<KeptFormProps, 'currency' | 'consequence' | 'offBecause' | 'begin'> {
  readonly section: Section;
  readonly keeper: Keeper;
  /** Which one stands in the form: its id, `new`, or none. */
  readonly at: string | undefined;
  readonly open: (id: string | undefined) => void;
  /** Invented ones that a new one may be begun from. */
  readonly examples?: readonly KeptLine[];
}

/** All things of a kind at the left, one of them as a form at the right. */
export const KeptList = (props: KeptListProps) => {
  const { section, keeper, at, open, currency, consequence, offBecause, begin, examples = [] } = props;
  const [done, setDone] = useState<string>();
  const [begun, setBegun] = useState<KeptLine>();
  const only = isTheOne(section);
  const line = keeper.lines.find(({ id }) => id === (only ? 'current' : at)) ?? null;
  const isForm = only || at === 'new' || line !== null;
  const finish = (words: string) => {
    setDone(words);
    setBegun(undefined);
    open(undefined);
  };
  // In the place of whatever was typed there.
  const beginFrom = (example: KeptLine) => {
    keeper.unsaved?.keep(null, example.data);
    setBegun(example);
  };
  const goTo = (id: string | undefined) => {
    setDone(undefined);
    setBegun(undefined);
    keeper.clear();
    open(id);
  };
  const leave = () => goTo(undefined);
  return (
    <div className={`set-up-kept ${only ? 'only' : ''}`}>
      {!only && (
        <div className="set-up-list">
          <LinesOf section={section} keeper={keeper} current={at} currency={currency} open={goTo} />
          <Button onPress={() => goTo('new')} offBecause={offBecause}>
            New {section.one}
          </Button>
          {done !== undefined && <MessageLine kind="note" what={done} />}
        </div>
      )}
      {isForm && (
        <div className="set-up-one">
          {only && done !== undefined && <MessageLine kind="note" what={done} />}
          {line === null && examples.length > 0 && (
            <Examples examples={examples} one={section.one} choose={beginFrom} />
          )}
          <KeptForm
            key={`${line?.id ?? 'new'} ${only ? line?.version : ''} ${begun?.id ?? ''}`}
            section={section}
            keeper={keeper}
            line={line}
            begin={begun?.data ?? begin}
            currency={currency}
            offBecause={offBecause}
            onDone={finish}
            onClose={only ? undefined : leave}
            consequence={consequence}
          />
        </div>
      )}
    </div>
  );
};

const LinesOf = ({
  section,
  keeper,
  current,
  currency,
  open,
}: Pick<KeptListProps, 'section' | 'keeper' | 'currency'> & {
  current: string | undefined;
  open: (id: string) => void;
}) => {
  const spec = specOf(section, currency);
  const fields = section.columns.flatMap((key) => fieldsIn(spec).filter((field) => field.key === key));
  if (keeper.lines.length === 0)
    return (
      <>
        <h2>{section.title}</h2>
        <EmptyLine>No {section.one} yet.</EmptyLine>
      </>
    );
  const link = ({ id }: KeptLine, words: string) => (
    <button type="button" className="plain-link" onClick={() => open(id)}>
      {words}
    </button>
  );
  const name: readonly Column<KeptLine>[] =
    section.named === null
      ? []
      : [{ head: nameHead(section, spec), heads: true, cell: (line) => link(line, line.id) }];
  const cells = fields.map(
    (field, at): Column<KeptLine> => ({
      head: section.heads[field.key] ?? field.label,
      figures: field.kind === 'number',
      heads: section.named === null && at === 0,
      cell: (line) => {
        const words = cellWords(field, line.data[field.key]);
        return section.named === null && at === 0 ? link(line, words) : words;
      },
    }),
  );
  const isKept = keeper.lines.some(({ version }) => version !== undefined);
  const last: readonly Column<KeptLine>[] = isKept
    ? [
        { head: 'Owner', wide: true, cell: ({ changedBy }) => changedBy ?? 'import' },
        { head: 'Version', figures: true, cell: ({ version }) => version },
      ]
    : [];
  return (
    <Lines
      caption={section.title}
      rows={inOrder(section, keeper.lines)}
      keyOf={({ id }) => id}
      isCurrent={({ id }) => id === current}
      columns={[...name, ...cells, ...last]}
    />
  );
};

const nameHead = ({ named }: Section, spec: FieldSpec): string =>
  named?.length === 1 ? (fieldsIn(spec).find(({ key }) => key === named[0])?.label ?? 'Name') : 'Name';

/** Dated things by day, the others as they are kept. */
const inOrder = ({ columns }: Section, lines: readonly KeptLine[]): readonly KeptLine[] =>
  columns[0] !== 'date'
    ? lines
    : [...lines].sort((a, b) => String(a.data.date).localeCompare(String(b.data.date)));

interface ExamplesProps {
  readonly examples: readonly KeptLine[];
  readonly one: string;
  readonly choose: (line: KeptLine) => void;
}

const Examples = ({ examples, one, choose }: ExamplesProps) => (
  <div className="set-up-examples">
    <Choice
      label={`Begin from ${one === 'rules' ? '' : 'an '}invented ${one}`}
      value=""
      options={[
        ['', 'Choose...'],
        ...examples.map(({ id }) => [id, id === 'current' ? 'the invented one' : id] as const),
      ]}
      onChange={(id) => choose(examples.find((each) => each.id === id)!)}
    />
    <small>Invented figures: put your own in, from your approved manuals and tables.</small>
  </div>
);
