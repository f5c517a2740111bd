import { useCalendar, useMe } from '../../api/index.js';
import { ageInWords, figure, inWords, levelsWith, stockInWords } from '../../ui/index.js';
import type { NamedCache } from './cache-list.js';
import { dayNames, whatFails } from './cache-words.js';
import type { Cache, Caches } from './caches-read.js';
import { dayRows } from './day-rows.js';
import { LevelCell } from './day-table.js';

interface AllAsTablesProps {
  readonly caches: Caches;
  readonly shown: readonly NamedCache[];
}

/** Every graph as figures, which is also the print. */
export const AllAsTables = ({ caches, shown }: AllAsTablesProps) => {
  const { day, date, time, now } = useCalendar();
  const { fullName } = useMe();
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: it scrolls, and has to be reached by key
    <section className="caches-tables" aria-label="All caches as tables" tabIndex={0}>
      <table className="lines">
        <caption>Level at the end of each day, {levelsWith(caches.laterIdeas)}, L</caption>
        <thead>
          <tr>
            <th scope="col">Cache</th>
            <th scope="col" className="n">
              Now
            </th>
            {caches.dates.map((each) => (
              <th key={each} scope="col" className="n">
                {day(each)}
              </th>
            ))}
            {['Minimum', 'Suggested', 'Critical', 'Days of cover, mean draw', 'Count'].map((head) => (
              <th key={head} scope="col" className="n">
                {head}
              </th>
            ))}
          </tr>
        </thead>
        {shown.map(({ cache, name }) => (
          <tbody key={cache.place}>
            <LevelRow cache={cache} name={name} />
            <WithoutRow cache={cache} />
          </tbody>
        ))}
      </table>
      <Comings caches={caches} shown={shown} />
      <p className="caches-foot">
        Printed {date(now)}, {time(now)}, {fullName}. Level as of {time(caches.asOf)}. A later print replaces
        it: throw this one away then.
      </p>
    </section>
  );
};

const LevelRow = ({ cache, name }: { readonly cache: Cache; readonly name: string }) => {
  const { lastCount } = cache.stock;
  return (
    <tr>
      <th scope="row" rowSpan={2}>
        {cache.place} <small>{name}</small>
      </th>
      {cache.projections.offered.usableLitres.map((litres, day) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: a day has no name but its place
        <td key={day} className="n">
          <LevelCell litres={litres} cache={cache} />
        </td>
      ))}
      <td className="n">{figure(cache.minimumLitres)} L</td>
      <td className="n">{figure(cache.suggestedMinimum.litres)} L</td>
      <td className="n">{figure(cache.criticalLitres)} L</td>
      <td className="n">{cache.daysOfCover === null ? 'no draws' : inWords(cache.daysOfCover, 'days', 1)}</td>
      <td className="n">
        {lastCount === null
          ? 'none'
          : `${figure(lastCount.countedLitres)} L, ${ageInWords(lastCount.ageHours)} old`}
      </td>
    </tr>
  );
};

const WithoutRow = ({ cache }: { readonly cache: Cache }) => (
  <tr className="without">
    {cache.projections.noDeliveries.usableLitres.map((litres, day) => (
      // biome-ignore lint/suspicious/noArrayIndexKey: as above
      <td key={day} className="n">
        {stockInWords(litres)}
      </td>
    ))}
    <td colSpan={5}>with no deliveries</td>
  </tr>
);

/** What lands and what leaves, in words: the ticks and triangles of the graphs. */
const Comings = ({ caches, shown }: AllAsTablesProps) => {
  const { day } = useCalendar();
  const dayName = dayNames(caches.dates, day);
  return (
    <table className="lines">
      <caption>What lands, what is drawn</caption>
      <thead>
        <tr>
          {['Cache', 'Lands', 'Drawn', 'Without deliveries'].map((head) => (
            <th key={head} scope="col">
              {head}
            </th>
          ))}
        </tr>
      </thead>
      <tbody>
        {shown.map(({ cache }) => {
          const rows = dayRows(cache, caches.dates, caches.fillLitres);
          const said = (which: 'landed' | 'drawn') =>
            rows
              .flatMap((row) =>
                row[which].map(
                  ({ litres, by, isAsked }) =>
                    `${day(row.date)} ${figure(litres)} L ${by}${isAsked ? ' (needs a decision)' : ''}`,
                ),
              )
              .join('; ');
          return (
            <tr key={cache.place}>
              <th scope="row">{cache.place}</th>
              <td>{said('landed')}</td>
              <td>{said('drawn')}</td>
              <td>{whatFails(cache.projections.noDeliveries, dayName) || 'above minimum'}</td>
            </tr>
          );
        })}
      </tbody>
    </table>
  );
};
