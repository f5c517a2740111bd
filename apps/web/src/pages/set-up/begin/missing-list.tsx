import type { Missing } from '@drumline/contract';
import { Link } from 'wouter';
import { missingWords } from './missing-words.js';

interface MissingListProps {
  readonly missing: readonly Missing[];
  readonly to: (section: string, id?: string) => string;
  readonly currency: string;
}

/** What a first plan still needs, each with the way to its form. */
export const MissingList = ({ missing, to, currency }: MissingListProps) => (
  <section className="section" aria-label="Missing for a plan">
    <h2>Missing for a plan</h2>
    <div role="status">
      {missing.length === 0 ? (
        <p className="read">Nothing. A plan can be asked for.</p>
      ) : (
        // Chromium does not number a list anew where its first line goes: it is another list then.
        <ol key={missing.length}>
          {missing.slice(0, 12).map((each) => {
            const { what, next, section, id } = missingWords(each, currency);
            return (
              <li key={what + each.next}>
                {section === undefined ? what : <Link href={to(section.name, id)}>{what}</Link>}{' '}
                {next.map((part) =>
                  typeof part === 'string' ? (
                    part
                  ) : (
                    <Link key={part.section.name} href={to(part.section.name)}>
                      {part.words}
                    </Link>
                  ),
                )}
              </li>
            );
          })}
        </ol>
      )}
      {missing.length > 12 && <p>And {missing.length - 12} more.</p>}
    </div>
  </section>
);

/** The end of an address: the thing itself where it is known. */
export const below = (id: string | undefined): string =>
  id === undefined ? '' : `/${encodeURIComponent(id)}`;
