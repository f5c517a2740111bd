import { memo, useRef } from 'react';
import { LevelMark } from '../../../ui/index.js';
import type { NamedCache } from '../cache-list.js';
import { coverInShort, dayNames, finding, levelAhead, lowestWords } from '../cache-words.js';
import { CacheGraph } from './cache-graph.js';
import type { GridSize } from './grid-size.js';
import { useWasNear } from './near.js';

/** What all the cells of a picture have in common. */
export interface Shared {
  readonly dates: readonly string[];
  readonly fillLitres: number;
  readonly now: number;
  readonly day: (date: string) => string;
  readonly size: GridSize;
}

interface CacheCellProps {
  readonly named: NamedCache;
  readonly shared: Shared;
  readonly isSelected: boolean;
  /** The one that Tab comes to. */
  readonly isTabStop: boolean;
  readonly onSelect: (place: string) => void;
}

/** One cache of many: what is worst, its graph, the lowest level, cover and count. */
export const CacheCell = memo(({ named, shared, isSelected, isTabStop, onSelect }: CacheCellProps) => {
  const { cache, name } = named;
  const { dates, size } = shared;
  const cell = useRef<HTMLLIElement>(null);
  const isDrawn = useWasNear(cell);
  const dayName = dayNames(dates, shared.day);
  const ahead = levelAhead(cache, dayName);
  const cover = coverInShort(cache);
  return (
    <li ref={cell} className="cache-cell">
      <button
        type="button"
        data-place={cache.place}
        aria-pressed={isSelected}
        tabIndex={isTabStop ? 0 : -1}
        onClick={() => onSelect(cache.place)}
      >
        <span className="head">
          <b>{cache.place}</b>
          <LevelMark level={ahead.level} words={ahead.words} />
        </span>
        <span className="named">
          <span>{name}</span>
          <span>{cover}</span>
        </span>
        {isDrawn ? (
          <CacheGraph
            cache={cache}
            dates={dates}
            fillLitres={shared.fillLitres}
            now={shared.now}
            width={size.graphWidth}
            height={size.graphHeight}
            label={finding(cache, dayName)}
          />
        ) : (
          <span className="not-drawn" style={{ height: size.graphHeight }}>
            <span className="unseen">{finding(cache, dayName)}</span>
          </span>
        )}
        <span className="foot">
          <span>{lowestWords(cache.projections.offered, dayName)}</span>
          <span className="more">{cover}</span>
        </span>
      </button>
    </li>
  );
});
