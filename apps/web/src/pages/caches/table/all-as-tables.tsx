import { useDeferredValue, useRef } from 'react';
import { useCalendar, useMe } from '../../../api/index.js';
import { ageInWords, inWords, Lines, levelsWith } from '../../../ui/index.js';
import type { NamedCache } from '../cache-list.js';
import { dayNames, whatFails } from '../cache-words.js';
import type { Cache, Caches } from '../caches-read.js';
import { useColumnsAcross } from '../graph/columns-across.js';
import { dayRows } from './day-rows.js';
import { LevelCell, Stock } from './day-table.js';

interface ShownCaches {
  readonly caches: Caches;
  readonly shown: readonly NamedCache[];
}

interface AllAsTablesProps extends ShownCaches {
  /** Told, as it may be for the print that the tables are made. */
  readonly isPrinting: boolean;
}

/** Every graph as figures, which is also the print. */
export const AllAsTables = ({ caches, shown, isPrinting }: AllAsTablesProps) => {
  const { date, time, now } = useCalendar();
  const { fullName } = useMe();
  // The page answers with the levels; what stands below them comes in a task of its own.
  const later = useDeferredValue(shown, none);
  const shownBelow = isPrinting ? shown : later;
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: it scrolls, and has to be reached by key
    <section className="caches-tables" aria-label="All caches as tables" tabIndex={0}>
      <LevelsAcross caches={caches} shown={shown} isPrinting={isPrinting} />
      <Bounds caches={caches} shown={shownBelow} />
      <Comings caches={caches} shown={shownBelow} />
      <p className="caches-foot">
        Printed {date(now)}, {time(now)}, {fullName}. Level as of {time(caches.asOf)}. A later print replaces
        it: throw this one away then.
      </p>
    </section>
  );
};

const none: readonly NamedCache[] = [];

/** In as many tables as the width asks for. */
const LevelsAcross = ({ caches, shown, isPrinting }: AllAsTablesProps) => {
  const area = useRef<HTMLDivElement>(null);
  const parts = useColumnsAcross(area, caches.dates.length + 1, isPrinting);
  return (
    <div ref={area} className="levels-across">
      {parts.map((columns) => (
        <Levels key={columns[0]} caches={caches} shown={shown} columns={columns} />
      ))}
    </div>
  );
};

interface LevelsProps extends ShownCaches {
  /** 0 is now, 1 the end of the first day. */
  readonly columns: readonly number[];
}

const Levels = ({ caches, shown, columns }: LevelsProps) => {
  const { day } = useCalendar();
  const heads = ['Now', ...caches.dates.map(day)];
  return (
    <table className="lines levels">
      <caption>
        {columns[0] === 0
          ? `Level at the end of each day, ${levelsWith(caches.laterIdeas)}; under it the level with no deliveries`
          : `Level at the end of each day, from ${heads[columns[0]!]} on`}
      </caption>
      <thead>
        <tr>
          <th scope="col">Cache</th>
          <th scope="col">Deliveries</th>
          {columns.map((at) => (
            <th key={at} scope="col" className="n">
              {heads[at]}
            </th>
          ))}
        </tr>
      </thead>
      {shown.map(({ cache, name }) => (
        <tbody key={cache.place}>
          <tr>
            <th scope="rowgroup" rowSpan={2}>
              {cache.place} <small>{name}</small>
            </th>
            <th scope="row">with</th>
            {columns.map((at) => (
              <td key={at} className="n">
                <LevelCell litres={cache.projections.offered.usableLitres[at]!} cache={cache} />
              </td>
            ))}
          </tr>
          <tr className="without">
            <th scope="row">without</th>
            {columns.map((at) => (
              <td key={at} className="n">
                <Stock litres={cache.projections.noDeliveries.usableLitres[at]!} />
              </td>
            ))}
          </tr>
        </tbody>
      ))}
    </table>
  );
};

/** What the levels are held against, how long they last, and when they were counted. */
const Bounds = ({ caches, shown }: ShownCaches) => {
  const { day } = useCalendar();
  const dayName = dayNames(caches.dates, day);
  return (
    <Lines<NamedCache>
      caption="Minimum, cover and count"
      rows={shown}
      keyOf={({ cache }) => cache.place}
      columns={[
        { head: 'Cache', heads: true, cell: ({ cache }) => cache.place },
        { head: 'Minimum', figures: true, cell: ({ cache }) => inWords(cache.minimumLitres, 'L') },
        {
          head: 'Suggested',
          figures: true,
          cell: ({ cache }) => inWords(cache.suggestedMinimum.litres, 'L'),
        },
        { head: 'Critical', figures: true, cell: ({ cache }) => inWords(cache.criticalLitres, 'L') },
        { head: 'Days of cover, mean draw', figures: true, cell: ({ cache }) => coverWords(cache) },
        { head: 'Count', figures: true, cell: ({ cache }) => countWords(cache) },
        {
          head: 'Without deliveries',
          cell: ({ cache }) => whatFails(cache.projections.noDeliveries, dayName) || 'above minimum',
        },
      ]}
    />
  );
};

const coverWords = ({ daysOfCover }: Cache): string =>
  daysOfCover === null ? 'no draws' : inWords(daysOfCover, 'days', 1);

const countWords = ({ stock: { lastCount } }: Cache): string =>
  lastCount === null
    ? 'none'
    : `${inWords(lastCount.countedLitres, 'L')}, ${ageInWords(lastCount.ageHours)} old`;

/** What lands and what leaves, in words: the ticks and triangles of the graphs. */
const Comings = ({ caches, shown }: ShownCaches) => {
  const { day } = useCalendar();
  const said = (cache: Cache, which: 'landed' | 'drawn') =>
    dayRows(cache, caches.dates)
      .flatMap((row) =>
        row[which].map(
          ({ litres, by, isAsked }) =>
            `${day(row.date)} ${inWords(litres, 'L')} ${by}${isAsked ? ' (needs a decision)' : ''}`,
        ),
      )
      .join('; ') || 'nothing';
  return (
    <Lines<NamedCache>
      caption="What lands, what is drawn"
      rows={shown}
      keyOf={({ cache }) => cache.place}
      columns={[
        { head: 'Cache', heads: true, cell: ({ cache }) => cache.place },
        { head: 'Lands', cell: ({ cache }) => said(cache, 'landed') },
        { head: 'Drawn', cell: ({ cache }) => said(cache, 'drawn') },
      ]}
    />
  );
};
