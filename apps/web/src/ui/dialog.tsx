import { type ReactNode, useEffect, useId, useRef } from 'react';
import { useFocusBack } from './focus-back.js';
import { LayerContext, useLayer } from './layer.js';

interface DialogProps {
  readonly title: string;
  /** Called by Esc and by a press on "Close": the page that shows it takes it away. Absent: it cannot be closed. */
  readonly onClose?: () => void;
  readonly children: ReactNode;
  /** Buttons at the foot. */
  readonly acts?: ReactNode;
}

/** For what needs an answer before the page goes on. Focus is kept inside and goes back to where it came from. */
export const Dialog = ({ title, onClose, children, acts }: DialogProps) => {
  const element = useRef<HTMLDialogElement>(null);
  const name = useId();
  const layer = useLayer() + 1;
  useFocusBack(element);
  useEffect(() => {
    const dialog = element.current!;
    if (!dialog.open) dialog.showModal();
    const stopWaiting = focusFirstField(dialog);
    return () => {
      stopWaiting();
      dialog.close();
    };
  }, []);
  return (
    <dialog
      ref={element}
      className="dialog"
      aria-labelledby={name}
      onKeyDown={(event) => {
        // Esc closes an open list of options first.
        const isListOpen = (event.target as Element).getAttribute('aria-expanded') === 'true';
        if (event.key === 'Escape' && isListOpen) event.preventDefault();
      }}
      onCancel={(event) => {
        event.preventDefault();
        onClose?.();
      }}
    >
      <LayerContext value={layer}>
        <div className="head">
          <h2 id={name} tabIndex={-1}>
            {title}
          </h2>
          {onClose !== undefined && (
            <button type="button" className="plain-link" onClick={onClose}>
              Close
            </button>
          )}
        </div>
        <div className="body">{children}</div>
        {acts !== undefined && <div className="foot">{acts}</div>}
      </LayerContext>
    </dialog>
  );
};

/** Fields may come after the dialog, once what they stand on is read: the first has the focus then, unless the person has moved on. */
const focusFirstField = (dialog: HTMLElement): (() => void) => {
  const focus = (): boolean => {
    const field = dialog.querySelector<HTMLElement>('.body :is(input, select, textarea)');
    field?.focus();
    return field !== null;
  };
  if (focus()) return () => {};
  // Not "Close": Enter would close what has only begun.
  dialog.querySelector<HTMLElement>('.head h2')?.focus();
  const beforeFields = document.activeElement;
  const waiting = new MutationObserver(() => {
    if (document.activeElement !== beforeFields || focus()) waiting.disconnect();
  });
  waiting.observe(dialog, { childList: true, subtree: true });
  return () => waiting.disconnect();
};
