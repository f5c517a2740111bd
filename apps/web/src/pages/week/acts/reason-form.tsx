import { useState } from 'react';
import type { Calendar } from '../../../api/index.js';
import { ActForm, Button, Choice, Entry, figure, Lines, levelsWith } from '../../../ui/index.js';
import type { Consequence } from '../card/card-read.js';
import { IfDeclined } from '../card/if-declined.js';
import type { WeekFlight } from '../week-read.js';
import { type ReasonWord, reasons, reasonText } from './flight-acts.js';

interface ReasonFormProps {
  readonly flight: WeekFlight;
  readonly act: 'decline' | 'call off';
  readonly consequence: Consequence | null;
  readonly laterIdeas: number;
  readonly calendar: Calendar;
  readonly busy: boolean;
  readonly onSend: (reason: string) => void;
  readonly onClose: () => void;
}

/** Decline or call off: what follows is read before the reason is given. */
export const ReasonForm = ({
  flight,
  act,
  consequence,
  laterIdeas,
  calendar,
  busy,
  onSend,
  onClose,
}: ReasonFormProps) => {
  const [word, setWord] = useState<ReasonWord | ''>('');
  const [text, setText] = useState('');
  const reason = reasonText(word, text);
  const verb = act === 'decline' ? 'Decline' : 'Call off';
  return (
    <ActForm
      title={`${verb} ${flight.id}`}
      onClose={onClose}
      onSubmit={() => reason !== undefined && !busy && onSend(reason)}
      acts={
        <Button
          kind="last"
          type="submit"
          busy={busy}
          offBecause={reason === undefined ? 'Choose a reason first; Other wants a few words.' : undefined}
        >
          {verb} {flight.id}
        </Button>
      }
    >
      {consequence !== null && (
        <>
          <IfDeclined words={consequence.ifDeclined} level={consequence.protects?.level} />
          {consequence.caches.length > 0 && (
            <Levels caches={consequence.caches} laterIdeas={laterIdeas} day={calendar.day} />
          )}
        </>
      )}
      <Choice
        label="Reason"
        value={word}
        options={[['', 'Choose...'], ...reasons.map((each) => [each, each] as const)]}
        onChange={setWord}
      />
      <Entry
        label={word === 'Other' ? 'In a few words' : 'More, if it is worth saying'}
        value={text}
        onChange={setText}
        input={{ maxLength: 300 }}
      />
    </ActForm>
  );
};

const Levels = ({
  caches,
  laterIdeas,
  day,
}: {
  readonly caches: Consequence['caches'];
  readonly laterIdeas: number;
  readonly day: Calendar['day'];
}) => (
  <Lines
    caption={`Lowest level, ${levelsWith(laterIdeas)}`}
    rows={caches}
    keyOf={({ place }) => place}
    columns={[
      { head: 'Cache', cell: ({ place }) => place, heads: true },
      { head: 'With it', cell: ({ withIt }) => litres(withIt.lowestLitres), figures: true },
      { head: 'Without', cell: ({ without }) => <b>{litres(without.lowestLitres)}</b>, figures: true },
      { head: 'Minimum', cell: ({ minimumLitres }) => litres(minimumLitres), figures: true },
      {
        head: 'Below from',
        cell: ({ without }) => (without.belowMinimum === null ? 'not' : day(without.belowMinimum)),
      },
    ]}
  />
);

const litres = (amount: number): string => `${figure(amount)} L`;
