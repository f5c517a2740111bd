import type { Movement } from '@drumline/stock';
import { useList } from '../../../api/index.js';
import { lineSchema, useCurrency } from '../kept/kept.js';
import { changedDrums, usePayload } from '../limits/payload-read.js';
import { type Section, sections, specOf } from '../sections.js';
import { changesIn, fieldChanges, type ProposedChange } from './signed-words.js';

interface WhatIsSignedProps {
  readonly proposal: { readonly subject: string; readonly payload: Readonly<Record<string, unknown>> };
}

/** What a signer puts a name to: every field that changes, old and new. */
export const WhatIsSigned = ({ proposal: { subject, payload } }: WhatIsSignedProps) => {
  const changes = changesIn(payload);
  const limits = changes.filter(({ kind }) => kind === 'strip-limits');
  return (
    <>
      {subject}
      {changes.map((change) => (
        <Change key={change.id} change={change} isOneOfMany={changes.length > 1} />
      ))}
      {limits.length > 0 && <Drums limits={limits} />}
      {changes.length === 0 && <Words payload={payload} />}
    </>
  );
};

interface ChangeProps {
  readonly change: ProposedChange;
  readonly isOneOfMany: boolean;
}

const Change = ({ change: { kind, id, data }, isOneOfMany }: ChangeProps) => {
  const kept = useList(`/api/${kind}`, lineSchema).value;
  const list = listOf(kind);
  const currency = useCurrency();
  if (list === undefined) return <pre>{JSON.stringify(data, null, 1)}</pre>;
  if (kept === undefined) return <p>Reading what stands now.</p>;
  const before = kept.find((line) => line.id === id)?.data ?? null;
  return (
    <>
      {(isOneOfMany || before === null) && (
        <p>
          {isOneOfMany && id} {before === null && 'new'}
        </p>
      )}
      <ul className="signed-changes" aria-label={`What changes: ${id}`}>
        {fieldChanges(specOf({ list }, currency), before, data).map((words) => (
          <li key={words}>{words}</li>
        ))}
      </ul>
    </>
  );
};

/** The passenger approvals have no page at Set-up. */
const listOf = (kind: string): Section['list'] | undefined =>
  kind === 'authority-approvals' ? 'approvals' : sections.find(({ name }) => name === kind)?.list;

const noChange: Parameters<typeof usePayload>[0] = [];

/** Drums each way before and after, dry and soft. */
const Drums = ({ limits }: { readonly limits: readonly ProposedChange[] }) => {
  const inForce = usePayload(noChange)?.drums;
  const asDrafted = usePayload(
    limits.flatMap(({ id, data }) => (data === null ? [] : [{ id, limit: data }])),
  )?.drums;
  if (inForce === undefined || asDrafted === undefined) return null;
  const words = changedDrums(inForce, asDrafted);
  return (
    <p>
      <small>
        {words.length === 0 ? 'No drum more or less is carried.' : `Dry, soft: ${words.join('; ')}.`}
      </small>
    </p>
  );
};

/** What is agreed of an entry or a difference case. */
const Words = ({ payload }: Pick<WhatIsSignedProps['proposal'], 'payload'>) => {
  const movement = payload.movement as Partial<Extract<Movement, { reason: string }>> | undefined;
  const words = [payload.cause, payload.words, movement?.reason].filter((word) => typeof word === 'string');
  return words.length === 0 ? null : <p>{words.join(': ')}</p>;
};
