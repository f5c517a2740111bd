import { centsPerLitre, litres } from '@drumline/units';
import { describe, expect, it } from 'vitest';
import { baseSupply } from './base-supply.js';
import type { BaseStock } from './drum.js';
import { newBatch, oldBatch, partDrum, sealedDrum } from './example-stock.js';

const dates = ['2027-06-14', '2027-06-15', '2027-06-16', '2027-06-17'];
const base: BaseStock = {
  place: 'BASE',
  bulkLitres: litres(10_000),
  pricePerLitre: centsPerLitre(150),
  fillDrumsPerDay: 4,
  emptiesFitForUse: 50,
  resupplies: [],
};
const stored = [
  sealedDrum('1', 'new', 'BASE'),
  sealedDrum('2', 'new', 'BASE'),
  partDrum('3', 'new', 'BASE', 100),
];
const supplyOf = (change: Partial<BaseStock>) =>
  baseSupply({ ...base, ...change }, stored, [oldBatch, newBatch], dates, litres(200));

describe('drums ready at a base', () => {
  it('drums ready at a base: filled ones at once, and those filled on a day from the next', () => {
    expect(supplyOf({})).toMatchObject({ filledDrums: 2, drumsByDay: [2, 6, 10, 14] });
  });

  it('drums ready at a base: no more than there are empties fit for use', () => {
    expect(supplyOf({ emptiesFitForUse: 5 }).drumsByDay).toEqual([2, 6, 7, 7]);
  });

  it('drums ready at a base: no more than the bulk fills, until a resupply has come', () => {
    const resupplies = [{ date: '2027-06-16', litres: litres(1000) }];
    expect(supplyOf({ bulkLitres: litres(700), resupplies }).drumsByDay).toEqual([2, 5, 5, 9]);
  });

  it('drums ready at a base: a held batch flies nowhere', () => {
    const held = { ...newBatch, held: { reason: 'recall', by: 'fuel quality', at: '2027-06-14T05:00Z' } };
    expect(baseSupply(base, stored, [oldBatch, held], dates, litres(200)).drumsByDay).toEqual([0, 4, 8, 12]);
  });
});

describe('base stock', () => {
  it('base stock: bulk, filled drums and the resupplies up to the day', () => {
    const resupplies = [
      { date: '2027-06-10', litres: litres(999) },
      { date: '2027-06-16', litres: litres(1000) },
    ];
    expect(supplyOf({ resupplies }).litresByDay).toEqual([10_400, 10_400, 11_400, 11_400]);
  });
});
