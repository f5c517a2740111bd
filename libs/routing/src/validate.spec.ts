import { describe, expect, it } from 'vitest';
import { plain } from './testing/plain-problem.js';
import { validate } from './validate.js';

describe('validate', () => {
  it('has nothing against a problem whose figures fit together', () => {
    expect(validate(plain)).toEqual([]);
  });

  it('names the list that does not cover the horizon', () => {
    const stores = plain.stores.map((store) => (store.id === 'far' ? { ...store, demand: [1] } : store));
    expect(validate({ ...plain, stores })).toEqual([
      'store far: demand has 1 days, the horizon 3; give one a day.',
    ]);
  });

  it('names the booked routes that cannot all be crewed', () => {
    const crews = plain.crews.map((crew) => ({ ...crew, dutyHours: [8, 1, 8] }));
    expect(validate({ ...plain, crews })).toEqual([
      'Day 1: no crews with the hours for the booked routes mail together; free a crew or move one.',
    ]);
  });

  it('names a route from a place that supplies nothing', () => {
    const routes = plain.routes.slice(0, 1).map((route) => ({ ...route, source: 2, end: 2 }));
    expect(validate({ ...plain, routes })).toEqual([
      'route 0: its source supplies nothing; give the store a supply.',
    ]);
  });
});
