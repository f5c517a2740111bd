import { type ReactNode, useEffect, useLayoutEffect, useRef, useState } from 'react';
import { Link, useLocation } from 'wouter';
import { useStore } from '../api/store.js';
import { clockWords, territoryNow, useLine } from './line.js';
import { lineWords } from './line-words.js';
import { isWaiting, useEntries } from './outbox.js';
import { Notice } from './parts.js';
import { newerProgram } from './program.js';
import { SignInForm } from './sign-in.js';
import { dateWords, timeWords } from './times.js';
import { useWho } from './who.js';

interface PageProps {
  readonly title: ReactNode;
  /** Whose page it is, above the title. */
  readonly above?: ReactNode;
  readonly below?: ReactNode;
  readonly children?: ReactNode;
  /** What can be done, last and near the thumb. */
  readonly acts?: ReactNode;
}

/** One page answers one question; what can be pressed comes last. */
export const Page = ({ title, above, below, children, acts }: PageProps) => (
  <main className="page">
    <StatusLine />
    <Reading>
      <header className="head">
        {above !== undefined && <p className="meta">{above}</p>}
        {typeof title === 'string' ? <h1 className="title">{title}</h1> : title}
        {below !== undefined && <p className="meta">{below}</p>}
      </header>
      <EndedSession />
      <OddClock />
      <NewerProgram />
      {children}
    </Reading>
    {acts !== undefined && (
      <nav className="actions" aria-label="Actions">
        {acts}
      </nav>
    )}
  </main>
);

/** What scrolls between the status line and the acts; every page begins at its top, before anything in it is brought into view. */
const Reading = ({ children }: { readonly children: ReactNode }) => {
  const [path] = useLocation();
  const part = useRef<HTMLDivElement>(null);
  // biome-ignore lint/correctness/useExhaustiveDependencies: another path is another page
  useLayoutEffect(() => {
    part.current?.scrollTo(0, 0);
    window.scrollTo(0, 0); // a low screen scrolls as a whole
  }, [path]);
  return (
    <div ref={part} className="reading">
      {children}
    </div>
  );
};

/** Drawn again by the half minute: ages grow by themselves. */
export const useTerritoryNow = (): Date => {
  const [, tick] = useState(0);
  useLine();
  useEffect(() => {
    const timer = setInterval(() => tick((count) => count + 1), 30_000);
    return () => clearInterval(timer);
  }, []);
  return territoryNow();
};

/** Time, whether base has answered, what waits; zero shows too. */
const StatusLine = () => {
  const now = useTerritoryNow();
  const words = lineWords(useLine(), now, timeWords);
  const waiting = useEntries()?.filter(isWaiting).length;
  return (
    <div className="line">
      <Link href="/you" aria-label={`${timeWords(now)}, ${dateWords(now)}: this phone`}>
        {timeWords(now)}
      </Link>
      <span role="status">{words}</span>
      <Link href="/sent" className="wait">
        {waiting ?? '…'} waiting
      </Link>
    </div>
  );
};

const EndedSession = () => {
  const now = useWho();
  if (now.state !== 'here' || !now.ended) return null;
  return (
    <Notice kind="check" word="Sign in again." title="Base does not know this phone any more.">
      <p>Your pages and reports stay. Reports go out under the name of who wrote them.</p>
      <SignInForm name={now.person.name} />
    </Notice>
  );
};

const NewerProgram = () =>
  useStore(newerProgram) ? (
    <Notice
      kind="note"
      word="A newer program waits."
      title="Close every page of this phone’s program, then open it again."
    />
  ) : null;

const OddClock = () => {
  const words = clockWords(useLine().heard);
  return words === null ? null : <Notice kind="note" word="Clock." title={words} />;
};
