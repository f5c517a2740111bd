import { Link } from 'wouter';
import { isWaiting, type ShownEntry, useEntries } from './outbox.js';
import { Page, useTerritoryNow } from './page.js';
import { Main } from './parts.js';
import { goRound } from './round.js';
import { whenWords } from './times.js';

/** Every entry of this phone, with how far it has come. */
export const WhatISent = () => {
  const now = useTerritoryNow();
  const entries = useEntries();
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
          <Row key={entry.seq} entry={entry} now={now} />
        ))}
      </ul>
      <p className="foot">
        Nothing here can be changed. To put something right, report it as it is; tell base which one is wrong.
      </p>
    </Page>
  );
};

/** Said only once the entries have been read: that all is with base is believed. */
const howFar = (entries: readonly ShownEntry[], now: Date): string => {
  const oldest = entries.findLast(isWaiting);
  return oldest === undefined
    ? 'Everything is with base'
    : `Oldest not yet with base: ${whenWords(oldest.clock.at, now)}`;
};

const bars = { kept: 1, sent: 2, 'with base': 3, asks: 3 } as const;

const Row = ({ entry, now }: { readonly entry: ShownEntry; readonly now: Date }) => (
  <li className="row">
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
      {entry.says.map((words) => (
        <span key={words} className="says">
          {entry.state === 'asks' ? 'Base asks: ' : 'Base will look at: '}
          {words}
        </span>
      ))}
      <span className="says">By {entry.by}</span>
    </span>
  </li>
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
  asks: 'Base has read it and did not enter it. Speak with base; it stays here.',
};
