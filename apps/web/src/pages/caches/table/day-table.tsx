import { useCalendar } from '../../../api/index.js';
import { inWords, Lines, stockInWords } from '../../../ui/index.js';
import type { Cache, Caches } from '../caches-read.js';
import { type DayRow, dayRows, type Part, sumOf } from './day-rows.js';

interface DayTableProps {
  readonly cache: Cache;
  readonly caches: Caches;
}

/** The graph's figures, day by day. */
export const DayTable = ({ cache, caches }: DayTableProps) => {
  const { day } = useCalendar();
  return (
    <Lines<DayRow>
      caption={`${cache.place} day by day, at the end of each`}
      captionUnseen
      rows={dayRows(cache, caches.dates)}
      keyOf={({ date }) => date}
      columns={[
        { head: 'Day', heads: true, cell: ({ date }) => day(date) },
        { head: 'Landed, by', cell: ({ landed }) => <Parts parts={landed} /> },
        { head: 'Drawn, for', cell: drawnWords },
        { head: 'Level', figures: true, cell: (row) => <LevelCell litres={row.levelLitres} cache={cache} /> },
        { head: 'Without', figures: true, cell: ({ withoutLitres }) => <Stock litres={withoutLitres} /> },
      ]}
    />
  );
};

/** All of a day, then by whom or for what. */
const Parts = ({ parts }: { readonly parts: readonly Part[] }) =>
  parts.length > 0 && (
    <>
      <span className="whole">{inWords(sumOf(parts), 'L')}</span> <Names parts={parts} />
    </>
  );

/** "short 120 L" may be parted before its figure, never within it. */
export const Stock = ({ litres }: { readonly litres: number }) => {
  const words = stockInWords(litres);
  const figureAt = words.search(/[\d,]+ L$/);
  return (
    <>
      {words.slice(0, figureAt)}
      <span className="whole">{words.slice(figureAt)}</span>
    </>
  );
};

/** What is asked for, how much of it comes out of the medevac reserve, and how much there is no fuel for. */
const drawnWords = ({ drawn, outOfReserveLitres, unmetLitres }: DayRow) => (
  <>
    <Parts parts={drawn} />
    {outOfReserveLitres > 0 && (
      <>
        <br />
        <small>{inWords(outOfReserveLitres, 'L')} out of the reserve</small>
      </>
    )}
    {unmetLitres > 0 && (
      <>
        <br />
        <small>{inWords(unmetLitres, 'L')} unmet</small>
      </>
    )}
  </>
);

const Names = ({ parts }: { readonly parts: readonly Part[] }) =>
  parts.map(({ by, isAsked }, index) => (
    // biome-ignore lint/suspicious/noArrayIndexKey: two draws of a day may have one name
    <span key={index}>
      {index > 0 && ', '}
      {by}
      {isAsked && <b className="plum"> ?</b>}
    </span>
  ));

/** The figure with its word where it is under a level. */
export const LevelCell = ({ litres, cache }: { readonly litres: number; readonly cache: Cache }) => {
  const { criticalLitres, minimumLitres } = cache;
  if (litres < criticalLitres)
    return (
      <span className="level-cell critical">
        <b>
          <Stock litres={litres} />
        </b>{' '}
        {litres >= 0 && <span className="word">crit.</span>}
      </span>
    );
  if (litres < minimumLitres)
    return (
      <span className="level-cell below">
        <b className="whole">{inWords(litres, 'L')}</b> <span className="word">below</span>
      </span>
    );
  return <b className="whole">{inWords(litres, 'L')}</b>;
};
