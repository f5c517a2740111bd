import { useState } from 'react';
import { useList, useMay, useMe } from '../../../api/index.js';
import { Entry, inWords } from '../../../ui/index.js';
import { EntryForm } from '../acts/entry-form.js';
import { proposalSchema } from '../drums-read.js';
import { Agreement } from './agreement.js';
import { releaseOf, type Subject, subjectWords } from './hold-words.js';

/** A hold is released by two of fuel quality: the first proposes with the reason, the second agrees. */
export const ReleaseForm = ({ of, drums }: { readonly of: Subject; readonly drums: number }) => {
  const may = useMay();
  const { fullName } = useMe();
  const [reason, setReason] = useState('');
  const proposals = useList('/api/proposals', proposalSchema).value;
  const open = proposals && releaseOf(proposals, of);
  if (open !== undefined) return <Agreement proposal={open} drums={drums} />;
  if (!may('release hold', 'decide'))
    return <p className="drums-note">Two people of fuel quality release it. Nobody has proposed that yet.</p>;
  const entry =
    reason.trim() === '' ? 'Write what was found.' : { kind: 'released', of, reason: reason.trim() };
  return (
    <EntryForm
      title={`Release ${subjectWords(of)}`}
      press={`Propose to release ${inWords(drums, 'drums')}`}
      entry={entry}
      onClose={() => setReason('')}
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
