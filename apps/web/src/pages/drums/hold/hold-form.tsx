import { useState } from 'react';
import { useMay } from '../../../api/index.js';
import { Entry, inWords } from '../../../ui/index.js';
import { EntryForm } from '../acts/entry-form.js';
import type { HoldEffect } from '../drums-read.js';
import { type Subject, subjectWords } from './hold-words.js';

interface HoldFormProps {
  readonly of: Subject;
  readonly effect: HoldEffect;
  readonly onClose: () => void;
}

/** The last press, which repeats how many drums it takes out of use. */
export const HoldForm = ({ of, effect, onClose }: HoldFormProps) => {
  const may = useMay();
  const [reason, setReason] = useState('');
  const isMine = may('hold', 'drum' in of ? 'enter' : 'decide');
  const notMine = `Holding a whole ${subjectWords(of)} is for the dispatcher, the operations manager or fuel quality. You may hold one drum.`;
  const entry = !isMine
    ? notMine
    : reason.trim() === ''
      ? 'Write the reason: it goes to everybody.'
      : { of, reason: reason.trim() };
  return (
    <EntryForm
      title="Set the hold"
      titleUnseen
      kind="last"
      press={`Hold ${inWords(effect.drums, 'drums')}`}
      path="/api/holds"
      entry={entry}
      onClose={onClose}
    >
      <Entry
        label="Reason"
        value={reason}
        onChange={setReason}
        input={{ maxLength: 300, placeholder: "Supplier's notice, water" }}
      />
    </EntryForm>
  );
};
