import { useCalendar } from '../../api/index.js';
import { figure, inWords, Lines, stockInWords } from '../../ui/index.js';
import type { Cache, Caches } from './caches-read.js';
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
      rows={dayRows(cache, caches.dates, caches.fillLitres)}
      keyOf={({ date }) => date}
      columns={[
        { head: 'Day', heads: true, cell: ({ date }) => day(date) },
        { head: 'Landed', figures: true, cell: ({ landed }) => litresOf(landed) },
        { head: 'By', cell: ({ landed }) => <Names parts={landed} /> },
        { head: 'Drawn', figures: true, cell: drawnWords },
        { head: 'For', cell: ({ drawn }) => <Names parts={drawn} /> },
        { head: 'Level', figures: true, cell: (row) => <LevelCell litres={row.levelLitres} cache={cache} /> },
        {
          head: 'Without',
          figures: true,
          wide: true,
          cell: ({ withoutLitres }) => stockInWords(withoutLitres),
        },
      ]}
    />
  );
};

const litresOf = (parts: readonly Part[]): string => (parts.length === 0 ? '' : `${figure(sumOf(parts))} L`);

/** What is asked for, how much of it comes out of the medevac reserve, and how much there is no fuel for. */
const drawnWords = ({ drawn, outOfReserveLitres, unmetLitres }: DayRow) => (
  <>
    {litresOf(drawn)}
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
        <b>{stockInWords(litres)}</b> {litres >= 0 && <span className="word">crit.</span>}
      </span>
    );
  if (litres < minimumLitres)
    return (
      <span className="level-cell below">
        <b>{figure(litres)} L</b> <span className="word">below</span>
      </span>
    );
  return <b>{figure(litres)} L</b>;
};
