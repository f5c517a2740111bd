import type { BoardRow, Cell } from './board-rows.js';

/** Where the keyboard is on the board: a row, a day, and one of the boxes of that cell, from the top. */
export interface At {
  readonly row: number;
  readonly day: number;
  readonly box: number;
}

export const atKey = ({ row, day, box }: At): string => `${row}.${day}.${box}`;

export const atOf = (key: string): At => {
  const [row, day, box] = key.split('.').map(Number);
  return { row: row!, day: day!, box: box! };
};

/** Stops of the keyboard in a cell: its boxes, or the empty cell itself. */
const stopsIn = ({ morning, afternoon }: Cell): number => Math.max(1, morning.length + afternoon.length);

/** Where a key leads: left and right by day, up and down by box and aircraft; undefined: the key is another's. */
export const moved = (rows: readonly BoardRow[], at: At, key: string): At | undefined => {
  const days = rows[0]?.cells.length ?? 0;
  switch (key) {
    case 'ArrowRight':
      return toDay(rows, at, Math.min(days - 1, at.day + 1));
    case 'ArrowLeft':
      return toDay(rows, at, Math.max(0, at.day - 1));
    case 'Home':
      return toDay(rows, at, 0);
    case 'End':
      return toDay(rows, at, days - 1);
    case 'ArrowDown':
      return down(rows, at);
    case 'ArrowUp':
      return up(rows, at);
    default:
      return undefined;
  }
};

const toDay = (rows: readonly BoardRow[], { row, box }: At, day: number): At => ({
  row,
  day,
  box: Math.min(box, stopsIn(rows[row]!.cells[day]!) - 1),
});

const down = (rows: readonly BoardRow[], { row, day, box }: At): At => {
  if (box + 1 < stopsIn(rows[row]!.cells[day]!)) return { row, day, box: box + 1 };
  return row + 1 < rows.length ? { row: row + 1, day, box: 0 } : { row, day, box };
};

const up = (rows: readonly BoardRow[], { row, day, box }: At): At => {
  if (box > 0) return { row, day, box: box - 1 };
  return row > 0 ? { row: row - 1, day, box: stopsIn(rows[row - 1]!.cells[day]!) - 1 } : { row, day, box };
};
