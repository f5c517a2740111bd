import { type ReactNode, useEffect, useRef } from 'react';
import type { ApiProblem } from '../../../api/index.js';
import { FormToLeave } from '../../../ui/form-to-leave.js';
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
    <FormToLeave form={form} className="set-up-form" label={label} onSubmit={onSubmit} onLeave={onClose}>
      {children}
    </FormToLeave>
  );
};
