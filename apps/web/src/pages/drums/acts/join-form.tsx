import { useState } from 'react';
import { useRead } from '../../../api/index.js';
import { Entry, inWords, ProblemLine } from '../../../ui/index.js';
import { drumLifeSchema } from '../drums-read.js';
import { whereWords } from '../facts.js';
import { EntryForm } from './entry-form.js';

interface JoinFormProps {
  readonly provisional: string;
  readonly onClose: () => void;
}

/** The number of a drum that could not be read is now known: both become one drum. */
export const JoinForm = ({ provisional, onClose }: JoinFormProps) => {
  const [unread, setUnread] = useState(provisional);
  const [real, setReal] = useState('');
  const [from, to] = [unread.trim(), real.trim()];
  const entry =
    from === '' || to === '' || from === to
      ? 'Two different numbers are needed.'
      : { kind: 'joined', provisional: from, drum: to };
  return (
    <EntryForm
      title="Bring two numbers together"
      press={to === '' ? 'They are one drum' : `${from} is drum ${to}`}
      entry={entry}
      fromElsewhere
      onClose={onClose}
    >
      <div className="drums-row">
        <div>
          <Entry label="Provisional number" value={unread} onChange={setUnread} />
          <Known number={from} />
        </div>
        <div>
          <Entry label="The number it has" value={real} onChange={setReal} />
          <Known number={to} />
        </div>
      </div>
      <p>Everything that was entered under the first number counts for the second from then on.</p>
    </EntryForm>
  );
};

/** What the ledger knows of a number, before it is joined. */
const Known = ({ number }: { readonly number: string }) => {
  const { value, problem } = useRead(
    number.length < 3 ? null : `/api/drums/${encodeURIComponent(number)}`,
    drumLifeSchema,
  );
  if (problem?.status === 404) return <small>The ledger has not heard of {number}.</small>;
  if (problem !== undefined) return <ProblemLine problem={problem} />;
  if (value === undefined) return null;
  return (
    <small>
      {value.number}: {whereWords(value.where)}, {value.content}, {inWords(value.litres, 'L')}
    </small>
  );
};
