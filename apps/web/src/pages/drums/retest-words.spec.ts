import type { RetestComingAnswer } from '@drumline/contract';
import { litres } from '@drumline/units';
import { expect, it } from 'vitest';
import { retestWords } from './retest-words.js';

const drum = (number: string, place: string, unused: number): RetestComingAnswer => ({
  number,
  place,
  batch: 'J26-118',
  content: 'filled sealed',
  litres: litres(200),
  retestDue: '2027-06-22',
  isPast: false,
  unusedLitres: litres(unused),
  drawTooLate: null,
  flight: null,
});

it('one sentence a batch, with drums by place; what is burned in time is not counted', () => {
  const drums = [drum('1', 'JUN', 200), drum('2', 'BIR', 200), drum('3', 'BIR', 200), drum('4', 'BIR', 0)];
  expect(retestWords(drums, (day) => day)).toEqual([
    'J26-118, due 2027-06-22: 3 drums not burned by then, BIR 2, JUN 1.',
  ]);
});
