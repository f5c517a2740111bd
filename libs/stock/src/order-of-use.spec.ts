import { litres } from '@drumline/units';
import { describe, expect, it } from 'vitest';
import type { Drum } from './drum.js';
import { newBatch, oldBatch, partDrum, sealedDrum } from './example-stock.js';
import { openedOutOfOrder, orderOfUse } from './order-of-use.js';
import { splitDraw } from './split-draw.js';

const hold = { reason: 'water in the sample', by: 'QA', at: '2027-06-14T12:05Z' };
const there: readonly Drum[] = [
  sealedDrum('01', 'new', 'STRIP'),
  sealedDrum('02', 'old', 'STRIP'),
  partDrum('03', 'new', 'STRIP', 80),
  { ...sealedDrum('04', 'old', 'STRIP'), held: hold },
  { ...sealedDrum('05', 'new', 'STRIP'), content: 'clean empty', litres: litres(0) },
  sealedDrum('06', 'old', 'PAD'),
];
const on = (day: string) =>
  orderOfUse('STRIP', { drums: there, batches: [oldBatch, newBatch] }, day).map(({ drum, fitness }) => [
    drum.number,
    fitness,
  ]);

describe('drums in order of use', () => {
  it('part used first, then the oldest that is fit; held last; empties and other places are not in it', () => {
    expect(on('2027-06-14')).toEqual([
      ['03', 'fit'],
      ['02', 'fit'],
      ['01', 'fit'],
      ['04', 'held'],
    ]);
  });

  it('what is past its retest date comes after what is fit, and before what is held', () => {
    expect(on('2027-06-16')).toEqual([
      ['03', 'fit'],
      ['01', 'fit'],
      ['02', 'past retest'],
      ['04', 'held'],
    ]);
  });

  it('a hold of the whole batch holds its drums, and says why', () => {
    const [first] = orderOfUse(
      'PAD',
      { drums: there, batches: [{ ...oldBatch, held: hold }, newBatch] },
      '2027-06-14',
    );
    expect(first).toMatchObject({ fitness: 'held', hold: { reason: 'water in the sample' } });
  });
});

describe('drums opened out of order', () => {
  const stands = (number: string, retestDue: string, changes: object = {}) => ({
    ...{ number, litres: litres(200), sealed: true, held: false, retestDue },
    ...changes,
  });
  const standing = [
    stands('01', '2028-01-01'),
    stands('02', '2027-09-01'),
    stands('03', '2028-01-01', { sealed: false }),
    stands('04', '2027-07-01', { held: true }),
    stands('05', '2027-06-01'),
  ];
  const told = (...numbers: string[]) =>
    openedOutOfOrder(numbers, standing, '2027-06-14').map(({ number, first }) => `${first} before ${number}`);

  it('are told with the fit one that comes before them and stays shut; held and past retest come before none', () => {
    expect(told('03')).toEqual([]);
    expect(told('02')).toEqual(['03 before 02']);
    expect(told('02', '03')).toEqual([]);
    expect(told('03', '01')).toEqual(['02 before 01']);
    expect(told('01', '02', '03', '99')).toEqual([]);
  });
});

describe('a draw over several drums', () => {
  const drums = [
    { number: '0468', litres: litres(175) },
    { number: '0469', litres: litres(200) },
  ];

  it('empties the part-used drum before the next: 225 L are 175 L and 50 L, with 150 L left', () => {
    expect(splitDraw(drums, litres(225))).toEqual({
      draws: [
        { number: '0468', litres: 175, leftLitres: 0 },
        { number: '0469', litres: 50, leftLitres: 150 },
      ],
      beyondLitres: 0,
    });
  });

  it('what is more than the book has stands at the last drum, to be looked at', () => {
    expect(splitDraw(drums, litres(390))).toEqual({
      draws: [
        { number: '0468', litres: 175, leftLitres: 0 },
        { number: '0469', litres: 215, leftLitres: 0 },
      ],
      beyondLitres: 15,
    });
  });

  it('a drum that nothing is left for is not drawn from', () => {
    expect(splitDraw(drums, litres(100)).draws).toEqual([{ number: '0468', litres: 100, leftLitres: 75 }]);
  });
});
