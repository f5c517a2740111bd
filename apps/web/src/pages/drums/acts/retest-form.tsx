import { isValidDate } from '@drumline/units';
import { useState } from 'react';
import { Choice, Entry } from '../../../ui/index.js';
import { EntryForm } from './entry-form.js';

interface RetestFormProps {
  readonly of: { readonly drum: string };
  /** Null: it is not known. */
  readonly batch: string | null;
  readonly onClose: () => void;
}

/** A laboratory has passed the fuel: two people of fuel quality put their names to it. */
export const RetestForm = ({ of, batch, onClose }: RetestFormProps) => {
  const [what, setWhat] = useState<'drum' | 'batch'>(batch === null ? 'drum' : 'batch');
  const [certificate, setCertificate] = useState('');
  const [due, setDue] = useState('');
  const entry =
    certificate.trim() === '' || !isValidDate(due)
      ? 'The certificate and the next date are needed.'
      : {
          kind: 'retest passed',
          of: what === 'batch' && batch !== null ? { batch } : of,
          certificate: certificate.trim(),
          retestDue: due,
        };
  return (
    <EntryForm title="Retest passed" press="Propose: retest passed" entry={entry} onClose={onClose}>
      <div className="drums-row">
        <Choice
          label="What was tested"
          value={what}
          options={[
            ...(batch === null ? [] : [['batch', `batch ${batch}`] as const]),
            ['drum', `drum ${of.drum} alone`] as const,
          ]}
          onChange={setWhat}
        />
        <Entry label="Certificate of the laboratory" value={certificate} onChange={setCertificate} />
        <Entry label="Last day of use" value={due} onChange={setDue} input={{ type: 'date' }} />
      </div>
    </EntryForm>
  );
};
