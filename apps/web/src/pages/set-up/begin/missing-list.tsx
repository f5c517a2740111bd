import type { Missing } from '@drumline/contract';
import { Link } from 'wouter';
import { sections } from '../sections.js';

interface MissingListProps {
  readonly missing: readonly Missing[];
  readonly to: (section: string) => string;
}

/** What a first plan still needs, each with the way to its form. */
export const MissingList = ({ missing, to }: MissingListProps) => (
  <section className="section" aria-label="Missing for a plan">
    <h2>Missing for a plan</h2>
    <div role="status">
      {missing.length === 0 ? (
        <p className="read">Nothing. A plan can be asked for.</p>
      ) : (
        <ol>
          {missing.slice(0, 12).map(({ at, what, next }) => {
            const section = sections.find(({ list }) => list === at);
            return (
              <li key={what + next}>
                {section === undefined ? what : <Link href={to(section.name)}>{what}</Link>} {next}
              </li>
            );
          })}
        </ol>
      )}
      {missing.length > 12 && <p>And {missing.length - 12} more.</p>}
    </div>
  </section>
);
