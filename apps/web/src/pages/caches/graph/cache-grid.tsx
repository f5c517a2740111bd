import { type KeyboardEvent, useMemo, useRef } from 'react';
import { type Calendar, useCalendar } from '../../../api/index.js';
import { arrowsInto, useKeys } from '../../../ui/index.js';
import type { NamedCache } from '../cache-list.js';
import type { Caches } from '../caches-read.js';
import { CacheCell, type Shared } from './cache-cell.js';
import { useGridSize } from './grid-size.js';
import { HowToRead } from './how-to-read.js';

interface CacheGridProps {
  readonly caches: Caches;
  readonly shown: readonly NamedCache[];
  readonly selected: string | undefined;
  readonly onSelect: (place: string) => void;
}

/** Small multiples: the arrows go from cache to cache, and the one that is chosen stands in full beside them. */
export const CacheGrid = ({ caches, shown, selected, onSelect }: CacheGridProps) => {
  const area = useRef<HTMLDivElement>(null);
  const size = useGridSize(area, shown.length + 2);
  const calendar = useCalendar();
  const now = dayGone(calendar);
  const { dates, fillLitres } = caches;
  // biome-ignore lint/correctness/useExhaustiveDependencies: the names of days are those of these dates
  const shared: Shared = useMemo(
    () => ({ dates, fillLitres, now, day: calendar.day, size }),
    [dates, fillLitres, now, size],
  );
  const isAmongThem = shown.some(({ cache }) => cache.place === selected);
  const go = (event: KeyboardEvent) => {
    const from = shown.findIndex(({ cache }) => cache.place === selected);
    const to = movedBy(event.key, Math.max(from, 0), shown.length, size.columns);
    if (to === undefined) return;
    event.preventDefault();
    const { place } = shown[to]!.cache;
    onSelect(place);
    area.current?.querySelector<HTMLElement>(`[data-place="${CSS.escape(place)}"]`)?.focus();
  };
  useKeys(
    arrowsInto('From cache to cache', 'Show the cache in full', () =>
      area.current?.querySelector<HTMLElement>('[data-place][tabindex="0"]')?.focus(),
    ),
  );
  const style = { '--columns': size.columns, '--row': `${size.rowHeight}px` } as React.CSSProperties;
  return (
    // biome-ignore lint/a11y/noStaticElementInteractions: the arrows go between the buttons in it
    <div ref={area} className="caches-area" style={style} onKeyDown={go}>
      <ul className="caches-grid" aria-label="Caches; the arrows go from one to the next">
        {shown.map((named, index) => (
          <CacheCell
            key={named.cache.place}
            named={named}
            shared={shared}
            isSelected={named.cache.place === selected}
            isTabStop={isAmongThem ? named.cache.place === selected : index === 0}
            onSelect={onSelect}
          />
        ))}
        <HowToRead />
      </ul>
    </div>
  );
};

/** To the quarter of an hour: graphs are not drawn again for less. */
const dayGone = ({ time, now }: Calendar): number => {
  const [hours, minutes] = time(now).split(':').map(Number);
  return (hours! * 4 + Math.floor(minutes! / 15)) / 96;
};

const movedBy = (key: string, from: number, count: number, columns: number): number | undefined => {
  const steps: Readonly<Record<string, number>> = {
    ArrowRight: from + 1,
    ArrowLeft: from - 1,
    ArrowDown: from + columns,
    ArrowUp: from - columns,
    Home: 0,
    End: count - 1,
  };
  const to = steps[key];
  return to === undefined || to < 0 || to >= count ? undefined : to;
};
