import { type RefObject, useLayoutEffect, useState } from 'react';

export interface GridSize {
  readonly columns: number;
  readonly rowHeight: number;
  readonly graphWidth: number;
  readonly graphHeight: number;
}

const headAndFoot = 58;
const least = { row: 150, column: 156 };

/** Four columns where they fit; rows as high as the area allows when all of them are to be seen at once. */
export const gridSize = (area: { width: number; height: number }, cells: number): GridSize => {
  const columns = Math.max(1, Math.min(4, Math.floor(area.width / least.column)));
  const rows = Math.ceil(cells / columns);
  const fair = Math.floor(area.height / Math.max(rows, 1));
  const rowHeight = Math.max(least.row, Math.min(fair, 230));
  return {
    columns,
    rowHeight,
    graphWidth: Math.floor(area.width / columns) - 17,
    graphHeight: rowHeight - headAndFoot,
  };
};

/** Measured; the same object as long as nothing has changed, so that graphs are not drawn again. */
export const useGridSize = (element: RefObject<HTMLElement | null>, cells: number): GridSize => {
  const [size, setSize] = useState(() => gridSize({ width: 900, height: 760 }, cells));
  useLayoutEffect(() => {
    const area = element.current!;
    const measure = () => {
      const isScrolled = getComputedStyle(area).overflowY === 'auto';
      const height = isScrolled ? area.clientHeight : 0;
      const next = gridSize({ width: area.clientWidth, height }, cells);
      setSize((last) => (isSame(last, next) ? last : next));
    };
    measure();
    const observer = new ResizeObserver(measure);
    observer.observe(area);
    return () => observer.disconnect();
  }, [element, cells]);
  return size;
};

const isSame = (one: GridSize, other: GridSize): boolean =>
  one.columns === other.columns && one.rowHeight === other.rowHeight && one.graphWidth === other.graphWidth;
