import { centimetres, litres } from '@drumline/units';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type DipTable, litresAtDip, mostDipCm } from './dip-table.js';

const stick = { name: 'drum', stickMarksCm: centimetres(1), reference: 'test' };
const upright: DipTable = {
  ...stick,
  kind: 'upright drum',
  innerDiameterCm: centimetres(57.2),
  innerHeightCm: centimetres(84.1),
};
const lying: DipTable = {
  ...stick,
  kind: 'lying drum',
  innerDiameterCm: centimetres(57.2),
  innerLengthCm: centimetres(84.1),
};
const own: DipTable = {
  ...stick,
  kind: 'own table',
  rows: [
    { dipCm: centimetres(10), litres: litres(22) },
    { dipCm: centimetres(80), litres: litres(204) },
  ],
};
const at = (table: DipTable, cm: number) => litresAtDip(table, centimetres(cm));

describe('litres by the stick', () => {
  it('a drum on its end: 2.57 L a centimetre, 216 L to the brim', () => {
    expect(at(upright, 0)?.litres).toBe(0);
    expect(at(upright, 1)?.litres).toBeCloseTo(2.57, 2);
    expect(at(upright, 34)?.litres).toBeCloseTo(87.4, 1);
    expect(at(upright, 84.1)?.litres).toBeCloseTo(216.1, 1);
  });

  it('the same drum on its side: half full at half its round, and never as even', () => {
    expect(at(lying, 28.6)?.litres).toBeCloseTo(216.1 / 2, 1);
    expect(at(lying, 57.2)?.litres).toBeCloseTo(216.1, 1);
    expect(at(lying, 14.3)?.litres).toBeCloseTo(42.25, 1);
  });

  it('half a mark of the stick is 1.3 L on end, and on the side most in the middle', () => {
    expect(at(upright, 34)?.errorLitres).toBeCloseTo(1.28, 2);
    expect(at(lying, 28.6)!.errorLitres).toBeGreaterThan(at(lying, 5)!.errorLitres);
    expect(at(lying, 28.6)?.errorLitres).toBeCloseTo(2.41, 1);
  });

  it('the operator’s own table is read between its rows, and from nothing', () => {
    expect(at(own, 5)?.litres).toBe(11);
    expect(at(own, 10)?.litres).toBe(22);
    expect(at(own, 45)?.litres).toBeCloseTo(113);
  });

  it.each([
    ['deeper than the drum', upright, 84.2],
    ['deeper than its round', lying, 57.3],
    ['beyond the table', own, 81],
    ['below nothing', upright, -1],
  ])('%s is no reading', (_, table, cm) => {
    expect(at(table, cm)).toBeNull();
  });

  it('never falls as the stick gets wetter, and what is below and above adds up to the whole', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 57.2, noNaN: true }),
        fc.double({ min: 0, max: 57.2, noNaN: true }),
        (a, b) => {
          const [low, high] = [at(lying, Math.min(a, b))!.litres, at(lying, Math.max(a, b))!.litres];
          expect(high).toBeGreaterThanOrEqual(low - 1e-6);
          expect(at(lying, a)!.litres + at(lying, 57.2 - a)!.litres).toBeCloseTo(216.1, 1);
        },
      ),
    );
    expect(mostDipCm(own)).toBe(80);
  });
});
