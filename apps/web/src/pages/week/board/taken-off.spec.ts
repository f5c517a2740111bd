import { expect, it } from 'vitest';
import { exampleBooked, exampleFlight, exampleWeek } from '../week-example.js';
import { boardRows } from './board-rows.js';
import { takenOffBooked, takenOffWords, undoneWords } from './taken-off.js';

it('a booked flight whose drums were called off is one box, booked, and says that they are taken off', () => {
  const off = exampleFlight({ id: 'X1', kind: 'booked', state: 'called off', drums: 3 });
  const week = exampleWeek({ flights: [off], booked: [exampleBooked()] });
  expect(boardRows(week)[0]!.cells[0]!.morning).toMatchObject([
    { kind: 'booked', flight: { id: 'X1' }, takenOff: { drums: 3 } },
  ]);
  expect([...takenOffBooked(week).values()].map(takenOffWords)).toEqual(['3 drums taken off']);
});

it('one that was taken out of the programme too is shown as called off', () => {
  const off = exampleFlight({ id: 'X1', kind: 'booked', state: 'called off' });
  const [row] = boardRows(exampleWeek({ flights: [off], booked: [] }));
  expect(row!.cells[0]!.morning).toMatchObject([{ kind: 'flight' }]);
});

it('an accepted plan says that drums are taken off, never that the mail is called off', () => {
  expect(undoneWords(['F004', 'X3'], new Map([['X3', 1]]))).toBe(
    ' Called off: F004. 1 drum taken off X3, which flies all the same.',
  );
  expect(undoneWords([], new Map())).toBe('');
});
