import { useState } from 'react';
import { ActForm, Button, Entry } from '../../../ui/index.js';
import type { WeekFlight } from '../week-read.js';

interface KeepFormProps {
  readonly flight: WeekFlight;
  /** Why it cannot be kept, found since the form was opened; undefined: it can. */
  readonly off: string | undefined;
  readonly busy: boolean;
  readonly onSend: (reason: string) => void;
  readonly onClose: () => void;
}

/** The decision it needs: it stays as it is. The server checks it once more by today's facts. */
export const KeepForm = ({ flight, off, busy, onSend, onClose }: KeepFormProps) => {
  const [reason, setReason] = useState('');
  const offBecause = off ?? (reason.trim().length >= 3 ? undefined : 'Say why, in a few words.');
  return (
    <ActForm
      title={`Keep ${flight.id} as it is`}
      onClose={onClose}
      onSubmit={() => offBecause === undefined && !busy && onSend(reason.trim())}
      acts={
        <Button kind="main" type="submit" busy={busy} offBecause={offBecause}>
          Keep {flight.id}
        </Button>
      }
    >
      <p>{flight.needsDecision}</p>
      <Entry label="Why" value={reason} onChange={setReason} input={{ maxLength: 300 }} />
    </ActForm>
  );
};
