import { litres } from '@drumline/units';
import { describe, expect, it } from 'vitest';
import type { Count } from './drum.js';
import { examplePicture, partDrum, sealedDrum } from './example-stock.js';
import { openingStock, toleranceOfCount } from './opening-stock.js';

const monday = '2027-06-14';
const count = (amount: number, at: string, openDrums = 0): Count => ({
  place: 'STRIP',
  at,
  litres: litres(amount),
  openDrums,
  by: 'helper',
  seenFrom: 'ground',
});
const tenDrums = Array.from({ length: 10 }, (_, index) => sealedDrum(`${index + 1}`, 'new', 'STRIP'));
const stockWith = (counts: readonly Count[], drums = tenDrums) =>
  openingStock(['STRIP'], examplePicture(drums, { counts }), monday).get('STRIP')!;

describe('usable stock', () => {
  it('usable stock: a place without drums has none', () => {
    expect(stockWith([], [])).toMatchObject({ bookLitres: 0, usableLitres: 0, lastCount: null, remarks: [] });
  });

  it('usable stock: part-used drums that are fit count, empties do not', () => {
    const empty = {
      ...sealedDrum('9', 'new', 'STRIP'),
      content: 'empty with residue' as const,
      litres: litres(0),
    };
    const stock = stockWith([], [partDrum('1', 'new', 'STRIP', 90), sealedDrum('2', 'new', 'STRIP'), empty]);
    expect(stock.usableLitres).toBe(290);
    expect(stock.partUsed.map(({ number }) => number)).toEqual(['1']);
    expect(stock.drums).toHaveLength(2);
  });

  it('usable stock: the last count before the picture decides, and its age is told', () => {
    const stock = stockWith([count(1000, '2027-06-12T06:00Z'), count(1900, '2027-06-13T18:00:00Z')]);
    expect(stock).toMatchObject({ usableLitres: 1900, lastCount: { verdict: 'lower', ageHours: 12 } });
  });

  it('usable stock: a count above the book adds nothing and is a difference to look at', () => {
    const stock = stockWith([count(2200, '2027-06-13T06:00Z')]);
    expect(stock).toMatchObject({ usableLitres: 2000, lastCount: { verdict: 'higher' } });
    expect(stock.remarks).toEqual([
      expect.stringMatching(
        /: counted 2,200 L against a book of 2,000 L, \d+ L allowed: the plan uses the book, as the lower of the two; look for a landing that was not reported\.$/,
      ),
    ]);
  });

  it('usable stock: a shortfall greater than what is fit leaves nothing, never less than nothing', () => {
    const held = { reason: 'seal', by: 'pilot', at: '2027-06-13T06:00Z' };
    const drums = tenDrums.map((drum, index) => (index === 0 ? drum : { ...drum, held }));
    expect(stockWith([count(1500, '2027-06-13T06:00Z')], drums)).toMatchObject({
      countShortfallLitres: 500,
      heldLitres: 1800,
      usableLitres: 0,
    });
  });
});

describe('tolerance of a count', () => {
  it('tolerance of a count: a difference of just the tolerance is accepted, one litre more is not', () => {
    expect(stockWith([count(1960, '2027-06-13T06:00Z')])).toMatchObject({ usableLitres: 2000 });
    expect(stockWith([count(1959, '2027-06-13T06:00Z')])).toMatchObject({ usableLitres: 1959 });
  });

  it('tolerance of a count: the greater of the share of the book and the litres per open drum', () => {
    const tolerance = { percentOfBook: 2, litresPerOpenDrum: litres(10), reference: 'stock manual 4.2' };
    expect(toleranceOfCount(litres(2400), 4, tolerance)).toBe(48);
    expect(toleranceOfCount(litres(2400), 5, tolerance)).toBe(50);
  });
});
