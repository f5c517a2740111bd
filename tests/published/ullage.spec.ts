import { checkDensity, quantityOfLitres, ullageAt55 } from '@drumline/stock';
import { celsius, kilograms, kilogramsPerLitre, litres } from '@drumline/units';
import { describe, expect, it } from 'vitest';

const within = (actual: number, expected: number, tolerance: number) =>
  expect(Math.abs(actual - expected), `${actual} against ${expected}`).toBeLessThanOrEqual(tolerance);
const fuel = (temperature: number) => ({
  densityAt15: kilogramsPerLitre(0.8),
  temperature: celsius(temperature),
});

describe('ullage of a filled drum at 55 °C', () => {
  // DRUM-4. The rule, not liquid-full at 55 C, is 49 CFR 173.24a(d) and ICAO TI 4;1 (words from memory); computed with
  // table 54B, density 800.
  it.each([
    [205, 15, 216.5, 213.0, 1.62, true],
    [208.198, 15, 216.5, 216.32, 0.08, true],
    [208.198, 15, 212, 216.32, -2.04, false],
    [200, 15, 212, 207.8, 1.98, true],
    [205, 15, 212, 213.0, -0.47, false],
    [205, -20, 216.5, 219.85, -1.55, false],
    [205, 30, 216.5, 210.02, 2.99, true],
  ])('%d L filled at %d °C into %d L are %d L, %d %% left', (fill, t, drum, at55, percent, fits) => {
    const ullage = ullageAt55(litres(fill), fuel(t), litres(drum));
    within(ullage.litresAt55, at55, 0.05);
    within(ullage.percent, percent, 0.03);
    expect(ullage.fits).toBe(fits);
  });

  it.each([
    [775, 206.86],
    [800, 208.37],
    [840, 209.12],
  ])('most that may be filled at 15 °C into 216.5 L, density %d: %d L', (rho15, most) => {
    const state = { densityAt15: kilogramsPerLitre(rho15 / 1000), temperature: celsius(15) };
    within(ullageAt55(litres(200), state, litres(216.5)).mostLitres, most, 0.05);
  });
});

// Computed with the same table: 205 L at 35 C, density 800, are 201.17 L at 15 C and 160.9 kg.
it('205 L at 35 °C are 201.17 L at 15 °C and 160.9 kg', () => {
  const { litresAt15, kg } = quantityOfLitres(litres(205), fuel(35));
  within(litresAt15, 201.17, 0.005);
  within(kg, 160.9, 0.05);
});

// VCF-4: density observed at a temperature, brought back to 15 C by iterating the same formula.
it.each([
  [788, 30, 799.2],
  [795, 25, 802.43],
  [805, 5, 797.57],
])('%d kg/m3 implied at %d °C is %d at 15 °C', (observed, t, expected) => {
  const measured = {
    grossKg: kilograms(20 + observed / 5),
    tareKg: kilograms(20),
    dipLitres: litres(200),
    temperature: celsius(t),
  };
  const tolerance = {
    percent: 1,
    scaleErrorKg: kilograms(0.5),
    dipErrorLitres: litres(2),
    reference: 'none',
  };
  within(checkDensity(measured, kilogramsPerLitre(0.8), tolerance).impliedAt15! * 1000, expected, 0.05);
});
