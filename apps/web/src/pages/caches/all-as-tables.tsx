import { useCalendar, useMe } from '../../api/index.js';
import { ageInWords, inWords, Lines, levelsWith } from '../../ui/index.js';
import type { NamedCache } from './cache-list.js';
import { dayNames, whatFails } from './cache-words.js';
import type { Cache, Caches } from './caches-read.js';
import { dayRows } from './day-rows.js';
import { LevelCell, Stock } from './day-table.js';

interface AllAsTablesProps {
  readonly caches: Caches;
  readonly shown: readonly NamedCache[];
}

/** Every graph as figures, which is also the print. */
export const AllAsTables = ({ caches, shown }: AllAsTablesProps) => {
  const { date, time, now } = useCalendar();
  const { fullName } = useMe();
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: it scrolls, and has to be reached by key
    <section className="caches-tables" aria-label="All caches as tables" tabIndex={0}>
      <Levels caches={caches} shown={shown} />
      <Bounds caches={caches} shown={shown} />
      <Comings caches={caches} shown={shown} />
      <p className="caches-foot">
        Printed {date(now)}, {time(now)}, {fullName}. Level as of {time(caches.asOf)}. A later print replaces
        it: throw this one away then.
      </p>
    </section>
  );
};

const Levels = ({ caches, shown }: AllAsTablesProps) => {
  const { day } = useCalendar();
  return (
    <table className="lines levels">
      <caption>
        Level at the end of each day, {levelsWith(caches.laterIdeas)}; under it the level with no deliveries
      </caption>
      <thead>
        <tr>
          <th scope="col">Cache</th>
          <th scope="col">Deliveries</th>
          <th scope="col" className="n">
            Now
          </th>
          {caches.dates.map((each) => (
            <th key={each} scope="col" className="n">
              {day(each)}
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
            {cache.projections.offered.usableLitres.map((litres, day) => (
              // biome-ignore lint/suspicious/noArrayIndexKey: a day has no name but its place
              <td key={day} className="n">
                <LevelCell litres={litres} cache={cache} />
              </td>
            ))}
          </tr>
          <tr className="without">
            <th scope="row">without</th>
            {cache.projections.noDeliveries.usableLitres.map((litres, day) => (
              // biome-ignore lint/suspicious/noArrayIndexKey: as above
              <td key={day} className="n">
                <Stock litres={litres} />
              </td>
            ))}
          </tr>
        </tbody>
      ))}
    </table>
  );
};

/** What the levels are held against, how long they last, and when they were counted. */
const Bounds = ({ caches, shown }: AllAsTablesProps) => {
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
const Comings = ({ caches, shown }: AllAsTablesProps) => {
  const { day } = useCalendar();
  const said = (cache: Cache, which: 'landed' | 'drawn') =>
    dayRows(cache, caches.dates, caches.fillLitres)
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
