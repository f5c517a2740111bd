import type { ReactNode } from 'react';

interface PressProps {
  readonly children: ReactNode;
  readonly onPress?: () => void;
  /** What it will write, under the word. */
  readonly small?: string;
  /** Why it waits: hatched, still to be read; pressing it does nothing. */
  readonly waits?: string | null;
  readonly type?: 'button' | 'submit';
}

/** The one main action of a page. */
export const Main = ({ children, onPress, small, waits = null, type = 'button' }: PressProps) => (
  <button
    type={type}
    className={waits === null ? 'btn main' : 'btn main waits'}
    aria-disabled={waits !== null}
    onClick={() => waits === null && onPress?.()}
  >
    <span>
      {children}
      {(waits ?? small) !== undefined && <small>{waits ?? small}</small>}
    </span>
  </button>
);

export const Press = ({ children, onPress, on }: PressProps & { readonly on?: boolean }) => (
  <button
    type="button"
    className={on === true ? 'btn on' : 'btn'}
    {...(on === undefined ? {} : { 'aria-pressed': on })}
    onClick={() => onPress?.()}
  >
    {children}
  </button>
);

interface NoticeProps {
  /** `note`: dots; `check`: hatch; `stop`: solid; `agree`: bracket. The word comes first, colour last. */
  readonly kind: 'note' | 'check' | 'stop' | 'agree';
  readonly word: string;
  readonly title?: ReactNode;
  readonly children?: ReactNode;
}

export const Notice = ({ kind, word, title, children }: NoticeProps) => (
  <section className={`notice ${kind}`} role={kind === 'stop' || kind === 'check' ? 'alert' : 'status'}>
    <h2>
      <span className="word">{word}</span> {title}
    </h2>
    {children !== undefined && <div>{children}</div>}
  </section>
);

/** A drum by its number, read digit by digit; held: struck through, with the word. */
export const DrumNumber = ({
  number,
  held = false,
  big = false,
}: {
  number: string;
  held?: boolean;
  big?: boolean;
}) => (
  <>
    <span className={`drum${held ? ' held' : ''}${big ? ' big' : ''}`}>
      <span aria-hidden="true">{number}</span>
      <span className="vis-hide">drum {[...number].join(' ')}</span>
    </span>
    {held && <b className="hold">HOLD</b>}
  </>
);

interface ChoicesProps<T extends string> {
  readonly legend: string;
  readonly of: readonly { readonly value: T; readonly word: string; readonly small?: string }[];
  readonly chosen: T | null;
  readonly onChoose: (value: T) => void;
  readonly columns?: 1 | 2;
}

/** One of a few, each with its word; a radio group that gloves can press. */
export const Choices = <T extends string>({ legend, of, chosen, onChoose, columns = 2 }: ChoicesProps<T>) => (
  <fieldset className="choices">
    <legend className="sect">{legend}</legend>
    <div className={columns === 2 ? 'grid two' : 'grid'}>
      {of.map(({ value, word, small }) => (
        <label key={value} className={value === chosen ? 'choice on' : 'choice'}>
          <input
            type="radio"
            className="vis-hide"
            name={legend}
            value={value}
            checked={value === chosen}
            onChange={() => onChoose(value)}
          />
          <span className="radio" aria-hidden="true" />
          <span>
            {word}
            {small !== undefined && <small>{small}</small>}
          </span>
        </label>
      ))}
    </div>
  </fieldset>
);
