import { type InputHTMLAttributes, type ReactNode, useId } from 'react';

interface EntryProps {
  readonly label: string;
  readonly value: string;
  readonly onChange: (value: string) => void;
  /** Stands inside at the right, and is never typed. */
  readonly unit?: string;
  /** What is asked about the figure, in words: the figure is kept. */
  readonly doubt?: string | undefined;
  /** What is wrong with it. */
  readonly fault?: string | undefined;
  readonly note?: ReactNode;
  /** A form begins here, though other fields stand above it. */
  readonly askedFirst?: boolean;
  readonly input?: Omit<InputHTMLAttributes<HTMLInputElement>, 'value' | 'onChange' | 'id'>;
}

/** A field that is typed into: label above, heavier lower edge, one unit. */
export const Entry = (props: EntryProps) => {
  const { label, value, onChange, unit, doubt, fault, note, askedFirst, input } = props;
  const id = useId();
  const said = [fault, doubt].filter((text) => text !== undefined);
  return (
    <div className={`entry ${fault === undefined ? '' : 'at-fault'}`}>
      <label htmlFor={id}>{label}</label>
      <span className="box">
        <input
          {...input}
          id={id}
          value={value}
          data-asked-first={askedFirst || undefined}
          onChange={(event) => onChange(event.target.value)}
          aria-invalid={fault !== undefined || undefined}
          aria-describedby={said.length > 0 || note !== undefined ? `${id}-said` : undefined}
        />
        {unit !== undefined && <span className="unit">{unit}</span>}
      </span>
      <span id={`${id}-said`} className="said" aria-live="polite">
        {fault !== undefined && <span className="plum">Fault: {fault}</span>}
        {doubt !== undefined && <span>{doubt}</span>}
        {note !== undefined && <small>{note}</small>}
      </span>
    </div>
  );
};

interface ChoiceProps<Value extends string> {
  readonly label: string;
  readonly value: Value;
  readonly options: readonly (readonly [value: Value, words: string])[];
  readonly onChange: (value: Value) => void;
  /** What is wrong with it. */
  readonly fault?: string | undefined;
  /** A form begins here. */
  readonly askedFirst?: boolean;
}

/** One of a few, as the browser draws it. */
export function Choice<Value extends string>(props: ChoiceProps<Value>) {
  const { label, value, options, onChange, fault, askedFirst } = props;
  const id = useId();
  return (
    <div className={`entry ${fault === undefined ? '' : 'at-fault'}`}>
      <label htmlFor={id}>{label}</label>
      <span className="box">
        <select
          id={id}
          value={value}
          data-asked-first={askedFirst || undefined}
          onChange={(event) => onChange(event.target.value as Value)}
          aria-invalid={fault !== undefined || undefined}
          aria-describedby={fault === undefined ? undefined : `${id}-said`}
        >
          {options.map(([each, words]) => (
            <option key={each} value={each}>
              {words}
            </option>
          ))}
        </select>
      </span>
      {fault !== undefined && (
        <span id={`${id}-said`} className="said" aria-live="polite">
          <span className="plum">Fault: {fault}</span>
        </span>
      )}
    </div>
  );
}

interface TickProps {
  readonly label: string;
  readonly checked: boolean;
  readonly onChange: (checked: boolean) => void;
}

export const Tick = ({ label, checked, onChange }: TickProps) => (
  <label className="tick">
    <input type="checkbox" checked={checked} onChange={(event) => onChange(event.target.checked)} />
    {label}
  </label>
);
