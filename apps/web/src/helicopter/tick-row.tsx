import type { ReactNode } from 'react';

interface TickRowProps {
  readonly ticked: boolean;
  readonly onTurn: () => void;
  readonly children: ReactNode;
}

/** A row that is ticked anywhere, gloves on. */
export const TickRow = ({ ticked, onTurn, children }: TickRowProps) => (
  <li>
    <label className="row tick">
      <input type="checkbox" className="vis-hide" checked={ticked} onChange={onTurn} />
      <span className={ticked ? 'box yes' : 'box'} aria-hidden="true" />
      <span>{children}</span>
    </label>
  </li>
);
