import {
  celsius,
  densityAt,
  densityAt15From,
  isJetFuelDensity,
  kilogramsFromPounds,
  kilogramsPerLitre,
  litres,
  litresFromUsGallons,
  massOf,
  pounds,
  poundsFromKilograms,
  thermalExpansion,
  usGallons,
  volumeAt,
  volumeAt15,
  volumeCorrectionFactor,
} from '@drumline/units';
import { describe, expect, it } from 'vitest';

const factor = (rho15: number, t: number) =>
  volumeCorrectionFactor(kilogramsPerLitre(rho15 / 1000), celsius(t));
const within = (actual: number, expected: number, tolerance: number) =>
  expect(Math.abs(actual - expected), `${actual} against ${expected}`).toBeLessThanOrEqual(tolerance);

describe('volume correction of fuel to 15 C', () => {
  // Volume correction factors to 15 C for use with all grades of Jet A, Jet A-1, jet kerosene, turbine fuel; density 800,
  // table 54B; January 2016, refers to bulletin V-18 of Measurement Canada. Printed to 4 decimals.
  it.each([
    [-40, 1.0502],
    [-39, 1.0493],
    [-38, 1.0484],
    [-37, 1.0475],
    [-36, 1.0466],
    [-35, 1.0457],
    [-34, 1.0448],
    [-33, 1.0439],
    [-32, 1.043],
    [-31, 1.0421],
    [-30, 1.0412],
    [-29, 1.0403],
    [-28, 1.0394],
    [-27, 1.0385],
    [-26, 1.0376],
    [-25, 1.0367],
    [-24, 1.0358],
    [-23, 1.0349],
    [-22, 1.034],
    [-21, 1.0331],
    [-20, 1.0322],
    // The tenth columns of the table go colder: row -39, column 0.90 is -39.9 C.
    [-39.1, 1.0494],
    [-39.9, 1.0501],
  ])('VCF-1: jet fuel of 800 kg/m3 at %d C has %d', (t, expected) => {
    within(factor(800, t), expected, 5e-5);
  });

  // Measurement Canada, table for aviation gasoline of 710 kg/m3: strategis.ic.gc.ca mc-mc.nsf/fra/lm04777.html
  it.each([
    [-40, 1.07],
    [-39, 1.0688],
    [-38, 1.0675],
    [-30, 1.0576],
    [-25, 1.0513],
    [-20, 1.045],
  ])('VCF-2: aviation gasoline of 710 kg/m3 at %d C has %d', (t, expected) => {
    within(factor(710, t), expected, 5e-5);
  });

  // Computed from API MPMS 11.1 / ASTM D1250-80 table 54B (the formula that VCF-1 confirms).
  it.each([
    [775, [1.01641, 0.98897, 0.98343, 0.9723, 0.9555]],
    [780, [1.01556, 0.98954, 0.98429, 0.97375, 0.95783]],
    [788, [1.0143, 0.9904, 0.98558, 0.9759, 0.9613]],
    [800, [1.01387, 0.99068, 0.98601, 0.97662, 0.96246]],
    [804, [1.01374, 0.99078, 0.98615, 0.97686, 0.96284]],
    [820, [1.01321, 0.99113, 0.98669, 0.97776, 0.96428]],
    [840, [1.01261, 0.99154, 0.9873, 0.97878, 0.96593]],
  ])('VCF-3: fuel of %d kg/m3 at 0, 25, 30, 40 and 55 C', (rho15, expected) => {
    [0, 25, 30, 40, 55].forEach((t, index) => {
      within(factor(rho15, t), expected[index]!, 1e-5);
    });
  });

  // Computed from the same formula; to the figures quoted (5 and 6 significant).
  it('VCF-3: expansion per degree of 800 and 775 kg/m3', () => {
    within(thermalExpansion(kilogramsPerLitre(0.8)), 9.2897e-4, 5e-9);
    within(thermalExpansion(kilogramsPerLitre(0.775)), 1.09943e-3, 5e-9);
  });

  // Computed by iterating the same formula.
  it.each([
    [788, 30, 799.2],
    [795, 25, 802.43],
    [805, 5, 797.57],
  ])('VCF-4: %d kg/m3 observed at %d C is %d at 15 C', (observed, t, expected) => {
    within(densityAt15From(kilogramsPerLitre(observed / 1000), celsius(t)) * 1000, expected, 0.05);
  });

  it('VCF-5: is 1 at 15 C, falls as fuel warms, and leaves the mass as it is', () => {
    for (const rho15 of [710, 775, 780, 800, 804, 840]) {
      expect(factor(rho15, 15)).toBe(1);
      const factors = [-40, -20, 0, 15, 30, 55].map((t) => factor(rho15, t));
      expect(factors).toEqual([...new Set(factors)].sort((a, b) => b - a));
      const density = kilogramsPerLitre(rho15 / 1000);
      const warm = massOf(litres(4100), densityAt(density, celsius(30)));
      within(warm, massOf(volumeAt15(litres(4100), density, celsius(30)), density), 1e-9);
    }
  });
});

describe('litres and kilograms of a ledger', () => {
  // Computed with the factor above.
  it('4,100 L at 30 C, density 804, are 4,043.2 L at 15 C and 3,250.7 kg', () => {
    const at15 = volumeAt15(litres(4100), kilogramsPerLitre(0.804), celsius(30));
    within(at15, 4043.2, 0.05);
    within(massOf(at15, kilogramsPerLitre(0.804)), 3250.7, 0.05);
  });

  it('205 L measured at 35 C, density 800, are 201.17 L at 15 C and 160.9 kg, not 164.0', () => {
    const at15 = volumeAt15(litres(205), kilogramsPerLitre(0.8), celsius(35));
    within(at15, 201.17, 0.005);
    within(massOf(at15, kilogramsPerLitre(0.8)), 160.9, 0.05);
    within(massOf(litres(205), kilogramsPerLitre(0.8)), 164, 0.05);
  });
});

describe('densities of jet fuel', () => {
  // Jet A-1 density at 15 C 775.0 to 840.0 kg/m3 (restated from the specification by secondary pages).
  it('SPEC-1: 775 to 840 kg/m3 is jet fuel, 774.9 and 840.1 are not', () => {
    const jet = (rho15: number) => isJetFuelDensity(kilogramsPerLitre(rho15 / 1000));
    expect([774.9, 775, 804, 840, 840.1].map(jet)).toEqual([false, true, true, true, false]);
  });

  // Computed from the exact litres of a US gallon and kilograms of a pound.
  it.each([
    [775, 6.468],
    [800, 6.676],
    [804, 6.71],
    [840, 7.01],
  ])('SPEC-2: %d kg/m3 is %d lb/US gal', (rho15, expected) => {
    const gallon = massOf(litresFromUsGallons(usGallons(1)), kilogramsPerLitre(rho15 / 1000));
    within(poundsFromKilograms(gallon), expected, 0.001);
  });

  it('SPEC-2: 6.7 lb/US gal is 0.8028 kg/L, 6.8 is 0.8148', () => {
    const density = (poundsPerGallon: number) =>
      kilogramsFromPounds(pounds(poundsPerGallon)) / litresFromUsGallons(usGallons(1));
    within(density(6.7), 0.8028, 0.001);
    within(density(6.8), 0.8148, 0.001);
  });
});

describe('fuel in a drum', () => {
  // Computed: litres times density.
  it.each([
    [200, [155, 160, 160.8, 168]],
    [205, [158.9, 164, 164.8, 172.2]],
    [208.198, [161.4, 166.6, 167.4, 174.9]],
  ])('DRUM-3: %d L weigh so much at 775, 800, 804 and 840 kg/m3', (fill, expected) => {
    [0.775, 0.8, 0.804, 0.84].forEach((density, index) => {
      within(massOf(litres(fill), kilogramsPerLitre(density)), expected[index]!, 0.05);
    });
  });

  it('DRUM-3: 55 US gal at 6.7 lb/US gal are 167.15 kg', () => {
    within(kilogramsFromPounds(pounds(55 * 6.7)), 167.15, 0.05);
  });

  it('DRUM-3: 205 L weigh 153.6 kg when light and hot, 177.2 kg when heavy and cold', () => {
    const mass = (density: number, t: number) =>
      massOf(litres(205), densityAt(kilogramsPerLitre(density), celsius(t)));
    within(mass(0.775, 45), 153.6, 0.05);
    within(mass(0.84, -20), 177.2, 0.05);
  });

  // The rule, not liquid-full at 55 C, is 49 CFR 173.24a(d) (words from memory); volumes computed, density 800.
  it.each([
    [205, 15, 216.5, 213.0, true],
    [208.198, 15, 216.5, 216.32, true],
    [208.198, 15, 212, 216.32, false],
    [200, 15, 212, 207.8, true],
    [205, 15, 212, 213.0, false],
    [205, -20, 216.5, 219.85, false],
    [205, 30, 216.5, 210.02, true],
  ])('DRUM-4: %d L filled at %d C into a drum of %d L fill %d L at 55 C', (fill, t, drum, expected, fits) => {
    const density = kilogramsPerLitre(0.8);
    const hot = volumeAt(volumeAt15(litres(fill), density, celsius(t)), density, celsius(55));
    within(hot, expected, 0.05);
    expect(hot < drum).toBe(fits);
  });
});
