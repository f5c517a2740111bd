import { describe, expect, it } from 'vitest';
import { exampleBooked, exampleFlight, exampleWeek } from '../week-example.js';
import { atKey, atOf, moved } from './board-cursor.js';
import { boardRows, densityOf, firstToDecide, printScale } from './board-rows.js';
import { landingsByDay } from './landings-by-day.js';

const idsOf = (boxes: readonly { readonly flight: { readonly id: string } }[] | undefined) =>
  boxes?.map(({ flight }) => flight.id);

describe('the board', () => {
  it('has a row an aircraft and a cell a day; noon parts morning from afternoon', () => {
    const flights = [
      exampleFlight({ id: 'F2', departs: '12:00' }),
      exampleFlight({ departs: '11:59' }),
      exampleFlight({ id: 'F3', aircraft: 'A2', date: '2031-03-04' }),
    ];
    const rows = boardRows(exampleWeek({ flights }));
    expect(rows.map(({ tail, cells }) => [tail, cells.length])).toEqual([
      ['A1', 3],
      ['A2', 3],
    ]);
    expect(idsOf(rows[0]!.cells[0]!.morning)).toEqual(['F1']);
    expect(idsOf(rows[0]!.cells[0]!.afternoon)).toEqual(['F2']);
    expect(idsOf(rows[1]!.cells[1]!.morning)).toEqual(['F3']);
  });

  it('stands flights of a half day in the order of departure, those without a time first', () => {
    const flights = [exampleFlight({ departs: '09:30' }), exampleFlight({ id: 'F0', departs: '07:00' })];
    const [row] = boardRows(exampleWeek({ flights, booked: [exampleBooked()] }));
    expect(idsOf(row!.cells[0]!.morning)).toEqual(['X1', 'F0', 'F1']);
  });

  it('of a flight out and back home the stops say enough where there is little room', () => {
    const flights = [
      exampleFlight({ route: ['XHOM', 'XNOR', 'XSOU', 'XHOM'] }),
      exampleFlight({ id: 'F2', departs: '13:00', route: ['XHOM', 'XNOR', 'XELS'] }),
    ];
    const [cell] = boardRows(exampleWeek({ flights }))[0]!.cells;
    expect(cell!.morning[0]!.stops).toEqual(['XNOR', 'XSOU']);
    expect(cell!.afternoon[0]!.stops).toBeNull();
  });

  it('says less of each flight before anybody has to scroll, and all of it where scrolling is needed anyway', () => {
    const withFlights = (count: number) => {
      const flights = Array.from({ length: count }, (_, index) => exampleFlight({ id: `F${index}` }));
      return densityOf(boardRows(exampleWeek({ flights })));
    };
    // One more for A2, which has none.
    expect([2, 6, 7, 9, 10, 12, 13].map(withFlights)).toEqual([
      ...['roomy', 'roomy', 'close', 'close', 'tight', 'tight', 'roomy'],
    ]);
  });

  it('says why an aircraft is out, on the first and the last day of it', () => {
    const absences = [{ from: '2031-03-04', until: '2031-03-05', reason: 'inspection' }];
    const aircraft = [{ tail: 'A1', type: 'A', home: 'XHOM', absences }];
    const [row] = boardRows(exampleWeek({ aircraft }));
    expect(row!.cells.map(({ out }) => out)).toEqual([null, 'inspection', 'inspection']);
  });

  it('keeps the flights of an aircraft that is no longer listed', () => {
    const rows = boardRows(exampleWeek({ flights: [exampleFlight({ aircraft: 'Z9' })] }));
    expect(rows.at(-1)).toMatchObject({ tail: 'Z9', home: null });
  });

  it('opens with what needs a decision, else what is offered from today on', () => {
    const past = exampleFlight({ id: 'F0', date: '2031-03-02' });
    const firm = exampleFlight({ id: 'F1', state: 'approved' });
    const offered = exampleFlight({ id: 'F2', date: '2031-03-04' });
    const asked = exampleFlight({ id: 'F3', needsDecision: 'XNOR is soft.' });
    expect(firstToDecide(exampleWeek({ flights: [past, firm, offered, asked] }))).toBe('F3');
    expect(firstToDecide(exampleWeek({ flights: [past, firm, offered] }))).toBe('F2');
    expect(firstToDecide(exampleWeek())).toBeUndefined();
  });

  it('is printed smaller when it is high; what was declined is not printed', () => {
    const flights = Array.from({ length: 20 }, (_, n) => exampleFlight({ id: `F${n}` }));
    expect(printScale(boardRows(exampleWeek({ flights })))).toBeLessThan(0.7);
    const declined = flights.map((flight) => ({ ...flight, state: 'declined' }));
    expect(printScale(boardRows(exampleWeek({ flights: declined })))).toBe(1);
  });
});

describe('the arrows', () => {
  const flights = [
    exampleFlight(),
    exampleFlight({ id: 'F2', departs: '13:00' }),
    exampleFlight({ id: 'F3', aircraft: 'A2' }),
  ];
  const rows = boardRows(exampleWeek({ flights }));
  const from = (at: string, key: string) => {
    const to = moved(rows, atOf(at), key);
    return to && atKey(to);
  };

  it('go down through the boxes of a day, then to the next aircraft, and back', () => {
    expect(from('0.0.0', 'ArrowDown')).toBe('0.0.1');
    expect(from('0.0.1', 'ArrowDown')).toBe('1.0.0');
    expect(from('1.0.0', 'ArrowDown')).toBe('1.0.0');
    expect(from('1.0.0', 'ArrowUp')).toBe('0.0.1');
    expect(from('0.0.0', 'ArrowUp')).toBe('0.0.0');
  });

  it('go from day to day, and stay on the board', () => {
    expect(from('0.0.1', 'ArrowRight')).toBe('0.1.0');
    expect(from('0.0.0', 'ArrowLeft')).toBe('0.0.0');
    expect(from('0.0.0', 'End')).toBe('0.2.0');
    expect(from('0.2.0', 'Home')).toBe('0.0.0');
    expect(from('0.0.0', 'x')).toBeUndefined();
  });
});

describe('drums landed', () => {
  const landing = (place: string, drums: number, limitDrums: number | null = 6) => ({
    date: '2031-03-03',
    place,
    drums,
    limitDrums,
  });

  it('are listed by day, all while there is room', () => {
    const all = [landing('XNOR', 4), { ...landing('XSOU', 6), date: '2031-03-04' }];
    const byDay = landingsByDay(all, 5);
    expect(byDay.get('2031-03-03')).toEqual({ listed: [all[0]], more: 0 });
    expect(byDay.get('2031-03-05')).toBeUndefined();
  });

  it('of many the fullest, and how many more', () => {
    const all = [
      landing('A', 1),
      landing('B', 9, null),
      landing('C', 6),
      landing('D', 2),
      landing('E', 7),
      landing('F', 3),
    ];
    const { listed, more } = landingsByDay(all, 5).get('2031-03-03')!;
    expect(listed.map(({ place }) => place)).toEqual(['E', 'C', 'F', 'D']);
    expect(more).toBe(2);
  });
});
