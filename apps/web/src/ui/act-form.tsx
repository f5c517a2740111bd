import { type ReactNode, useEffect, useRef } from 'react';
import { Button } from './button.js';
import { useFocusBack } from './focus-back.js';
import { FormToLeave } from './form-to-leave.js';

interface ActFormProps {
  readonly title: string;
  readonly onClose: () => void;
  readonly onSubmit: () => void;
  readonly acts: ReactNode;
  readonly children: ReactNode;
}

/** What an act wants to know, beside what it is about, which stays to be read. Esc takes it back. */
export const ActForm = ({ title, onClose, onSubmit, acts, children }: ActFormProps) => {
  const form = useRef<HTMLFormElement>(null);
  useFocusBack(form);
  useEffect(() => {
    const first = (which: string) => form.current?.querySelector<HTMLElement>(which);
    (first('[data-asked-first]') ?? first('select, input'))?.focus();
    form.current?.scrollIntoView({ block: 'nearest' });
  }, []);
  return (
    <FormToLeave form={form} className="act-form" label={title} onSubmit={onSubmit} onLeave={onClose}>
      <h3>{title}</h3>
      <div className="asked">{children}</div>
      <div className="acts">
        {acts}
        <Button onPress={onClose}>Leave it</Button>
      </div>
    </FormToLeave>
  );
};
