import { useState } from 'react';
import { put, remove, useAct, useList, useMay } from '../../../api/index.js';
import {
  Button,
  bothOf,
  Choice,
  Entry,
  Field,
  Fields,
  inWords,
  MessageLine,
  Picture,
  ProblemLine,
} from '../../../ui/index.js';
import { CsvPanel } from '../files/csv-panel.js';
import { type KeptLine, lineSchema } from '../kept/kept.js';
import { TouchedFlights } from '../kept/touched-flights.js';
import { proposalSchema, Signatures } from '../people/signatures-page.js';
import { DraftFindings } from './draft-findings.js';
import { cellsOf, type LimitCells, type LimitRow, limitOf, limitRows, references } from './limit-cells.js';
import { LimitTable } from './limit-table.js';
import { usePayload } from './payload-read.js';

/** The whole table of strip limits; a change takes two people. */
export const LimitsPage = () => {
  const places = useList('/api/places', lineSchema);
  const types = useList('/api/aircraft-types', lineSchema);
  const limits = useList('/api/strip-limits', lineSchema);
  return (
    <Picture read={bothOf(bothOf(places, types), limits)}>
      {([[at, of], kept]) => <Limits places={at} types={of} limits={kept} />}
    </Picture>
  );
};

type LimitsProps = Readonly<Record<'places' | 'types' | 'limits', readonly KeptLine[]>>;

const Limits = ({ places, types, limits }: LimitsProps) => {
  const rows = limitRows(places, types, limits);
  const bases = places.filter(({ data }) => data.kind === 'base').map(({ id }) => id);
  const [base, setBase] = useState(bases[0] ?? '');
  const [reference, setReference] = useState('');
  const [draft, setDraft] = useState<Readonly<Record<string, LimitCells>>>({});
  const may = useMay()('strip limits', 'enter');
  const proposals = useList('/api/proposals', proposalSchema).value;
  const waiting = (proposals ?? []).filter(isAboutLimits);
  const changed = rows.filter((row) => isChanged(row, draft));
  const asked = changed.flatMap((row) => {
    const limit = limitOf(row, draft[row.id]!, reference.trim() === '' ? 'draft' : reference.trim());
    return limit === null ? [] : [{ id: row.id, limit }];
  });
  const inForce = usePayload([]);
  const checked = usePayload(asked);
  const faults = asked.length === 0 ? [] : (checked?.faults ?? []);
  const [done, setDone] = useState<string>();
  const propose = useAct(
    async () => {
      for (const row of changed) await send(row, limitOf(row, draft[row.id]!, reference.trim()));
      return changed.length;
    },
    '/api/proposals',
    '/api/strip-limits',
  );
  const submit = async () => {
    const count = await propose.run();
    if (count === undefined) return;
    setDraft({});
    setDone(
      `${count} ${count === 1 ? 'limit waits' : 'limits wait'} for a second person. Nothing is in force yet.`,
    );
  };
  return (
    <div className="set-up-limits-page">
      <div className="set-up-list">
        <Fields>
          <Field label="In force">{references(limits) || 'no table yet'}</Field>
          <Field label="Draft">{changed.length === 0 ? 'no change' : inWords(changed.length, 'lines')}</Field>
          <Field label="Waiting">{waitingWords(proposals && waiting.length)}</Field>
        </Fields>
        <div className="set-up-inline">
          <Choice
            label="Drums from"
            value={base}
            options={bases.map((code) => [code, code] as const)}
            onChange={setBase}
          />
          {may && (
            <Entry
              label="Reference of what you change: table and revision"
              value={reference}
              onChange={setReference}
            />
          )}
          {may && (
            <Button
              kind="main"
              busy={propose.isSending}
              offBecause={offWords(changed.length, faults.length, reference)}
              onPress={() => void submit()}
            >
              Ask for signatures
            </Button>
          )}
        </div>
        <ProblemLine problem={propose.problem} />
        {done !== undefined && changed.length === 0 && waiting.length > 0 && (
          <MessageLine kind="note" what={done} />
        )}
        <LimitTable
          rows={rows}
          draft={draft}
          proposed={proposedCells(waiting)}
          faults={faults}
          base={base}
          drums={(faults.length > 0 ? inForce : checked)?.drums.filter((row) => row.base === base) ?? []}
          mayDraft={may}
          onType={(row, column, text) =>
            setDraft({
              ...draft,
              [row.id]: { ...(draft[row.id] ?? cellsOf(row.line?.data)), [column]: text },
            })
          }
        />
        <p>
          <small>
            Every figure is in lb. Planning figures: the commander's approved data decide. Up and Down move,
            Esc leaves the figure in force; all four empty: not approved.
          </small>
        </p>
      </div>
      <div className="set-up-one">
        <DraftFindings
          faults={faults}
          inForce={inForce?.drums ?? []}
          draft={checked?.drums ?? []}
          isDraft={asked.length > 0}
        />
        {faults.length === 0 &&
          changed.map((row) => (
            <TouchedFlights
              key={row.id}
              kind="strip-limits"
              id={row.id}
              data={limitOf(row, draft[row.id]!, reference.trim() === '' ? 'draft' : reference.trim())}
            />
          ))}
        {waiting.length > 0 && <Signatures proposals={waiting} caption="Waiting for signatures" />}
        <CsvPanel of="strip-limits" title="Strip limits" />
      </div>
    </div>
  );
};

/** Undefined: not read yet. */
const waitingWords = (count: number | undefined): string =>
  count === undefined ? 'Checking...' : count === 0 ? 'nothing' : `${count} to be signed`;

const isChanged = (row: LimitRow, draft: Readonly<Record<string, LimitCells>>): boolean => {
  const typed = draft[row.id];
  return typed !== undefined && JSON.stringify(typed) !== JSON.stringify(cellsOf(row.line?.data));
};

const send = ({ id, line }: LimitRow, limit: object | null) => {
  const version = line?.version ?? 'new';
  return limit === null
    ? remove(`/api/strip-limits/${id}`, undefined, { version })
    : put(`/api/strip-limits/${id}`, limit, { version });
};

const offWords = (changed: number, faults: number, reference: string): string | undefined => {
  if (changed === 0) return 'Nothing is changed yet.';
  if (faults > 0) return 'A fault keeps the draft back.';
  return reference.trim() === '' ? 'Give the table and revision that the figures come from.' : undefined;
};

const isAboutLimits = ({ subject }: { readonly subject: string }): boolean =>
  subject.startsWith('strip limit');

const proposedCells = (waiting: readonly { readonly payload: Readonly<Record<string, unknown>> }[]) =>
  Object.fromEntries(
    waiting.flatMap(({ payload: { id, data } }) =>
      typeof id === 'string'
        ? [[id, cellsOf((data ?? undefined) as Record<string, unknown> | undefined)]]
        : [],
    ),
  );
