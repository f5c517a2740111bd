import type { Week, WeekBooked, WeekFlight } from './week-read.js';

export type Box =
  | { readonly kind: 'flight'; readonly flight: WeekFlight }
  | { readonly kind: 'booked'; readonly flight: WeekBooked };

export type Half = 'morning' | 'afternoon';

export interface Cell {
  readonly date: string;
  readonly noFlying: boolean;
  /** Why the aircraft is out; null: it is there. */
  readonly out: string | null;
  readonly morning: readonly Box[];
  readonly afternoon: readonly Box[];
}

export interface BoardRow {
  readonly tail: string;
  readonly home: string | null;
  readonly cells: readonly Cell[];
}

/** The board: a row an aircraft, a cell a day. A flight of a tail that is no longer listed keeps a row of its own. */
export const boardRows = ({ aircraft, days, flights, booked }: Week): readonly BoardRow[] => {
  const boxes = boxesByCell(flights, booked);
  const listed = new Set(aircraft.map(({ tail }) => tail));
  const gone = [...new Set(flights.map((flight) => flight.aircraft))].filter((tail) => !listed.has(tail));
  const rows = [...aircraft, ...gone.map((tail) => ({ tail, home: null, absences: [] }))];
  return rows.map(({ tail, home, absences }) => ({
    tail,
    home,
    cells: days.map(({ date, noFlying }) => ({
      date,
      noFlying,
      out: absences.find(({ from, until }) => from <= date && date <= until)?.reason ?? null,
      ...(boxes.get(`${tail} ${date}`) ?? nothing),
    })),
  }));
};

const nothing = { morning: [], afternoon: [] } as const;

const boxesByCell = (flights: readonly WeekFlight[], booked: readonly WeekBooked[]) => {
  const cells = new Map<string, { morning: Box[]; afternoon: Box[] }>();
  const put = (box: Box) => {
    const key = `${box.flight.aircraft} ${box.flight.date}`;
    const cell = cells.get(key) ?? { morning: [], afternoon: [] };
    cells.set(key, cell);
    cell[halfOf(box.flight.departs)].push(box);
  };
  for (const flight of flights) put({ kind: 'flight', flight });
  for (const flight of booked) put({ kind: 'booked', flight });
  for (const { morning, afternoon } of cells.values()) {
    morning.sort(byDeparture);
    afternoon.sort(byDeparture);
  }
  return cells;
};

/** A flight without a time stands in the morning, where there is most room to move it. */
const halfOf = (departs: string | null): Half =>
  departs !== null && departs >= '12:00' ? 'afternoon' : 'morning';

const byDeparture = ({ flight: one }: Box, { flight: other }: Box): number =>
  (one.departs ?? '').localeCompare(other.departs ?? '') || one.id.localeCompare(other.id);

/** What the board opens with: a flight that needs a decision, else the first that is offered from today on. */
export const firstToDecide = ({ flights, today }: Week): string | undefined => {
  const ahead = flights.filter(({ date }) => date >= today);
  const first = ahead.find(({ needsDecision }) => needsDecision !== null) ?? ahead.find(isOffered);
  return (first ?? ahead[0] ?? flights[0])?.id;
};

const isOffered = ({ state }: WeekFlight): boolean => state === 'offered';

/** Boxes one above the other that one landscape page takes at full size: measured, title, cost and foot taken off. */
const boxesDownAPage = 7.2;

/** The day heads and the landings, which are made smaller with the board: as high as this many boxes. */
const headAndLandings = 1.8;

/** By how much the board is made smaller to stand on one page. What is declined or called off is not printed. */
export const printScale = (rows: readonly BoardRow[]): number => {
  const boxesDown = rows.reduce((sum, { cells }) => sum + Math.max(1.2, ...cells.map(printedBoxes)), 0);
  return Math.min(1, boxesDownAPage / (headAndLandings + boxesDown));
};

const printedBoxes = ({ morning, afternoon }: Cell): number =>
  Math.max(0.6, morning.filter(isPrinted).length) + Math.max(0.6, afternoon.filter(isPrinted).length);

const isPrinted = ({ kind, flight }: Box): boolean =>
  kind === 'booked' || !['declined', 'called off'].includes(flight.state);
