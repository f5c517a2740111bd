import {
  buildUpQuantity,
  deviationOverLeadTime,
  economicOrderQuantity,
  normalLoss,
  normalQuantile,
  normalShareBelow,
  suggestedMinimum,
} from '@drumline/forecast';
import { days, litres, litresPerDay } from '@drumline/units';
import { describe, expect, it } from 'vitest';

const within = (actual: number, expected: number, tolerance: number) =>
  expect(Math.abs(actual - expected), `${actual} against ${expected}`).toBeLessThanOrEqual(tolerance);

const use = (mean: number, deviation: number) => ({
  mean: litresPerDay(mean),
  deviation: litresPerDay(deviation),
});
const leadTime = (mean: number, deviation = 0) => ({ mean: days(mean), deviation: days(deviation) });

describe('build-up and order quantities', () => {
  // Newsvendor examples: documentation of stockpyl (github.com/LarrySnyder/stockpyl).
  it('INV-1: holding 2, stockout 18, use N(120, 10)', () => {
    const build = buildUpQuantity({ costOver: 2, costShort: 18, mean: 120, deviation: 10 });
    within(build.quantity, 132.815515655446, 1e-6);
    within(build.expectedCost, 35.09966638649737, 1e-6);
  });

  // L. V. Snyder and Z.-J. M. Shen, Fundamentals of Supply Chain Theory, example 4.3.
  it('INV-2: holding 0.18, stockout 0.70, use N(50, 8)', () => {
    const build = buildUpQuantity({ costOver: 0.18, costShort: 0.7, mean: 50, deviation: 8 });
    within(build.quantity, 56.60395592743389, 1e-6);
    within(build.expectedCost, 1.9976051931766445, 1e-6);
  });

  // The same book, example 3.1, as in the documentation of stockpyl.
  it('INV-3: an order costs 8, holding 0.225, use 1,300', () => {
    const order = economicOrderQuantity(8, 0.225, 1300);
    within(order.quantity, 304.0467800264368, 1e-6);
    within(order.cost, 68.41052550594829, 1e-6);
  });

  // Textbook item (tutorsglobe): use N(1000, 200), underage 40, overage 10; published answer 1,169 whole units.
  it('INV-4: underage 40, overage 10, use N(1000, 200)', () => {
    const { quantity } = buildUpQuantity({ costOver: 10, costShort: 40, mean: 1000, deviation: 200 });
    within(quantity, 1168.32, 0.01);
    expect(Math.ceil(quantity)).toBe(1169);
  });
});

describe('suggested minimum', () => {
  const suggest = (daily: ReturnType<typeof use>, lead: ReturnType<typeof leadTime>, serviceLevel: number) =>
    suggestedMinimum(daily, lead, litres(0), serviceLevel);

  // Textbook item (mycoursehelp): 5 a day, deviation 2, lead time 3 days, 95 %.
  it('INV-4: use varies, lead time is fixed', () => {
    within(deviationOverLeadTime(use(5, 2), leadTime(3)), 3.464, 0.01);
    const suggested = suggest(use(5, 2), leadTime(3), 0.95);
    within(suggested.safetyStock, 5.7, 0.01);
    within(suggested.minimum, 20.7, 0.01);
  });

  // Textbook item (brainmass 468949): 5 a day, lead time 3 days, deviation 2 days, 95 %.
  it('INV-4: use is steady, lead time varies', () => {
    within(deviationOverLeadTime(use(5, 0), leadTime(3, 2)), 10, 0.01);
    const suggested = suggest(use(5, 0), leadTime(3, 2), 0.95);
    within(suggested.safetyStock, 16.45, 0.01);
    within(suggested.minimum, 31.45, 0.01);
  });

  // Textbook item (questionai): 15 a day, deviation 5, lead time 4 days, 90 %: 12.8, published choice 13.
  it('INV-4: the safety stock of 15 a day is 13 whole units', () => {
    const { safetyStock } = suggest(use(15, 5), leadTime(4), 0.9);
    expect(safetyStock.toFixed(1)).toBe('12.8');
    expect(Math.round(safetyStock)).toBe(13);
  });

  // Textbook item (brainmass 491166): 29 a day, deviation 5.7, lead time 3 days; a safety stock of 20 serves 97.86 %.
  it('INV-4: the minimum of 29 a day, and the service that a safety stock of 20 gives', () => {
    within(suggest(use(29, 5.7), leadTime(3), 0.95).minimum, 103.24, 0.01);
    const served = normalShareBelow(20 / deviationOverLeadTime(use(29, 5.7), leadTime(3)));
    within(served * 100, 97.86, 0.01);
  });
});

describe('the normal distribution', () => {
  // Tables of the normal distribution, printed to 4 decimals.
  it.each([
    [0.8, 0.8416],
    [0.9, 1.2816],
    [0.95, 1.6449],
    [0.975, 1.96],
    [0.99, 2.3263],
    [0.999, 3.0902],
  ])('INV-5: %d lies below %d', (share, expected) => {
    within(normalQuantile(share), expected, 5e-5);
  });

  // Table of the loss function, printed to 5 decimals.
  it('INV-5: the loss at 1.6449 is 0.02089', () => {
    within(normalLoss(1.6449), 0.02089, 5e-6);
  });
});
