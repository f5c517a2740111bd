import { expect, it } from 'vitest';
import { exampleCache, examplePicture, partDrum, sealedDrum } from './example-stock.js';
import { consequenceOfHold, withHold, withoutHold } from './hold.js';

const hold = { reason: 'seal broken', by: 'pilot', at: '2027-06-14T05:00Z' };
const picture = examplePicture([
  sealedDrum('1', 'new', 'STRIP'),
  sealedDrum('2', 'new', 'STRIP'),
  sealedDrum('3', 'old', 'PAD'),
  partDrum('4', 'new', 'PAD', 100),
]);
const caches = [exampleCache('STRIP'), exampleCache('PAD')];

it('a hold on one drum touches its place alone, and a cache at its critical level is not below it', () => {
  const held = consequenceOfHold(picture, caches, { drums: ['2'] }, hold, '2027-06-14');
  expect(
    held.places.map(({ place, usableLitresBefore, usableLitresAfter }) => [
      place,
      usableLitresBefore,
      usableLitresAfter,
    ]),
  ).toEqual([['STRIP', 400, 200]]);
  expect([held.belowMinimum, held.belowCritical]).toEqual([['STRIP'], []]);
});

it('a drum that is held already keeps its first hold', () => {
  const once = consequenceOfHold(picture, caches, { drums: ['2'] }, hold, '2027-06-14').picture;
  const twice = consequenceOfHold(
    once,
    caches,
    { drums: ['2'] },
    { ...hold, reason: 'recall' },
    '2027-06-14',
  );
  expect(twice.picture).toEqual(once);
  expect(twice.places[0]).toMatchObject({ usableLitresBefore: 200, usableLitresAfter: 200 });
});

it('a hold that stands already can be taken back to see what it takes out; another hold stays', () => {
  const other = { ...hold, reason: 'recall' };
  const one = withHold(picture, { drums: ['1'] }, other);
  const both = withHold(one, { batch: 'new' }, hold);
  expect(withoutHold(both, hold)).toEqual(one);
});
