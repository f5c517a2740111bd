import { useState } from 'react';
import { useMe } from '../../../api/index.js';
import { Entry, inWords } from '../../../ui/index.js';
import { EntryForm } from '../acts/entry-form.js';
import { type Subject, subjectWords } from './hold-words.js';

interface ReleaseFormProps {
  readonly of: Subject;
  readonly drums: number;
  readonly onClose: () => void;
}

/** The first of two: proposes the release, with what was found. */
export const ReleaseForm = ({ of, drums, onClose }: ReleaseFormProps) => {
  const { fullName } = useMe();
  const [reason, setReason] = useState('');
  const entry =
    reason.trim() === '' ? 'Write what was found.' : { kind: 'released', of, reason: reason.trim() };
  return (
    <EntryForm
      title={`Release ${subjectWords(of)}`}
      press={`Propose to release ${inWords(drums, 'drums')}`}
      entry={entry}
      onClose={onClose}
    >
      <div className="drums-two">
        <p>
          <small>First person of fuel quality</small>
          <br />
          <b>{fullName}</b>
        </p>
        <p className="drums-second">
          <small>Second person, at their own sign-in</small>
          <br />
          waits
        </p>
      </div>
      <Entry
        label="What was found"
        value={reason}
        onChange={setReason}
        input={{ maxLength: 300, placeholder: 'Samples clear, certificate number' }}
      />
    </EntryForm>
  );
};
