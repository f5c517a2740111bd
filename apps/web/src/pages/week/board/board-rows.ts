import type { Week, WeekBooked, WeekFlight } from '../week-read.js';
import { bandWords } from './box-words.js';
import { takenOffBooked } from './taken-off.js';

export type Box = (
  | { readonly kind: 'flight'; readonly flight: WeekFlight }
  | {
      readonly kind: 'booked';
      readonly flight: WeekBooked;
      /** The flight that its drums were, where they were taken off again. */
      readonly takenOff: WeekFlight | undefined;
    }
) & {
  /** Its stops alone, where it begins and ends at the home of the aircraft; null: its whole route has to be said. */
  readonly stops: readonly string[] | null;
};

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
  const boxes = boxesByCell(flights, booked, new Map(aircraft.map(({ tail, home }) => [tail, home])));
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

const boxesByCell = (
  flights: readonly WeekFlight[],
  booked: readonly WeekBooked[],
  homes: ReadonlyMap<string, string>,
) => {
  const stopsOf = ({ aircraft, route }: WeekFlight | WeekBooked) => stopsFrom(route, homes.get(aircraft));
  const cells = new Map<string, { morning: Box[]; afternoon: Box[] }>();
  const put = (box: Box) => {
    const key = `${box.flight.aircraft} ${box.flight.date}`;
    const cell = cells.get(key) ?? { morning: [], afternoon: [] };
    cells.set(key, cell);
    cell[halfOf(box.flight.departs)].push(box);
  };
  const off = takenOffBooked({ flights, booked });
  for (const flight of flights)
    if (!off.has(flight.id)) put({ kind: 'flight', flight, stops: stopsOf(flight) });
  for (const flight of booked)
    put({ kind: 'booked', flight, stops: stopsOf(flight), takenOff: off.get(flight.id) });
  for (const { morning, afternoon } of cells.values()) {
    morning.sort(byDeparture);
    afternoon.sort(byDeparture);
  }
  return cells;
};

const stopsFrom = (route: readonly string[], home: string | undefined): readonly string[] | null =>
  route.length > 2 && route[0] === home && route.at(-1) === home ? route.slice(1, -1) : null;

/** A flight without a time stands in the morning, where there is most room to move it. */
const halfOf = (departs: string | null): Half =>
  departs !== null && departs >= '12:00' ? 'afternoon' : 'morning';

const byDeparture = ({ flight: one }: Box, { flight: other }: Box): number =>
  (one.departs ?? '').localeCompare(other.departs ?? '') || one.id.localeCompare(other.id);

/** What the board opens with: a flight that needs a decision, else the first that is offered from today on. */
export const firstToDecide = (week: Week): string | undefined =>
  nextToDecide(week) ?? (aheadOf(week)[0] ?? week.flights[0])?.id;

/** What waits for a decision, the marked ones first; undefined: nothing does. */
export const nextToDecide = (week: Week): string | undefined => {
  const ahead = aheadOf(week);
  return (ahead.find(({ needsDecision }) => needsDecision !== null) ?? ahead.find(isOffered))?.id;
};

const aheadOf = ({ flights, today }: Week): readonly WeekFlight[] =>
  flights.filter(({ date }) => date >= today);

const isOffered = ({ state }: WeekFlight): boolean => state === 'offered';

/** How much of a flight its box says, so that every aircraft stands on the board at once. */
export type Density = 'roomy' | 'close' | 'tight';

/** Boxes one above the other that the board takes at 1024 by 768, at each density: measured. */
const boxesDownABoard: readonly (readonly [Density, number])[] = [
  ['roomy', 7.5],
  ['close', 10],
  ['tight', 13],
];

/** The roomiest at which nothing has to be scrolled down to; where everything has to be scrolled anyway, nothing is left out. */
export const densityOf = (rows: readonly BoardRow[]): Density => {
  const boxesDown = rows.reduce(
    (sum, { cells }) =>
      sum + Math.max(1, ...cells.map(({ morning, afternoon }) => heightOf([...morning, ...afternoon]))),
    0,
  );
  return boxesDownABoard.find(([, most]) => boxesDown <= most)?.[0] ?? 'roomy';
};

/** The line "Needs a decision" or "Did it fly?" on a box, of a box: two lines where days are narrow. */
const bandHeight = 0.6;

/** The same on paper, where boxes are low: with the double line of a flight that is given. */
const printedBandHeight = 1;

const heightOf = (boxes: readonly Box[], band = bandHeight): number =>
  boxes.length + band * boxes.filter(({ flight }) => isAsked(flight)).length;

const isAsked = (flight: WeekFlight | WeekBooked): boolean => bandWords(flight) !== null;

/** Boxes one above the other that one landscape page takes at full size: measured, title, cost and foot taken off. */
const boxesDownAPage = 8.4;

/** A half day without a flight, of a box. */
const emptyHalf = 0.2;

/** The day heads and the landings, which are made smaller with the board: as high as this many boxes. */
const headAndLandings = 1.7;

/** How high a box is at each density, of a roomy one. */
const boxHeights: Readonly<Record<Density, number>> = { roomy: 0.78, close: 0.78, tight: 0.58 };

/** The same in two weeks at once, where days are narrow and words go on in the next line. */
const narrowBoxHeights: Readonly<Record<Density, number>> = { roomy: 1.2, close: 1.2, tight: 0.85 };

/** By how much the board is made smaller to stand on one page. What is declined or called off is not printed. */
export const printScale = (rows: readonly BoardRow[]): number => {
  const boxesDown = rows.reduce(
    (sum, { cells }) => sum + Math.max(2 * emptyHalf, ...cells.map(printedBoxes)),
    0,
  );
  const heights = rows.some(({ cells }) => cells.length > 7) ? narrowBoxHeights : boxHeights;
  return Math.min(1, boxesDownAPage / (headAndLandings + boxesDown * heights[densityOf(rows)]));
};

const printedBoxes = ({ morning, afternoon }: Cell): number =>
  Math.max(emptyHalf, heightOf(morning.filter(isPrinted), printedBandHeight)) +
  Math.max(emptyHalf, heightOf(afternoon.filter(isPrinted), printedBandHeight));

const isPrinted = ({ kind, flight }: Box): boolean =>
  kind === 'booked' || !['declined', 'called off'].includes(flight.state);
