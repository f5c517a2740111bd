import { useEffect, useState } from 'react';
import { Entry } from '../../../ui/index.js';

interface RestedEntryProps {
  readonly label: string;
  /** What was asked with. */
  readonly asked: string;
  /** When typing rests, on Enter, or when the field is left: not at each letter. */
  readonly onAsk: (text: string) => void;
  /** At each letter: what is typed is not asked yet. */
  readonly onTyped: (text: string) => void;
}

const restMs = 600;

/** A field whose words the server is asked about. */
export const RestedEntry = ({ label, asked, onAsk, onTyped }: RestedEntryProps) => {
  const [typed, setTyped] = useState(asked);
  const ask = () => {
    if (typed !== asked) onAsk(typed);
  };
  useEffect(() => {
    if (typed === asked) return;
    const timer = setTimeout(() => onAsk(typed), restMs);
    return () => clearTimeout(timer);
  });
  return (
    <Entry
      label={label}
      value={typed}
      onChange={(text) => {
        setTyped(text);
        onTyped(text);
      }}
      input={{
        onBlur: ask,
        onKeyDown: ({ key }) => {
          if (key === 'Enter') ask();
        },
      }}
    />
  );
};
