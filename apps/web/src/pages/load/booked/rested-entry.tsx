import { useEffect } from 'react';
import { Entry } from '../../../ui/index.js';

interface RestedEntryProps {
  readonly label: string;
  readonly typed: string;
  readonly onType: (text: string) => void;
  /** What was asked with. */
  readonly asked: string;
  /** When typing rests, on Enter, or when the field is left: not at each letter. */
  readonly onAsk: (text: string) => void;
}

const restMs = 600;

/** A field whose words the server is asked about. */
export const RestedEntry = ({ label, typed, onType, asked, onAsk }: RestedEntryProps) => {
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
      onChange={onType}
      input={{
        onBlur: ask,
        onKeyDown: ({ key }) => {
          if (key === 'Enter') ask();
        },
      }}
    />
  );
};
