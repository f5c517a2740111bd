import { useEffect, useRef, useState } from 'react';
import { useList, useMay, useRead } from '../../api/index.js';
import { inWords, useKeys } from '../../ui/index.js';
import { type Address, openDrum } from './address.js';
import {
  drumSchema,
  elsewherePath,
  fillListSchema,
  pageOf,
  pickListSchema,
  raisedSchema,
  retestSchema,
  type Stock,
  standingHoldSchema,
} from './drums-read.js';
import { type View, views } from './views.js';

interface FinderProps {
  readonly address: Address;
  readonly stock: Stock | undefined;
}

/** At the left: the last digits as they are read off a drum, and the lists. */
export const Finder = ({ address, stock }: FinderProps) => (
  <nav className="drums-finder" aria-label="Find a drum">
    <LastDigits address={address} />
    <Views address={address} stock={stock} />
  </nav>
);

const LastDigits = ({ address: { last, go } }: { readonly address: Address }) => {
  const field = useRef<HTMLInputElement>(null);
  const [typed, setTyped] = useState(last);
  useEffect(() => setTyped(last), [last]);
  const found = useRead(foundPath(last), pageOf(drumSchema)).value;
  useKeys({ '/': { does: 'Find a drum by its last digits', act: () => field.current?.select() } });
  const [isEntered, setEntered] = useState(false);
  const first = found?.items[0]?.number;
  // Enter may be quicker than the list.
  useEffect(() => {
    if (!isEntered || typed !== last || found === undefined) return;
    setEntered(false);
    if (first !== undefined) openDrum(go, first);
  }, [isEntered, typed, last, found, first, go]);
  return (
    <form
      className="drums-find"
      onSubmit={(event) => {
        event.preventDefault();
        setEntered(last !== '');
      }}
    >
      <label htmlFor="drums-last">Last digits of the number</label>
      <input
        id="drums-last"
        ref={field}
        value={typed}
        inputMode="numeric"
        autoComplete="off"
        maxLength={20}
        onChange={(event) => {
          setEntered(false);
          setTyped(event.target.value);
          go({ last: event.target.value.trim() });
        }}
        onKeyDown={(event) => {
          if (event.key === 'Escape') go({ last: null });
          // No number has a slash: here too it is the key that begins another one.
          if (event.key !== '/') return;
          event.preventDefault();
          event.currentTarget.select();
        }}
      />
      <small role="status">
        {isEntered ? 'Opened as soon as the list is here.' : foundWords(last, found)}
      </small>
    </form>
  );
};

export const foundPath = (last: string): string | null =>
  last === '' ? null : `/api/drums?limit=50&last=${encodeURIComponent(last)}`;

const foundWords = (
  last: string,
  found: { readonly items: readonly unknown[]; readonly next: string | null } | undefined,
): string => {
  if (last === '') return 'Four are enough. Enter opens it.';
  if (found === undefined) return 'Checking...';
  if (found.items.length === 0) return `No drum ends in ${last}.`;
  if (found.next !== null) return 'More than 50 drums. Type more digits.';
  return `${inWords(found.items.length, 'drums')}. Enter opens ${found.items.length === 1 ? 'it' : 'the first'}.`;
};

const Views = ({ address: { view, last, go }, stock }: FinderProps) => {
  const counts = useCounts(stock);
  return (
    <ul className="drums-views">
      {views.map(([each, words]) => (
        <li key={each}>
          <button
            type="button"
            aria-current={each === view && last === '' ? 'true' : undefined}
            onClick={() => go({ view: each, last: null, after: null })}
          >
            <span>{words}</span>
            <span className="n">{counts[each] ?? ''}</span>
          </button>
        </li>
      ))}
    </ul>
  );
};

/** Figures beside the lists; what a role may not read has none. */
const useCounts = (stock: Stock | undefined): Partial<Record<View, number | string>> => {
  const may = useMay();
  const fills = useList(may('fill', 'view') ? '/api/fill-lists' : null, fillListSchema).value;
  const picks = useList(may('fill', 'view') ? '/api/pick-lists' : null, pickListSchema).value;
  const holds = useList(may('hold', 'view') ? '/api/holds' : null, standingHoldSchema).value;
  const retests = useList('/api/retest-coming', retestSchema).value;
  const elsewhere = useList(elsewherePath, drumSchema).value;
  const raised = useRead('/api/raised?limit=100', pageOf(raisedSchema)).value;
  const rows = stock?.items ?? [];
  const counts = {
    all:
      stock &&
      elsewhere &&
      elsewhere.length + sum(rows.map((row) => row.sealedDrums + row.partUsedDrums + row.emptyDrums)),
    elsewhere: elsewhere?.length,
    fill: fills && sum(fills.map(({ drums }) => drums)),
    pick: picks && sum(picks.flatMap(({ stops }) => stops.map(({ drums }) => drums.length))),
    held: holds && sum(holds.map(({ drums }) => drums)),
    retest: retests?.filter(({ unusedLitres }) => unusedLitres > 0).length,
    open: stock && sum(rows.map((row) => row.partUsedDrums)),
    empties: stock && sum(rows.map((row) => row.emptyDrums)),
    raised: raised && `${raised.items.length}${raised.next === null ? '' : '+'}`,
  };
  return Object.fromEntries(Object.entries(counts).filter(([, count]) => count !== undefined));
};

const sum = (figures: readonly number[]): number => figures.reduce((total, each) => total + each, 0);
