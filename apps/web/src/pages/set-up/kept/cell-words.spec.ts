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
    expect(said('aircraft', 'absences', away)).toBe('17 June 2027 to 18 June 2027');
  });

  it('reads one day away as that day', () => {
    const away = [{ reason: 'check', until: '2027-06-14', from: '2027-06-14' }];
    expect(said('aircraft', 'absences', away)).toBe('14 June 2027');
  });

  it('reads a landing as a strip and its day, not as a way from one to the other', () => {
    const landings = [{ place: 'XFAL', date: '2027-06-02' }];
    expect(said('pilots', 'lastLandings', landings)).toBe('XFAL 2 June 2027');
  });

  it('reads days off as dates', () => {
    expect(said('pilots', 'daysOff', ['2027-06-22', '2027-06-23'])).toBe('22 June 2027, 23 June 2027');
  });

  it('reads how litres are charged with its figure', () => {
    expect(said('programmes', 'recharge', { kind: 'delivered cost', marginPercent: 8 })).toBe(
      'delivered cost, margin on it 8 %',
    );
    expect(said('programmes', 'recharge', { kind: 'fixed price', centsPerLitre: 520 })).toBe(
      'fixed price, 5.20 cr/L',
    );
    expect(said('programmes', 'recharge', { kind: 'not recharged' })).toBe('not recharged');
  });

  it('reads load factors with their document, without the label of the document', () => {
    const factors = { forward: 9, aft: 2, sideways: 2, up: 4, reference: 'manual 5.1' };
    expect(said('tieDown', 'factors', factors)).toBe(
      'Forward 9 g, Aft 2 g, Sideways 2 g, Up 4 g, manual 5.1',
    );
  });

  it('reads odds in per cent, as the morning does', () => {
    expect(said('weather', 'morningCancel', 0.28)).toBe('28 %');
  });

  it('reads a moment without the letters of its format', () => {
    expect(said('notices', 'from', '2027-06-12T00:00Z')).toBe('12 June 2027 00:00 UTC');
  });
});
