import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  feetFromMetres,
  hoursFromMinutes,
  kilogramsFromPounds,
  kilometresFromNauticalMiles,
  litresFromUsGallons,
  massOf,
  metresFromFeet,
  minutesFromHours,
  nauticalMilesFromKilometres,
  poundsFromKilograms,
  usGallonsFromLitres,
  volumeOf,
} from './convert.js';
import {
  feet,
  hours,
  kilograms,
  kilogramsPerLitre,
  litres,
  nauticalMiles,
  pounds,
  usGallons,
} from './quantity.js';

describe('conversions', () => {
  it('a pound, a US gallon, a foot and a nautical mile are exact by definition', () => {
    expect(kilogramsFromPounds(pounds(1))).toBe(0.45359237);
    expect(litresFromUsGallons(usGallons(1))).toBe(3.785411784);
    expect(metresFromFeet(feet(1))).toBe(0.3048);
    expect(kilometresFromNauticalMiles(nauticalMiles(1))).toBe(1.852);
    expect(hoursFromMinutes(minutesFromHours(hours(1.5)))).toBe(1.5);
  });

  it('there and back is the same figure', () => {
    const same = (back: number, value: number) => expect(back).toBeCloseTo(value, 6);
    fc.assert(
      fc.property(fc.double({ min: -1e6, max: 1e6, noNaN: true }), (value) => {
        same(kilogramsFromPounds(poundsFromKilograms(kilograms(value))), value);
        same(litresFromUsGallons(usGallonsFromLitres(litres(value))), value);
        same(feetFromMetres(metresFromFeet(feet(value))), value);
        same(nauticalMilesFromKilometres(kilometresFromNauticalMiles(nauticalMiles(value))), value);
        same(volumeOf(massOf(litres(value), kilogramsPerLitre(0.804)), kilogramsPerLitre(0.804)), value);
      }),
    );
  });

  it('a pound is less than a kilogram, and a US gallon more than a litre', () => {
    expect(poundsFromKilograms(kilograms(184))).toBeCloseTo(405.65, 2);
    expect(usGallonsFromLitres(litres(205))).toBeCloseTo(54.16, 2);
    expect(massOf(litres(205), kilogramsPerLitre(0.8))).toBe(164);
  });
});
