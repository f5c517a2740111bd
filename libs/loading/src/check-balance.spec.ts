import { pounds } from '@drumline/units';
import { describe, expect, it } from 'vitest';
import type { Cargo, PlacedDrum } from './cabin.js';
import { checkBalance } from './check-balance.js';
import { exampleCabin } from './example-flight.js';

const cabin = exampleCabin(['BASE', 'STRIP', 'BASE']);
const drum = (id: string, position: string, weightLb = 397): PlacedDrum => ({
  id,
  position,
  weightLb: pounds(weightLb),
  offAfterLeg: 0,
});
const freight = (place: string | null, weightLb: number): Cargo => ({
  name: 'stores',
  weightLb: pounds(weightLb),
  place,
  firstLeg: 0,
  lastLeg: 1,
});
const faults = (drums: readonly PlacedDrum[], cargo: readonly Cargo[] = []) =>
  checkBalance({ ...cabin, cargo }, drums).faults.map(({ leg, kind, text }) => `${leg} ${kind}: ${text}`);

describe('faults of a loading', () => {
  it('an even load of drums has none', () => {
    expect(faults([drum('1', 'R1L'), drum('2', 'R1R')])).toEqual([]);
  });

  it('a drum over the floor limit', () => {
    expect(faults([drum('1', 'R1L', 460)])).toEqual([
      'BASE-STRIP floor limit: R1L: 460 lb, limit 450 lb: 10 lb over',
    ]);
  });

  it('freight in a net over its limit, on each leg it is aboard', () => {
    expect(faults([], [freight('NET', 500), freight('NET', 150)])).toEqual([
      'BASE-STRIP floor limit: NET: 650 lb, limit 600 lb: 50 lb over',
      'STRIP-BASE floor limit: NET: 650 lb, limit 600 lb: 50 lb over',
    ]);
  });

  it('two drums in one position', () => {
    expect(faults([drum('1', 'R1L', 200), drum('2', 'R1L', 200)])).toEqual([
      'BASE-STRIP place taken: R1L holds 2 loads',
    ]);
  });

  it('freight or drums without a place', () => {
    expect(faults([drum('1', 'R9')], [freight(null, 100)])).toEqual([
      'BASE-STRIP no place: stores, 100 lb: no place in the cabin is given, name one',
      'BASE-STRIP no place: drum 1: seats out has no drum position R9',
      'STRIP-BASE no place: stores, 100 lb: no place in the cabin is given, name one',
    ]);
  });

  it('a weight over the envelope', () => {
    const heavy = ['R1L', 'R1R', 'R2L', 'R2R', 'R3L', 'R3R'].map((place, i) => drum(`${i}`, place, 450));
    // 4500 + 6 x 450 + 600 lb of fuel + 590 lb of stores.
    expect(faults(heavy, [freight('NET', 590)])).toContain(
      'BASE-STRIP envelope: take-off: 8,390 lb is outside the weights of the envelope',
    );
  });
});
