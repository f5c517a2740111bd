import type { ReactNode } from 'react';

export interface FieldProps {
  readonly label: string;
  readonly children: ReactNode;
  /** Source, age: small, after the value. */
  readonly note?: ReactNode;
  readonly state?: 'plain' | 'grave' | 'stale';
  /** Leaves first where the page is narrow: it must stand somewhere else too. */
  readonly wide?: boolean;
}

/** A field of a printed form: label small at the top left, the answer below it. For reading. */
export const Field = ({ label, children, note, state = 'plain', wide = false }: FieldProps) => (
  <div className={`field ${state} ${wide ? 'wide' : ''}`}>
    <dt>{label}</dt>
    <dd>
      {children}
      {note !== undefined && <small> {note}</small>}
    </dd>
  </div>
);

/** Fields side by side, parted by hairlines. */
export const Fields = ({ children }: { readonly children: ReactNode }) => (
  <dl className="fields">{children}</dl>
);

interface TitleBlockProps {
  readonly title: string;
  readonly sub?: ReactNode;
  /** `Field`s: what is shown, of which revision. */
  readonly children?: ReactNode;
  /** Buttons of the whole page. */
  readonly acts?: ReactNode;
}

/** As on a drawing: what you look at, which revision, made when and by whom. Every page begins with one. */
export const TitleBlock = ({ title, sub, children, acts }: TitleBlockProps) => (
  <header className="title-block">
    <div className="title">
      <h1>{title}</h1>
      {sub !== undefined && <p>{sub}</p>}
    </div>
    <Fields>{children}</Fields>
    {acts !== undefined && <div className="acts">{acts}</div>}
  </header>
);
