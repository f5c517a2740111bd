import { type RefObject, useLayoutEffect, useState } from 'react';

/** Which of the columns stand in one table: as many in each as fit, and about as many in one as in the next. */
export const columnsAcross = (columns: number, width: number): readonly (readonly number[])[] => {
  const fit = Math.min(columns, Math.max(3, Math.floor((width - forNames) / forFigure)));
  const tables = Math.ceil(columns / fit);
  const each = Math.ceil(columns / tables);
  return Array.from({ length: tables }, (_, table) =>
    Array.from({ length: Math.min(each, columns - table * each) }, (_, at) => table * each + at),
  );
};

/** Of the code with the name and of "without"; of "12,345 L" in bold; px. */
const forNames = 140;
const forFigure = 51;

/** Measured, and none before: a table made for a guessed width would be made twice. A sheet of paper takes them all. */
export const useColumnsAcross = (
  element: RefObject<HTMLElement | null>,
  columns: number,
  isPrinting: boolean,
): readonly (readonly number[])[] => {
  const [width, setWidth] = useState<number | null>(null);
  useLayoutEffect(() => {
    const area = element.current!;
    const measure = () => setWidth(area.clientWidth);
    measure();
    const observer = new ResizeObserver(measure);
    observer.observe(area);
    return () => observer.disconnect();
  }, [element]);
  if (isPrinting) return columnsAcross(columns, Number.POSITIVE_INFINITY);
  return width === null ? [] : columnsAcross(columns, width);
};
