import { type ReactNode, useId } from 'react';
import { useKeys, useSingleKeys } from './keys.js';

interface ButtonProps {
  readonly children: ReactNode;
  readonly onPress?: () => void;
  /** `main`: one per area. `grave`: Decline, Hold. `last`: the last press of an act that cannot be undone alone. */
  readonly kind?: 'plain' | 'main' | 'grave' | 'last';
  readonly small?: boolean;
  /** A single key that does the same; it is bound here and shown after the word. */
  readonly press?: string | undefined;
  /** Not available, and why: written beside the button in full. */
  readonly offBecause?: string | undefined;
  /** The act is on its way: it cannot be pressed twice. */
  readonly busy?: boolean;
  readonly type?: 'button' | 'submit';
}

/** Words only. A button that is off stays in the tab order, so that its reason is heard. */
export const Button = (props: ButtonProps) => {
  const { children, onPress, kind = 'plain', small, press, offBecause, busy, type = 'button' } = props;
  const reason = useId();
  const areKeysOn = useSingleKeys();
  const off = offBecause !== undefined || busy === true;
  useKeys(
    press === undefined || onPress === undefined
      ? {}
      : { [press]: { does: typeof children === 'string' ? children : press, act: onPress, off } },
  );
  return (
    <span className="button-and-reason">
      <button
        type={type}
        className={`button ${kind} ${small ? 'small' : ''}`}
        aria-disabled={off || undefined}
        aria-describedby={offBecause === undefined ? undefined : reason}
        aria-keyshortcuts={press?.replace('Ctrl', 'Control')}
        onClick={(event) => {
          if (off) event.preventDefault();
          else onPress?.();
        }}
      >
        {children}
        {press !== undefined && (areKeysOn || press.startsWith('Ctrl+')) && (
          <span className="press" aria-hidden="true">
            {press}
          </span>
        )}
      </button>
      {offBecause !== undefined && (
        <small id={reason} className="reason">
          {offBecause}
        </small>
      )}
    </span>
  );
};
