import { type ReactNode, useState } from 'react';

interface AskedFirst {
  /** Whether a press keeps the entry; the first press with a doubt open asks instead. */
  readonly keeps: () => boolean;
  /** The doubts are asked: the next press keeps it as it is written. */
  readonly isAsked: boolean;
  readonly said: ReactNode;
}

/** What can hardly be so is said while it is typed and asked at the first press; the second keeps it, to be looked at. */
export const useAskedFirst = (doubts: readonly string[]): AskedFirst => {
  const words = doubts.join(' ');
  const [asked, setAsked] = useState('');
  const isAsked = words !== '' && asked === words;
  return {
    isAsked,
    keeps: () => {
      if (words === '' || isAsked) return true;
      setAsked(words);
      return false;
    },
    said: (
      <div aria-live="polite">
        {doubts.map((doubt) => (
          <p key={doubt} className="ochre">
            {doubt}
          </p>
        ))}
        {isAsked && (
          <p>
            <b>Is it so?</b> Press again: it is kept as it is written, and raised to be looked at.
          </p>
        )}
      </div>
    ),
  };
};
