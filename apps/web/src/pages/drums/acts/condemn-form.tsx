import { useState } from 'react';
import { Entry, inWords } from '../../../ui/index.js';
import type { Drum } from '../drums-read.js';
import { whereWords } from '../facts.js';
import { EntryForm } from './entry-form.js';

interface CondemnFormProps {
  readonly drum: Drum;
  readonly onClose: () => void;
}

/** Rejected for good: only two people of fuel quality can take it back, by a correction. */
export const CondemnForm = ({ drum, onClose }: CondemnFormProps) => {
  const [reason, setReason] = useState('');
  const { number, litres, where } = drum;
  const entry =
    reason.trim() === '' ? 'Write the reason.' : { kind: 'condemned', drum: number, reason: reason.trim() };
  return (
    <EntryForm
      title={`Condemn ${number}`}
      kind="last"
      press={`Condemn ${number}`}
      entry={entry}
      onClose={onClose}
    >
      <p>
        <b>{inWords(litres, 'L')}</b> at {whereWords(where)} can never be used. Mark the drum with a large X.
        The book does not change until it is emptied.
      </p>
      <Entry label="Reason" value={reason} onChange={setReason} input={{ maxLength: 300 }} />
    </EntryForm>
  );
};
