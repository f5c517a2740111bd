import type { HistoryEntry } from '@drumline/stock';
import { useState } from 'react';
import { Entry } from '../../../ui/index.js';
import { sentenceOf } from '../sentences.js';
import { EntryForm } from './entry-form.js';

interface CorrectFormProps {
  readonly entry: HistoryEntry;
  readonly onClose: () => void;
}

/** A new entry reverses the old one; both show. What should stand instead is entered anew. */
export const CorrectForm = ({ entry: { movement }, onClose }: CorrectFormProps) => {
  const [reason, setReason] = useState('');
  const entry =
    reason.trim() === ''
      ? 'Write what was wrong.'
      : { kind: 'corrected', corrects: movement.id, reason: reason.trim() };
  return (
    <EntryForm
      title="Correct an entry"
      kind="last"
      press="Reverse this entry"
      entry={entry}
      onClose={onClose}
    >
      <blockquote className="drums-script">{sentenceOf(movement)}</blockquote>
      <p>
        Its figures are taken back by a new entry; the first one still shows, struck through. What should
        stand instead is entered anew.
      </p>
      <Entry label="What was wrong" value={reason} onChange={setReason} input={{ maxLength: 300 }} />
    </EntryForm>
  );
};
