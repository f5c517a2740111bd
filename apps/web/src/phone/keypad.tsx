import { useEffect, useRef } from 'react';

interface KeypadProps {
  /** What is typed so far: figures only. */
  readonly value: string;
  readonly onType: (value: string) => void;
  readonly longest?: number;
}

/** Between the last keys and what stands below them. */
const gapPx = 8;

/** Its own keys, so that gloves never meet the phone's. */
export const Keypad = ({ value, onType, longest = 6 }: KeypadProps) => {
  const pad = useRef<HTMLDivElement>(null);
  // Every key is in view before the first is pressed; a phone on its side scrolls as a whole, and stays as it is.
  useEffect(() => {
    const reading = pad.current?.closest('.reading');
    if (!pad.current || !reading) return;
    const below = pad.current.getBoundingClientRect().bottom - reading.getBoundingClientRect().bottom;
    reading.scrollTop += Math.max(0, below + gapPx);
  }, []);
  return (
    <div ref={pad} className="pad">
      {['1', '2', '3', '4', '5', '6', '7', '8', '9'].map((digit) => (
        <Key key={digit} does={digit} onPress={() => onType(`${value}${digit}`.slice(0, longest))} />
      ))}
      <Key does="Clear" onPress={() => onType('')} />
      <Key does="0" onPress={() => onType(`${value}0`.slice(0, longest))} />
      <Key does="Back" onPress={() => onType(value.slice(0, -1))} />
    </div>
  );
};

const Key = ({ does, onPress }: { readonly does: string; readonly onPress: () => void }) => (
  <button type="button" className={does.length > 1 ? 'key word' : 'key'} onClick={onPress}>
    {does}
  </button>
);
