import { useCalendar } from '../../api/index.js';
import { type KeptSurfaceReport, useKeptSurfaces } from '../../radio/kept-surfaces.js';
import { Lines, NotSetUp, SurfaceWord, useIsPrinting } from '../../ui/index.js';
import type { Strip } from './morning-read.js';

/** One column a strip: what is known of it now. */
export const StripTable = ({ strips }: { readonly strips: readonly Strip[] }) => {
  const { when, day } = useCalendar();
  const isPrinting = useIsPrinting();
  const kept = useKeptSurfaces();
  const isKept = strips.some(({ place }) => kept.has(place));
  const rows: readonly (readonly [head: string, cell: (strip: Strip) => React.ReactNode])[] = [
    ['Surface', ({ surface }) => <SurfaceWord state={surface ?? 'unknown'} />],
    ...(isKept
      ? [['Kept here, not sent', ({ place }: Strip) => <KeptCell kept={kept.get(place)} />] as const]
      : []),
    ['Plan counts on', ({ counts }) => counts],
    ['Reported', ({ reportedAt }) => (reportedAt === null ? 'never' : when(reportedAt))],
    ['Said by', ({ by }) => speaker(by)],
    ['Stale at', (strip) => staleWords(strip, when, day)],
    ['Tailwind, most', ({ tailwindLimitKt }) => (tailwindLimitKt === null ? '' : `${tailwindLimitKt} kt`)],
    ['Class', ({ stripClass }) => stripClass],
    [
      'Drums a day',
      ({ drumsToday, drumsADay }) => (drumsADay === null ? `${drumsToday}` : `${drumsToday} of ${drumsADay}`),
    ],
  ];
  if (strips.length === 0)
    return (
      <NotSetUp
        what="No strip is set up yet"
        why="What is known of each strip stands here: its surface, who said it, what lands today."
        step="places"
        stepWords="Set-up, Places"
      />
    );
  // A sheet is not as wide as all strips beside each other: there they stand under each other.
  if (isPrinting)
    return (
      <section className="morning-strips">
        <Lines<Strip>
          caption="Strips"
          rows={strips}
          keyOf={({ place }) => place}
          columns={[
            { head: 'Strip', heads: true, cell: ({ place }) => place },
            ...rows.map(([head, cell]) => ({ head, cell })),
          ]}
        />
      </section>
    );
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: it scrolls where the page is narrow
    <section className="morning-strips" aria-label="Strips" tabIndex={0}>
      <table>
        <caption className="unseen">Strips: surface, report, limits, drums today</caption>
        <thead>
          <tr>
            <th scope="col">Strips</th>
            {strips.map(({ place, name }) => (
              <th key={place} scope="col" aria-label={`${place}, ${name}`}>
                {place}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {rows.map(([head, cell]) => (
            <tr key={head}>
              <th scope="row">{head}</th>
              {strips.map((strip) => (
                <td key={strip.place}>{cell(strip)}</td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
};

/** What was said here and base has not heard: the plan does not count on it yet. */
const KeptCell = ({ kept }: { readonly kept: KeptSurfaceReport | undefined }) => {
  const { when } = useCalendar();
  if (kept === undefined) return null;
  const { report, isRefused } = kept;
  return (
    <span className="kept">
      <SurfaceWord state={report.state} /> {when(report.at)} {speaker(report.by)}
      {isRefused && <b className="plum"> Base says no: see Radio and paper.</b>}
    </span>
  );
};

/** "strip helper, by radio" is said by the helper. */
const speaker = (by: string | null): string =>
  by === null ? '' : by.replace(/, by radio$/, '').replace(/^strip helper$/, 'helper');

const staleWords = (
  { surface, staleAt, untilDate, reportedAt }: Strip,
  when: (at: string) => string,
  day: (at: string) => string,
): string => {
  if (reportedAt === null) return '';
  if (surface === null) return 'stale';
  return untilDate === null ? when(staleAt!) : `after ${day(untilDate)}`;
};
