import type { ReactNode, RefObject } from 'react';

interface FormToLeaveProps {
  readonly form: RefObject<HTMLFormElement | null>;
  readonly className: string;
  readonly label: string;
  readonly onSubmit: () => void;
  /** By Esc; absent: it is always there. */
  readonly onLeave?: (() => void) | undefined;
  readonly children: ReactNode;
}

/** Enter sends it, Esc leaves it. */
export const FormToLeave = ({ form, className, label, onSubmit, onLeave, children }: FormToLeaveProps) => (
  <form
    ref={form}
    className={className}
    aria-label={label}
    onSubmit={(event) => {
      event.preventDefault();
      onSubmit();
    }}
    onKeyDown={(event) => {
      if (event.key !== 'Escape' || onLeave === undefined) return;
      event.stopPropagation();
      onLeave();
    }}
  >
    {children}
  </form>
);
