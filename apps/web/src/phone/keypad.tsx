interface KeypadProps {
  /** What is typed so far: figures only. */
  readonly value: string;
  readonly onType: (value: string) => void;
  readonly longest?: number;
}

/** Its own keys, so that gloves never meet the phone's. */
export const Keypad = ({ value, onType, longest = 6 }: KeypadProps) => (
  <div className="pad">
    {['1', '2', '3', '4', '5', '6', '7', '8', '9'].map((digit) => (
      <Key key={digit} does={digit} onPress={() => onType(`${value}${digit}`.slice(0, longest))} />
    ))}
    <Key does="Clear" onPress={() => onType('')} />
    <Key does="0" onPress={() => onType(`${value}0`.slice(0, longest))} />
    <Key does="Back" onPress={() => onType(value.slice(0, -1))} />
  </div>
);

const Key = ({ does, onPress }: { readonly does: string; readonly onPress: () => void }) => (
  <button type="button" className={does.length > 1 ? 'key word' : 'key'} onClick={onPress}>
    {does}
  </button>
);
