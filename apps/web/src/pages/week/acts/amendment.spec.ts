import { describe, expect, it } from 'vitest';
import { exampleFlight } from '../week-example.js';
import { amendmentOf, draftFault, draftOf } from './amendment.js';

const before = draftOf(exampleFlight(), [{ place: 'XNOR', drums: 4 }]);

describe('an amendment', () => {
  it('is of what is other than before, and nothing else', () => {
    expect(amendmentOf(before, before)).toBeNull();
    expect(amendmentOf(before, { ...before, stops: [{ place: 'XNOR', drums: ' 3' }] })).toEqual({
      stops: [{ place: 'XNOR', drums: 3 }],
    });
    expect(amendmentOf(before, { ...before, pilot: '' })).toEqual({ pilot: null });
  });

  it('of the day or the aircraft finds its own time', () => {
    expect(amendmentOf(before, { ...before, date: '2031-03-04' })).toEqual({
      date: '2031-03-04',
      departs: null,
    });
  });

  it('of the off time names it; none: the first that is free; a moved flight keeps the one that is typed', () => {
    expect(amendmentOf(before, { ...before, departs: '11:40' })).toEqual({ departs: '11:40' });
    expect(amendmentOf(before, { ...before, departs: '' })).toEqual({ departs: null });
    expect(amendmentOf(before, { ...before, aircraft: 'Z9', departs: '11:40' })).toEqual({
      aircraft: 'Z9',
      departs: '11:40',
    });
    expect(draftFault({ ...before, departs: '25:10' })).toContain('07:30');
    // As a radio line takes it.
    expect(draftFault({ ...before, departs: '0830' })).toBeUndefined();
    expect(amendmentOf(before, { ...before, departs: '0830' })).toEqual({ departs: '08:30' });
    expect(amendmentOf(before, { ...before, departs: before.departs.replace(':', '') })).toBeNull();
  });

  it('leaves out a stop with 0 drums', () => {
    const stops = [...before.stops, { place: 'XSOU', drums: '0' }];
    expect(amendmentOf(before, { ...before, stops })).toBeNull();
  });

  it('is not asked about while the drums are no number, or none are left', () => {
    expect(draftFault(before)).toBeUndefined();
    expect(draftFault({ ...before, stops: [{ place: 'XNOR', drums: 'six' }] })).toContain('whole number');
    expect(draftFault({ ...before, stops: [{ place: 'XNOR', drums: '0' }] })).toContain('decline it');
  });
});
