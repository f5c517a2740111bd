import { useState } from 'react';
import { useMe } from '../../../api/index.js';
import { ActForm, Button, Entry, inWords, Tick } from '../../../ui/index.js';
import type { WeekFlight } from '../week-read.js';
import { letGoWords } from './let-go-words.js';

interface LetGoFormProps {
  /** Every flight that can be let go; the chosen one is ticked. */
  readonly flights: readonly WeekFlight[];
  readonly chosen: string;
  readonly busy: boolean;
  readonly onSend: (flights: readonly WeekFlight[], reason: string) => void;
  readonly onClose: () => void;
}

/** Several flights in one named action, all or none: a re-plan may change them again, their drums go back. */
export const LetGoForm = ({ flights, chosen, busy, onSend, onClose }: LetGoFormProps) => {
  const me = useMe();
  const [ticked, setTicked] = useState<ReadonlySet<string>>(new Set([chosen]));
  const [reason, setReason] = useState('');
  const going = flights.filter(({ id }) => ticked.has(id));
  const off =
    going.length === 0 ? 'Tick a flight.' : reason.trim().length < 3 ? 'Say why, in a few words.' : undefined;
  const tick = (id: string, on: boolean) => {
    const next = new Set(ticked);
    if (on) next.add(id);
    else next.delete(id);
    setTicked(next);
  };
  return (
    <ActForm
      title="Let go"
      onClose={onClose}
      onSubmit={() => off === undefined && !busy && onSend(going, reason.trim())}
      acts={
        <Button kind="main" type="submit" busy={busy} offBecause={off}>
          Let go {inWords(going.length, going.length === 1 ? 'flight' : 'flights')}
        </Button>
      }
    >
      {going.length > 0 && (
        <p>
          {letGoWords(going)} In the name of {me.fullName}.
        </p>
      )}
      <fieldset className="let-go-list">
        <legend className="unseen">Flights</legend>
        {flights.map((flight) => (
          <Tick
            key={flight.id}
            label={`${flight.id} ${flight.state}, ${flight.route.join('-')}, ${inWords(flight.drums, 'drums')}`}
            checked={ticked.has(flight.id)}
            onChange={(on) => tick(flight.id, on)}
          />
        ))}
      </fieldset>
      <Entry label="Why" value={reason} onChange={setReason} input={{ maxLength: 300 }} />
    </ActForm>
  );
};
