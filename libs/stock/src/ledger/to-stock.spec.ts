import { kilogramsPerLitre, litres } from '@drumline/units';
import { describe, expect, it } from 'vitest';
import type { Batch } from '../drum.js';
import { openingStock } from '../opening-stock.js';
import { at, counted, drawn, flownOut, leftAt, ml, received, written } from './example-movements.js';
import type { Movement } from './movement.js';
import { overCapacity } from './over-capacity.js';
import { replay } from './replay.js';
import { toBatches, toCounts, toDrums } from './to-stock.js';

const batch = (id: string): Batch => ({
  id,
  grade: 'jet',
  filledOn: '2027-03-01',
  retestDue: '2028-03-01',
  densityAt15KgPerLitre: kilogramsPerLitre(0.8),
  filledAt: ['BASE'],
});
const sixHeld = Array.from({ length: 6 }, (_, index) => received(`1${index}`, '05:00'));
const fiveFit = Array.from({ length: 5 }, (_, index) => received(`2${index}`, '05:00', { batch: 'K27' }));
const eleven = [...sixHeld, ...fiveFit];
const stockOf = (movements: readonly Movement[], day = '2027-06-14', agreed?: ReadonlySet<string>) => {
  const state = replay(movements);
  const picture = {
    asOf: at('23:00'),
    drums: toDrums(state, 'Etc/GMT+6'),
    batches: toBatches(state, [batch('J27'), batch('K27')]),
    counts: toCounts(state, agreed),
    countTolerance: { percentOfBook: 2, litresPerOpenDrum: litres(10), reference: 'stock manual 4.2' },
  };
  return openingStock(['STRIP'], picture, day).get('STRIP')!;
};

describe('book, count and usable from the ledger', () => {
  it('usable stock: holding a batch leaves the book at 2,200 L and drops usable to 1,000 L', () => {
    const recall: Movement = {
      ...written('hold', '09:00'),
      kind: 'held',
      of: { batch: 'J27' },
      reason: 'recall',
    };
    expect(stockOf([...eleven, recall])).toMatchObject({
      bookLitres: 2200,
      heldLitres: 1200,
      usableLitres: 1000,
    });
  });

  it('usable stock: a batch released by two people is fit again', () => {
    const of = { batch: 'J27' };
    const hold: Movement = { ...written('hold', '09:00'), kind: 'held', of, reason: 'recall' };
    const release: Movement = {
      ...written('free', '12:00'),
      kind: 'released',
      of,
      reason: 'passed',
      second: 'Ben',
    };
    expect(stockOf([...eleven, release, hold]).usableLitres).toBe(2200);
  });

  it('usable stock: a condemned drum counts in the book only', () => {
    const condemned: Movement = { ...written('x', '09:00'), kind: 'condemned', drum: '20', reason: 'water' };
    expect(stockOf([...eleven, condemned])).toMatchObject({ bookLitres: 2200, usableLitres: 2000 });
  });

  it('usable stock: what a count did not find stays missing after later draws', () => {
    const movements = [...eleven, counted('STRIP', '08:00', 1900), drawn('20', '10:00', 150)];
    expect(stockOf(movements)).toMatchObject({
      bookLitres: 2050,
      countShortfallLitres: 300,
      usableLitres: 1750,
    });
  });

  it('usable stock: a count whose case is closed binds no more', () => {
    const count = counted('STRIP', '08:00', 1900);
    expect(stockOf([...eleven, count], '2027-06-14', new Set([count.id])).usableLitres).toBe(2200);
  });

  it('retest date: a drum that passed a retest of its own is fit until its new date', () => {
    const passed: Movement = {
      ...written('pass', '09:00'),
      kind: 'retest passed',
      of: { drum: '20' },
      certificate: 'C-77',
      retestDue: '2028-09-01',
    };
    expect(stockOf([...eleven, passed], '2028-06-01').usableLitres).toBe(200);
  });

  it('a drum aboard stands nowhere; a drum of an unknown batch is held', () => {
    expect(toDrums(replay(flownOut('0451').slice(0, 2)), 'UTC')).toEqual([]);
    const [stray] = toDrums(replay([leftAt('0999', '07:00')]), 'UTC');
    expect(stray).toMatchObject({ number: '0999', held: { reason: 'its batch is not known' } });
  });

  it('the day on which a drum was opened is the local one', () => {
    const [drum] = toDrums(replay([received('1', '01:00'), drawn('1', '03:00', 20)]), 'Etc/GMT+6');
    expect(drum!.openedOn).toBe('2027-06-13');
  });
});

describe('capacity', () => {
  const cache = { place: 'STRIP', capacityDrums: 10 };

  it('capacity: eleven drums on a site for ten are raised', () => {
    const balance = replay(eleven).balances.get('STRIP');
    expect(overCapacity(balance, cache, litres(200))).toMatchObject({
      kind: 'over capacity',
      place: 'STRIP',
    });
    expect(overCapacity(balance, { ...cache, capacityDrums: 11 }, litres(200))).toBeNull();
  });

  it('capacity: empties do not count', () => {
    const emptied: Movement = {
      ...written('e', '09:00'),
      kind: 'emptied',
      drum: '20',
      place: 'STRIP',
      leaves: 'drained',
    };
    const state = replay([...eleven, emptied]);
    expect(state.balances.get('STRIP')).toMatchObject({ emptyDrums: 1, bookMillilitres: ml(2000) });
    expect(overCapacity(state.balances.get('STRIP'), cache, litres(200))).toBeNull();
  });
});
