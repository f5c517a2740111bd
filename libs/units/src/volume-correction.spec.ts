import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { celsius, kilogramsPerLitre, litres } from './quantity.js';
import { densityAt, densityAt15From, thermalExpansion, volumeAt, volumeAt15 } from './volume-correction.js';

const density = fc.double({ min: 0.7, max: 1, noNaN: true }).map(kilogramsPerLitre);
const temperature = fc.double({ min: -50, max: 60, noNaN: true }).map(celsius);

describe('volume correction', () => {
  it('a volume corrected to 15 C and back is the volume', () => {
    fc.assert(
      fc.property(density, temperature, (at15, t) => {
        expect(volumeAt(volumeAt15(litres(205), at15, t), at15, t)).toBeCloseTo(205, 9);
      }),
    );
  });

  it('the density at 15 C is found from the density observed', () => {
    fc.assert(
      fc.property(density, temperature, (at15, t) => {
        // At an edge two densities at 15 C may fit one observation; they differ by less than the table's step.
        expect(Math.abs(densityAt15From(densityAt(at15, t), t) - at15)).toBeLessThan(0.0005);
      }),
    );
    for (const inBand of [0.71, 0.78, 0.804, 0.86].map(kilogramsPerLitre))
      expect(densityAt15From(densityAt(inBand, celsius(-30)), celsius(-30))).toBeCloseTo(inBand, 12);
  });

  it('a density between two published bands belongs to the nearer one, and nothing jumps by much', () => {
    for (const edge of [0.77025, 0.78775, 0.83875]) {
      const [below, above] = [edge - 1e-9, edge + 1e-9].map((rho) =>
        thermalExpansion(kilogramsPerLitre(rho)),
      );
      expect(Math.abs(below! / above! - 1)).toBeLessThan(0.003);
    }
  });

  it('a density outside the table is refused', () => {
    expect(() => thermalExpansion(kilogramsPerLitre(0.652))).toThrow(/certificate/);
    expect(() => thermalExpansion(kilogramsPerLitre(804))).toThrow(RangeError);
  });
});
