import type { ReactNode } from 'react';
import { createPortal } from 'react-dom';

interface PrintSheetProps {
  readonly name: 'tag' | 'scripts';
  readonly children: ReactNode;
}

/** What is printed by a button of its own instead of the page: it stands outside the page and is seen on paper only. */
export const PrintSheet = ({ name, children }: PrintSheetProps) =>
  createPortal(
    <div className="drums-sheet" data-sheet={name}>
      {children}
    </div>,
    document.body,
  );

/** Prints the sheet of this name; the page itself prints as before afterwards. */
export const printSheet = (name: PrintSheetProps['name']): void => {
  const root = document.documentElement;
  root.dataset.print = name;
  window.addEventListener('afterprint', () => delete root.dataset.print, { once: true });
  window.print();
};
