import { useEffect, useMemo } from 'react';
import { Link, useLocation } from 'wouter';
import { useMay, useMe } from '../api/index.js';
import { pagesOf, seesOwnFlightsOnly } from '../pages.js';
import { useSingleKeys } from '../ui/index.js';

/** At the left, and on a narrow screen along the top. Alt and the figure opens a page. */
export const PageList = () => {
  const [path, go] = useLocation();
  const areKeysOn = useSingleKeys();
  const me = useMe();
  const pages = useMemo(() => pagesOf(me), [me]);
  const mayReport = useMay()('report surface', 'enter');
  useEffect(() => {
    const onKey = (event: KeyboardEvent): void => {
      if (!event.altKey || event.ctrlKey || event.metaKey || document.querySelector('dialog[open]')) return;
      const page = pages[Number(/^Digit([1-9])$/.exec(event.code)?.[1]) - 1];
      if (page === undefined) return;
      event.preventDefault();
      go(page.path);
    };
    document.addEventListener('keydown', onKey);
    return () => document.removeEventListener('keydown', onKey);
  }, [go, pages]);
  return (
    <nav className="page-list" aria-label="Pages">
      <ol>
        {pages.map((page, at) => {
          const isHere = path === page.path || path.startsWith(`${page.path}/`);
          return (
            <li key={page.path}>
              <Link
                href={page.path}
                aria-current={isHere ? 'page' : undefined}
                aria-keyshortcuts={`Alt+${at + 1}`}
              >
                <span aria-hidden="true">{at + 1}</span>
                {page.name}
              </Link>
            </li>
          );
        })}
      </ol>
      {seesOwnFlightsOnly(me) && (
        <p className="foot">
          <a href="/phone/">Phone page</a> Your flights and your reports, with no signal too. It has a sign-in
          of its own: by it, base knows a device that is in the field.
        </p>
      )}
      <p className="foot">
        Alt and a figure opens a page.
        {areKeysOn && (
          <>
            {mayReport && (
              <>
                <br />
                <b>r</b> radio report
              </>
            )}
            <br />
            <b>?</b> all keys
          </>
        )}
      </p>
    </nav>
  );
};
