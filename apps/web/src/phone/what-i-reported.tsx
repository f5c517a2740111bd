import './outbox.css';
import type { SameReport } from '@drumline/contract';
import { Link } from 'wouter';
import { alsoReported } from './also-reported.js';
import { kept, useKept } from './kept.js';
import { isWaiting, type ShownEntry, useEntries } from './outbox.js';
import { Page, useTerritoryNow } from './page.js';
import { Main } from './parts.js';
import { goRound } from './round.js';
import { isTakenBack, takenBack } from './taken-back.js';
import { timeWords, whenWords } from './times.js';

/** Every entry of this phone, with how far it has come. */
export const WhatIReported = () => {
  const now = useTerritoryNow();
  const entries = useEntries();
  const same = useKept(readSame) ?? [];
  const back = takenBack(entries ?? []);
  return (
    <Page
      title="What I reported"
      above={entries === undefined ? undefined : howFar(entries, now)}
      acts={
        <>
          <Link className="btn" href="/">
            Back to the day
          </Link>
          <Main onPress={() => void goRound()}>Try now</Main>
        </>
      }
    >
      {entries?.length === 0 && <p className="said">Nothing reported on this phone yet.</p>}
      <ul className="rows">
        {entries?.map((entry) => (
          <li key={entry.seq}>
            <Link className="row" href={`/correct/${entry.seq}`}>
              <OneEntry entry={entry} same={same} isPutRight={isTakenBack(entry, back)} now={now} />
            </Link>
            {isWaiting(entry) && isDelivery(entry) && (
              <Link className="btn inset" href={`/text/${entry.seq}`}>
                As a text message
              </Link>
            )}
          </li>
        ))}
      </ul>
      <p className="foot">
        Nothing here can be changed. To put something right, open it: another report takes it back and gives
        what is so.
      </p>
    </Page>
  );
};

/** Of a flight, and nothing but drums that were left or brought back: there is a short form of it. */
const isDelivery = ({ flight, requests }: ShownEntry): boolean =>
  flight !== null &&
  requests.every(({ body }) => ['left at', 'brought home'].includes((body as { kind?: string }).kind ?? ''));

/** As base has last told it, in whatever this phone reads. */
const readSame = async (): Promise<readonly SameReport[]> =>
  (await kept.reads.toArray()).flatMap(
    ({ body }) => (body as { readonly sameReports?: readonly SameReport[] }).sameReports ?? [],
  );

/** Said only once the entries have been read: that all is with base is believed. */
const howFar = (entries: readonly ShownEntry[], now: Date): string => {
  const oldest = entries.findLast(isWaiting);
  const notEntered = entries.filter(({ state }) => state === 'asks').length;
  const not = notEntered === 0 ? '' : `${notEntered} not entered by base`;
  return oldest === undefined
    ? not || 'Everything is with base'
    : `${not && `${not} · `}Oldest not yet with base: ${whenWords(oldest.clock.at, now)}`;
};

const bars = { kept: 1, sent: 2, 'with base': 3, asks: 3 } as const;

interface OneEntryProps {
  readonly entry: ShownEntry;
  readonly same: readonly SameReport[];
  /** Another report has taken it back, or a part of it. */
  readonly isPutRight: boolean;
  readonly now: Date;
}

const OneEntry = ({ entry, same, isPutRight, now }: OneEntryProps) => (
  <>
    <b>{entry.words}</b>
    <span className="side">{whenWords(entry.clock.at, now)}</span>
    <span className="sub">
      <span className="state">
        <span className="bars" aria-hidden="true">
          {[1, 2, 3].map((bar) => (
            <i key={bar} className={bar <= bars[entry.state] ? 'f' : ''} />
          ))}
        </span>
        {stateWords(entry, now)}
      </span>
      <br />
      {next[entry.state]}
      {isPutRight && <b className="says">Corrected since.</b>}
      {alsoReported(entry.requests, same).map(({ by, at }) => (
        <span key={by} className="says">
          Also reported by {by} at {timeWords(at)}. Counted once.
        </span>
      ))}
      {entry.says.map((words) => (
        <span key={words} className="says">
          {entry.state === 'asks' ? 'Base did not enter it: ' : 'Base will look at: '}
          {words}
        </span>
      ))}
      <span className="says">By {entry.by}</span>
    </span>
  </>
);

const stateWords = ({ state, withBaseAt }: ShownEntry, now: Date): string => {
  if (state === 'kept') return 'Kept on this phone';
  if (state === 'sent') return 'Sent, no answer yet';
  return `With base ${whenWords(withBaseAt ?? now, now)}`;
};

const next: Readonly<Record<ShownEntry['state'], string>> = {
  kept: 'Goes by itself when there is a signal.',
  sent: 'Sent again until base answers. It counts once.',
  'with base': '',
  asks: 'Speak with base; it stays here.',
};
