import { kilograms, litres } from '@drumline/units';
import { describe, expect, it } from 'vitest';
import { millilitresIn } from './figures.js';
import { checkFill, type Measured } from './fill-check.js';

const drum: Measured = {
  measured: { litres: 200 },
  tareKg: 19.7,
  grossKg: 180.5,
  temperatureC: 15,
  densityAt15KgPerLitre: 0.804,
  brimLitres: 216,
};

const checked = (changed: Partial<Measured> = {}) => {
  const answer = checkFill({ ...drum, ...changed });
  if (typeof answer === 'string') throw new Error(answer);
  return answer;
};

describe('a drum on the scale', () => {
  // 200 L x 0.804 kg/L + 19.7 kg = 180.5 kg.
  it('200 L of 0.804 kg/L at 15 °C and a tare of 19.7 kg weigh 180.5 kg', () => {
    expect(checked()).toMatchObject({ differenceWords: 'as expected, 0.0 kg', isSuspect: false, fits: true });
    expect(checked().expectedGrossKg).toBeCloseTo(180.5, 6);
  });

  it('the same litres are heavier in the cold', () => {
    expect(checked({ temperatureC: -10 }).expectedGrossKg).toBeGreaterThan(183);
    expect(checked({ temperatureC: -10 }).differenceWords).toMatch(/kg lighter than expected$/);
  });

  it('net kg give the litres', () => {
    expect(checked({ measured: { netKg: 160.8 } }).litres).toBeCloseTo(200, 1);
  });

  it('10 kg too many is no jet fuel: suspect, with both densities', () => {
    const heavy = checked({ grossKg: 190.5 });
    expect(heavy.isSuspect).toBe(true);
    expect(heavy.differenceWords).toBe('10.0 kg heavier than expected');
    expect(heavy.densityWords).toBe(
      'Suspect: outside 0.775 to 0.840 kg/L of jet fuel. 0.854 kg/L at 15 °C by the scale, its batch 0.804 kg/L: 6.2 % heavier. The operator has given no tolerance for it: Set-up, Fuel, crew, drum rules.',
    );
  });

  it('2 kg too few are jet fuel still, and more than the 1 % that the operator allows', () => {
    const light = { grossKg: 178.5 };
    expect(checked(light).isSuspect).toBe(false);
    const tolerance = {
      percent: 1,
      scaleErrorKg: kilograms(0.5),
      dipErrorLitres: litres(2),
      reference: 'fuel manual 4',
    };
    const suspect = checked({ ...light, tolerance });
    expect(suspect.isSuspect).toBe(true);
    expect(suspect.densityWords).toContain('over the 1 % of fuel manual 4. Scale ±0.5 kg is 0.3 %');
    expect(checked({ grossKg: 179.5, tolerance }).densityWords).toMatch(/^As its batch: /);
  });

  it('a drum filled to the brim has no room when it warms', () => {
    expect(checked({ measured: { litres: 215 }, temperatureC: 0 })).toMatchObject({ fits: false });
  });

  it('less than the tare is no fuel', () => {
    expect(checked({ grossKg: 15 }).densityWords).toBe('No fuel weighs that. Weigh and measure again.');
  });
});

it('the ledger keeps whole millilitres', () => {
  expect(millilitresIn(199.9996)).toBe(200_000);
});
