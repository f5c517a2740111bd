import { useState } from 'react';
import type { Calendar } from '../../../api/index.js';
import {
  across,
  Choice,
  figure,
  type LevelScale,
  Lines,
  levelScale,
  litreLines,
  stepped,
  stockInWords,
  topFor,
  useIsPrinting,
} from '../../../ui/index.js';
import type { Differences } from './differences-read.js';
import { changedCaches, type LevelDays, levelFinding, lineEnds } from './level-days.js';

interface LevelGraphProps {
  readonly differences: Differences;
  readonly calendar: Calendar;
}

/** One cache day by day, standing against proposed: the one that changes most, until another is chosen. */
export const LevelGraph = ({ differences, calendar }: LevelGraphProps) => {
  const [chosen, choose] = useState<string>();
  const changed = changedCaches(differences);
  const cache = changed.find(({ place }) => place === chosen) ?? changed[0];
  if (cache === undefined) return null;
  return (
    <section className="section level-days">
      <h2>
        {cache.place}, level day by day <small>L, at the end of each</small>
      </h2>
      {changed.length > 1 && (
        <Choice
          label={`Cache, ${changed.length} change`}
          value={cache.place}
          options={changed.map(({ place }) => [place, place])}
          onChange={choose}
        />
      )}
      <Graph cache={cache} calendar={calendar} />
      <details>
        <summary>As a table</summary>
        <DayTable cache={cache} calendar={calendar} />
      </details>
    </section>
  );
};

interface CacheProps {
  readonly cache: LevelDays;
  readonly calendar: Calendar;
}

const onScreen = { width: 560, height: 200, words: 124 };

/** As wide as it is printed, so that its words keep their size. */
const onPaper = { width: 348, height: 140, words: 116 };

const Graph = ({ cache, calendar }: CacheProps) => {
  const size = useIsPrinting() ? onPaper : onScreen;
  const highest = Math.max(...cache.before, ...cache.after, cache.minimumLitres);
  const scale = levelScale(size, cache.dates.length, topFor(highest));
  const { width, height, right } = scale;
  return (
    <svg
      className="level-graph"
      viewBox={`0 0 ${width} ${height}`}
      role="img"
      aria-label={levelFinding(cache, calendar.day)}
    >
      <Axes scale={scale} dates={cache.dates} />
      <path className="minimum" d={across(cache.minimumLitres, scale)} />
      {cache.criticalLitres > 0 && <path className="critical" d={across(cache.criticalLitres, scale)} />}
      <path className="standing" d={stepped(cache.before, scale)} />
      <path className="with" d={stepped(cache.after, scale)} />
      {lineEnds(cache, scale).map(({ words, y, isProposed }) => (
        <text key={words} x={right + 6} y={y} fontWeight={isProposed ? 600 : 400}>
          {words}
        </text>
      ))}
    </svg>
  );
};

const Axes = ({ scale, dates }: { readonly scale: LevelScale; readonly dates: readonly string[] }) => {
  const { left, right, bottom, height, x, y, topLitres } = scale;
  const lines = litreLines(topLitres);
  return (
    <>
      <path className="across" d={lines.map((litres) => across(litres, scale)).join('')} />
      <path
        className="foot"
        d={`M${left} ${bottom}H${right}${dates.map((_, day) => `M${x(day + 1)} ${bottom}v4`).join('')}`}
      />
      {lines.map((litres) => (
        <text key={litres} x={left - 4} y={y(litres) + 4} textAnchor="end">
          {figure(litres)}
        </text>
      ))}
      {dates.map(
        (date, day) =>
          day % 2 === 0 && (
            <text key={date} x={x(day + 1)} y={height - 6} textAnchor="middle">
              {Number(date.slice(8))}
            </text>
          ),
      )}
    </>
  );
};

const DayTable = ({ cache, calendar }: CacheProps) => (
  <Lines
    caption={`${cache.place} with either plan, at the end of each day`}
    captionUnseen
    rows={cache.dates.map((date, day) => ({ date, day: day + 1 }))}
    keyOf={({ date }) => date}
    columns={[
      { head: 'Day', heads: true, cell: ({ date }) => calendar.day(date) },
      { head: 'Standing', figures: true, cell: ({ day }) => stockInWords(cache.before[day]!) },
      { head: 'Proposed', figures: true, cell: ({ day }) => stockInWords(cache.after[day]!) },
    ]}
  />
);
