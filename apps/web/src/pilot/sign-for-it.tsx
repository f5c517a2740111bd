import { useState } from 'react';
import { Main } from '../phone/index.js';

export interface Signed {
  readonly by: string;
  readonly reason: string;
}

interface SignForItProps {
  readonly by: string;
  readonly attempts: readonly string[];
  readonly onSign: (signed: Signed) => void;
}

/** The commander accepts the difference, with the reason; both figures and every attempt go to base. */
export const SignForIt = ({ by, attempts, onSign }: SignForItProps) => {
  const [reason, setReason] = useState('');
  const typed = `Typed: ${attempts.join('; ')}`;
  return (
    <>
      <label className="field">
        Why {by} accepts the difference
        <input value={reason} onChange={({ target }) => setReason(target.value)} />
      </label>
      <Main
        waits={reason.trim() === '' ? 'The reason first' : null}
        onPress={() => onSign({ by, reason: `${reason.trim()}. ${typed}`.slice(0, 1000) })}
      >
        Loaded, signed
      </Main>
    </>
  );
};
