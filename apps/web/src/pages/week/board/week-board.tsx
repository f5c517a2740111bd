import { memo, useCallback, useEffect, useMemo, useRef } from 'react';
import type { Calendar } from '../../../api/index.js';
import { arrowsInto, useKeys } from '../../../ui/index.js';
import type { Week } from '../week-read.js';
import { atKey, atOf, moved } from './board-cursor.js';
import { boardFocus } from './board-focus.js';
import { type BoardRow, type Box, boardRows, type Cell, densityOf, printScale } from './board-rows.js';
import { FlightBox } from './flight-box.js';
import { LandingBand } from './landing-band.js';
import { hasLongReason } from './out-words.js';

interface WeekBoardProps {
  readonly week: Week;
  readonly calendar: Calendar;
  readonly selected: string | undefined;
  /** `byKey`: the person goes on in the card. */
  readonly onOpen: (id: string, byKey: boolean) => void;
}

/** Aircraft by day, morning above afternoon; under it the drums landed. The arrows move, Enter opens. */
export const WeekBoard = ({ week, calendar, selected, onOpen }: WeekBoardProps) => {
  const rows = useMemo(() => boardRows(week), [week]);
  const { grid, onKeyDown, onFocus, onBlur } = useCursor(rows);
  const rowOf = useMemo(() => rowByFlight(rows), [rows]);
  const row = selected === undefined ? undefined : rowOf.get(selected);
  return (
    <table
      ref={grid}
      // biome-ignore lint/a11y/noNoninteractiveElementToInteractiveRole: the ARIA pattern of a grid is a table with this role
      role="grid"
      aria-label="Flights, aircraft by day"
      className={`week-board ${densityOf(rows)} ${week.days.length > 7 ? 'many-days' : ''} ${hasLongReason(week) ? 'long-reasons' : ''}`}
      style={{ '--days': week.days.length, '--print-scale': printScale(rows) } as React.CSSProperties}
      tabIndex={-1}
      onKeyDown={onKeyDown}
      onFocus={onFocus}
      onBlur={onBlur}
      onClick={(event) => {
        const box = (event.target as HTMLElement).closest<HTMLElement>('[data-flight]');
        // A press of Enter on a button is a click without a place.
        if (box !== null) onOpen(box.dataset.flight!, event.detail === 0);
      }}
    >
      <DayHeads week={week} calendar={calendar} />
      <tbody>
        {rows.map((each, index) => (
          <AircraftRow
            key={each.tail}
            row={each}
            index={index}
            today={week.today}
            selected={row === index ? selected : undefined}
          />
        ))}
      </tbody>
      <LandingBand week={week} />
    </table>
  );
};

const DayHeads = ({ week, calendar }: Pick<WeekBoardProps, 'week' | 'calendar'>) => (
  <thead>
    <tr className="week-line">
      <th scope="col" className="head">
        <span className="unseen">Aircraft</span>
      </th>
      {week.days.map(({ date, noFlying }) => (
        <th key={date} scope="col" className={`head ${date === week.today ? 'now' : ''}`}>
          {calendar.day(date)}
          {date === week.today && <span className="roomy">, today</span>}
          {noFlying && <span className="unseen">, no flying day</span>}
        </th>
      ))}
    </tr>
  </thead>
);

interface RowProps {
  readonly row: BoardRow;
  readonly index: number;
  readonly today: string;
  /** Only where it is in this row: the others need not be drawn again. */
  readonly selected: string | undefined;
}

const AircraftRow = memo(({ row: { tail, home, cells }, index, today, selected }: RowProps) => (
  <tr className="week-line week-aircraft">
    <th scope="row" className="tail">
      <b>{tail}</b> {home ?? 'no longer listed'}
    </th>
    {cells.map((cell, day) => (
      <BoardCell
        key={cell.date}
        cell={cell}
        row={index}
        day={day}
        isToday={cell.date === today}
        selected={selected}
      />
    ))}
  </tr>
));
AircraftRow.displayName = 'AircraftRow';

interface CellProps {
  readonly cell: Cell;
  readonly row: number;
  readonly day: number;
  readonly isToday: boolean;
  readonly selected: string | undefined;
}

const BoardCell = ({ cell, row, day, isToday, selected }: CellProps) => {
  const { morning, afternoon } = cell;
  const away = cell.noFlying ? 'No flying day' : cell.out === null ? null : <Out reason={cell.out} />;
  const isEmpty = morning.length + afternoon.length === 0;
  return (
    <td
      className={`cell ${isToday ? 'now' : ''} ${away === null ? '' : 'out'}`}
      aria-label={isEmpty && away === null ? 'no flight' : undefined}
      {...(isEmpty ? { 'data-at': atKey({ row, day, box: 0 }), tabIndex: -1 } : {})}
    >
      {away !== null && <span className="why">{away}</span>}
      {(!isEmpty || away === null) && (
        <>
          <Boxes boxes={morning} row={row} day={day} first={0} selected={selected} />
          <Boxes boxes={afternoon} row={row} day={day} first={morning.length} selected={selected} />
        </>
      )}
    </td>
  );
};

/** Where days are narrow the reason is left to the key. */
const Out = ({ reason }: { readonly reason: string }) => (
  <span title={reason}>
    Out<span className="reason">: {reason}</span>
  </span>
);

interface BoxesProps {
  readonly boxes: readonly Box[];
  readonly row: number;
  readonly day: number;
  readonly first: number;
  readonly selected: string | undefined;
}

const Boxes = ({ boxes, row, day, first, selected }: BoxesProps) => (
  <div className="half">
    {boxes.map((box, index) => (
      <FlightBox
        key={box.flight.id}
        box={box}
        at={atKey({ row, day, box: first + index })}
        selected={box.flight.id === selected}
      />
    ))}
  </div>
);

const rowByFlight = (rows: readonly BoardRow[]): ReadonlyMap<string, number> =>
  new Map(
    rows.flatMap(({ cells }, row) =>
      cells.flatMap(({ morning, afternoon }) =>
        [...morning, ...afternoon].map(({ flight }) => [flight.id, row] as const),
      ),
    ),
  );

/** One stop of Tab for the whole board; the arrows move it. Written to the elements, so that moving draws nothing again. */
const useCursor = (rows: readonly BoardRow[]) => {
  const grid = useRef<HTMLTableElement>(null);
  const current = useRef<HTMLElement>(null);
  const makeCurrent = useCallback((element: HTMLElement) => {
    if (current.current !== null) current.current.tabIndex = -1;
    element.tabIndex = 0;
    current.current = element;
  }, []);
  useEffect(() => {
    const isThere = current.current?.isConnected === true && current.current.dataset.at !== undefined;
    const first =
      grid.current?.querySelector<HTMLElement>('[aria-pressed="true"]') ??
      grid.current?.querySelector<HTMLElement>('[data-at]');
    if (!isThere && rows.length > 0 && first) makeCurrent(first);
  }, [rows, makeCurrent]);
  useKeys(arrowsInto('From flight to flight', 'Open the card of the flight', () => current.current?.focus()));
  return {
    grid,
    onFocus: (event: React.FocusEvent) => {
      const element = (event.target as HTMLElement).closest<HTMLElement>('[data-at]');
      if (element === null) return;
      makeCurrent(element);
      boardFocus.set({ flight: element.dataset.flight });
    },
    onBlur: () => boardFocus.set(null),
    onKeyDown: (event: React.KeyboardEvent) => {
      const from = (event.target as HTMLElement).closest<HTMLElement>('[data-at]')?.dataset.at;
      if (from === undefined || event.altKey || event.ctrlKey || event.metaKey) return;
      const to = moved(rows, atOf(from), event.key);
      if (to === undefined) return;
      event.preventDefault();
      grid.current?.querySelector<HTMLElement>(`[data-at="${atKey(to)}"]`)?.focus();
    },
  };
};
