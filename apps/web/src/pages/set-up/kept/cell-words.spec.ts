import { describe, expect, it } from 'vitest';
import { sectionAt, specOf } from '../sections.js';
import { cellWords, fieldsIn } from './cell-words.js';

/** What the list of a section says of one field of a thing. */
const said = (list: string, key: string, value: unknown): string =>
  cellWords(fieldsIn(specOf(sectionAt(list), 'cr')).find((field) => field.key === key)!, value);

describe('a cell of a list in set-up', () => {
  it('reads a leg from where to where, in whatever order its fields are kept', () => {
    const legs = [
      { to: 'XISK', from: 'XMER', passengers: 4 },
      { passengers: 4, from: 'XISK', to: 'XMER' },
    ];
    expect(said('bookedFlights', 'legs', legs)).toBe('XMER to XISK; XISK to XMER');
  });

  it('reads days away from the first to the last', () => {
    const away = [{ reason: 'check', until: '2027-06-18', from: '2027-06-17' }];
    expect(said('aircraft', 'absences', away)).toBe('2027-06-17 to 2027-06-18');
  });

  it('reads odds in per cent, as the morning does', () => {
    expect(said('weather', 'morningCancel', 0.28)).toBe('28 %');
  });

  it('reads a moment without the letters of its format', () => {
    expect(said('notices', 'from', '2027-06-12T00:00Z')).toBe('2027-06-12 00:00 UTC');
  });
});
