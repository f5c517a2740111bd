import { type ReactNode, useEffect, useRef } from 'react';
import type { ApiProblem } from '../../../api/index.js';
import { useFocusBack } from '../../../ui/index.js';

interface OneFormProps {
  readonly label: string;
  readonly onSubmit: () => void;
  /** Absent: it is always there. */
  readonly onClose?: (() => void) | undefined;
  readonly problem: ApiProblem | undefined;
  readonly children: ReactNode;
}

/** One thing of Set-up: opened, its first field has the focus; refused, the first that is wrong. Esc leaves it. */
export const OneForm = ({ label, onSubmit, onClose, problem, children }: OneFormProps) => {
  const form = useRef<HTMLFormElement>(null);
  const isOpened = useRef(onClose !== undefined);
  useFocusBack(form);
  useEffect(() => {
    if (isOpened.current) form.current?.querySelector<HTMLElement>('input, select')?.focus();
  }, []);
  useEffect(() => {
    if (problem === undefined) return;
    const wrong = form.current?.querySelector<HTMLElement>('[aria-invalid]');
    if (wrong) wrong.focus();
    else form.current?.querySelector('.message')?.scrollIntoView({ block: 'nearest' });
  }, [problem]);
  return (
    <form
      ref={form}
      className="set-up-form"
      aria-label={label}
      onSubmit={(event) => {
        event.preventDefault();
        onSubmit();
      }}
      onKeyDown={(event) => {
        if (event.key !== 'Escape' || onClose === undefined) return;
        event.stopPropagation();
        onClose();
      }}
    >
      {children}
    </form>
  );
};
