import type { QueryClient } from '@tanstack/react-query';
import { Suspense, useEffect, useRef } from 'react';
import { Redirect, Route, Switch, useLocation } from 'wouter';
import { isOfTheOperator, type Me, useChanges, useLink, useMay, useMe, useSettings } from '../api/index.js';
import { fetchPages, firstPageOf, type Page, pages, pagesOf } from '../pages.js';
import { useSendLines } from '../paper/send-lines.js';
import { RadioLine } from '../radio/radio-line.js';
import { MessageLine } from '../ui/index.js';
import { NoSuchPage } from './no-such-page.js';
import { NotOpen } from './not-open.js';
import { PageList } from './page-list.js';
import { PageMistake } from './page-mistake.js';
import { ReadAhead } from './read-ahead.js';
import { TopLine } from './top-line.js';

/** Top line, list of pages, and the page. */
export const AppFrame = ({ reads }: { readonly reads: QueryClient }) => {
  const [path] = useLocation();
  const word = path.split('/')[1] ?? '';
  useFocusOnNewPage(word);
  useSetUpFirst();
  const me = useMe();
  useSendLines(me.id);
  useChanges(reads, isOfTheOperator(me));
  useFetchedPages(me);
  const mayEnter = useMay()('count', 'enter');
  return (
    <div className="frame">
      <a className="skip" href="#page">
        Skip to the page
      </a>
      <TopLine />
      <PageList />
      <main id="page" tabIndex={-1}>
        <PageMistake key={word}>
          <Pages me={me} />
        </PageMistake>
      </main>
      {isOfTheOperator(me) && <RadioLine />}
      {isOfTheOperator(me) && mayEnter && <ReadAhead />}
    </div>
  );
};

const Pages = ({ me }: { readonly me: Me }) => (
  <Switch>
    {pages.map((page) => (
      <Route key={page.path} path={`${page.path}/*?`}>
        {(rest) => (
          <Suspense fallback={<Opening />}>
            {page.isOpenTo(me) ? (
              <OpenPage page={page} rest={rest['*'] ?? ''} />
            ) : (
              <NotOpen page={page} me={me} />
            )}
          </Suspense>
        )}
      </Route>
    ))}
    <Route path="/">
      <Redirect to={firstPageOf(me).path} replace />
    </Route>
    <Route path="/*?">{(rest) => <NoSuchPage path={`/${rest['*'] ?? ''}`} />}</Route>
  </Switch>
);

const Opening = () =>
  useLink().state === 'with base' ? (
    <p className="checking" role="status">
      Opening...
    </p>
  ) : (
    <MessageLine
      kind="note"
      what="Could not reach base store"
      why="This page was not opened here yet."
      next="It opens by itself as soon as base answers."
    />
  );

/** When the first page has been read and nobody waits for anything. */
const fetchAfterMs = 10_000;

const useFetchedPages = (me: Me): void => {
  useEffect(() => {
    const timer = setTimeout(() => fetchPages(pagesOf(me)), fetchAfterMs);
    return () => clearTimeout(timer);
  }, [me]);
};

const OpenPage = ({ page, rest }: { readonly page: Page; readonly rest: string }) => {
  useEffect(() => {
    document.title = `${page.name}, Drumline`;
  }, [page]);
  return <page.Page at={rest.split('/').filter(Boolean).map(decodeURIComponent)} />;
};

/** Whoever listens is told that the page is another one; at the first load the browser does that. */
const useFocusOnNewPage = (word: string): void => {
  const last = useRef(word);
  useEffect(() => {
    // The first page opens itself from the bare address.
    if (last.current !== word && last.current !== '') document.getElementById('page')?.focus();
    last.current = word;
  }, [word]);
};

/** An installation without a territory, opened at no page in particular, begins at its set-up. */
const useSetUpFirst = (): void => {
  const [path, go] = useLocation();
  const isBare = useRef(path === '/');
  const isEmpty = useSettings().problem?.kind === 'not-found';
  useEffect(() => {
    if (!isEmpty || !isBare.current) return;
    isBare.current = false;
    go('/set-up', { replace: true });
  }, [isEmpty, go]);
};
