import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { dearestChange, smallestShortage, storePrices } from './prices.js';

const basis = fc.record({
  days: fc.integer({ min: 1, max: 28 }),
  dearestChange: fc.integer({ min: 0, max: 1_500_000 }),
  smallestShortage: fc.constantFrom(1, 5, 10, 50, 200),
  largestLoad: fc.integer({ min: 1, max: 12 }).map((drums) => drums * 200),
  totalDemand: fc.integer({ min: 0, max: 1_000_000 }),
  replacementPerLitre: fc.constant(600),
  cushionPerLitreDay: fc.constant(0.2),
});
/** A fortnight in one territory: loads of six drums, litres in steps of five. */
const fortnight = {
  days: 14,
  dearestChange: 1_300_000,
  smallestShortage: 5,
  largestLoad: 1200,
  totalDemand: 20_000,
  replacementPerLitre: 540,
  cushionPerLitreDay: 0.2,
};

describe('prices of shortages', () => {
  it('order of aims: the smallest shortage below the minimum costs more than the dearest flight', () => {
    fc.assert(fc.property(basis, (b) => storePrices(b).belowMinimum * b.smallestShortage > b.dearestChange));
  });

  it('order of aims: the smallest shortage below critical outweighs all that a flight can do for minimums', () => {
    const { belowCritical, belowMinimum } = storePrices(fortnight);
    expect(5 * belowCritical).toBeGreaterThan(14 * 1200 * belowMinimum);
  });

  it('order of aims: a litre below critical for a day outweighs it below the minimum on every day', () => {
    fc.assert(fc.property(basis, (b) => storePrices(b).belowCritical > b.days * storePrices(b).belowMinimum));
  });

  it('order of aims: a litre refused outweighs what it could save by staying in the cache', () => {
    fc.assert(
      fc.property(basis, (b) => {
        const { unmet, belowMinimum, belowCritical } = storePrices(b);
        return unmet > b.days * (belowMinimum + belowCritical);
      }),
    );
  });

  it('order of aims: all the demand of a season unmet is still counted to the cent', () => {
    fc.assert(fc.property(basis, (b) => Number.isSafeInteger(storePrices(b).unmet * b.totalDemand)));
  });
});

describe('the smallest shortage', () => {
  const store = {
    id: 'NOR',
    opening: 1200,
    capacity: null,
    arrivals: [0, 600],
    losses: [0, 0],
    demand: [450, 0],
    floor: 0,
    minimum: 400,
    critical: 200,
    packsPerDay: null,
    supply: null,
  };

  it('is what all litre figures and a drum have in common', () => {
    expect(smallestShortage([store], 200)).toBe(50);
    expect(smallestShortage([{ ...store, demand: [455, 0] }], 200)).toBe(5);
  });

  it('is one litre where a level is no whole number', () => {
    expect(smallestShortage([{ ...store, opening: 1200.5 }], 200)).toBe(1);
  });
});

describe('the dearest change', () => {
  const conditions = { blockHours: 1, dutyHours: 2, ownUse: 90, cost: 100_000, legPacks: [4, 2] };
  const route = { kind: 'T', source: 0, stops: [1, 2], end: 0, conditionByDay: [0], crewGroup: -1 };

  it('is the dearest flight with its full load and the price of a change', () => {
    expect(dearestChange([{ ...route, conditions: [conditions] }], 200, 300, 10_000)).toBe(350_000);
  });

  it('is the change price alone where nothing can fly', () => {
    expect(dearestChange([], 200, 300, 10_000)).toBe(10_000);
  });
});
