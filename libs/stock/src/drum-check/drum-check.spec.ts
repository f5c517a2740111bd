import { celsius, kilograms, kilogramsPerLitre, litres } from '@drumline/units';
import { describe, expect, it } from 'vitest';
import { checkDensity, type DensityTolerance } from './density-check.js';
import { quantityOfLitres, quantityOfWeight } from './fuel-quantity.js';
import { ullageAt55 } from './ullage.js';

const batch = kilogramsPerLitre(0.804);
const at = (degrees: number) => ({ densityAt15: kilogramsPerLitre(0.8), temperature: celsius(degrees) });

describe('fuel in litres, kg and lb', () => {
  it('200 L are 31 kg heavier over six drums when filled at -10 °C than at 25 °C', () => {
    const cold = quantityOfLitres(litres(200), at(-10));
    const warm = quantityOfLitres(litres(200), at(25));
    expect([cold.kg, warm.kg].map((kg) => Number(kg.toFixed(1)))).toEqual([163.7, 158.5]);
    expect(6 * (cold.kg - warm.kg)).toBeCloseTo(31, 0);
    expect(6 * (cold.lb - warm.lb)).toBeCloseTo(68.5, 1);
  });

  it('weighed fuel comes back as the litres that were weighed', () => {
    const filled = quantityOfLitres(litres(200), at(-10));
    expect(quantityOfWeight(filled.kg, at(-10)).litres).toBeCloseTo(200, 9);
    expect(filled.litresAt15).toBeGreaterThan(200);
  });
});

describe('ullage', () => {
  it('a cold fill that is too full at 55 °C says how much may go in', () => {
    const ullage = ullageAt55(litres(205), at(-20), litres(216.5));
    expect(ullage.fits).toBe(false);
    expect(ullage.words).toBe(
      '205 L filled at −20 °C are 219.8 L at 55 °C in a drum of 216.5 L: too full. At most 201 L at this temperature.',
    );
    expect(ullageAt55(litres(201), at(-20), litres(216.5)).fits).toBe(true);
    expect(ullageAt55(litres(202), at(-20), litres(216.5)).fits).toBe(false);
  });
});

describe('density implied by weight and dip', () => {
  const tolerance: DensityTolerance = {
    percent: 1,
    scaleErrorKg: kilograms(0.5),
    dipErrorLitres: litres(2),
    reference: 'fuel manual 6.3',
  };
  const check = (grossKg: number, dip: number, degrees = 15, density = batch) =>
    checkDensity(
      {
        grossKg: kilograms(grossKg),
        tareKg: kilograms(20),
        dipLitres: litres(dip),
        temperature: celsius(degrees),
      },
      density,
      tolerance,
    );

  it('a drum that weighs what its batch does is not suspect', () => {
    const checked = check(20 + 200 * 0.804, 200);
    expect(checked).toMatchObject({ suspect: false });
    expect(checked.impliedAt15).toBeCloseTo(0.804, 9);
    expect(checked.words).toBe(
      'As its batch: 0.804 kg/L at 15 °C against 0.804 kg/L of its batch, 0.0 % heavier. Scale ±0.5 kg is 0.3 %, dip ±2.0 L is 1.0 %.',
    );
  });

  it('is corrected from the temperature: cold fuel is heavier without being suspect', () => {
    // 0.8 at 15 °C is 0.8185 kg/L at -10 °C, 2.3 % more.
    expect(check(20 + 163.7, 200, -10, kilogramsPerLitre(0.8))).toMatchObject({ suspect: false });
    expect(check(20 + 163.7, 200, 15, kilogramsPerLitre(0.8))).toMatchObject({ suspect: true });
  });

  it('just the tolerance is accepted, a little more is suspect', () => {
    expect(check(20 + 200 * 0.804 * 1.01, 200).suspect).toBe(false);
    expect(check(20 + 200 * 0.804 * 0.989, 200).suspect).toBe(true);
  });

  it('20 L of water in 200 L weigh too much', () => {
    const checked = check(20 + 180 * 0.804 + 20 * 1, 200);
    expect(checked.suspect).toBe(true);
    expect(checked.words).toMatch(/^Suspect: 0.824 kg\/L .* 2.4 % heavier: over the 1 % of fuel manual 6.3/);
  });

  it('a density that is no jet fuel is suspect even within the tolerance of its batch', () => {
    const checked = check(20 + 200 * 0.774, 200, 15, kilogramsPerLitre(0.776));
    expect(Math.abs(checked.differencePercent!)).toBeLessThan(1);
    expect(checked.suspect).toBe(true);
    expect(checked.words).toContain('outside 0.775 to 0.840 kg/L');
  });

  it('a weight that no fuel has is an answer, not a crash', () => {
    expect(check(20 + 300, 200)).toMatchObject({ impliedAt15: null, suspect: true });
    expect(check(19, 200)).toMatchObject({ impliedAt15: null, suspect: true });
    expect(check(180, 0)).toMatchObject({ impliedAt15: null, suspect: true });
  });
});
