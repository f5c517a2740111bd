import { type Celsius, type KilogramsPerLitre, kilogramsPerLitre, type Litres, litres } from './quantity.js';

/**
 * Volume correction of fuel to 15 C: API MPMS 11.1 / ASTM D1250-80, Table 54B (metric, densities in vacuo).
 * The published bands leave gaps of half a kg/m3, the step of the printed table; a density in a gap belongs to the
 * nearer band.
 */
const bands = [
  { name: 'gasolines', belowKgPerM3: 770.25, alpha: (rho: number) => 346.4228 / rho ** 2 + 0.4388 / rho },
  { name: 'transition', belowKgPerM3: 787.75, alpha: (rho: number) => 2680.3206 / rho ** 2 - 0.00336312 },
  { name: 'jet fuels', belowKgPerM3: 838.75, alpha: (rho: number) => 594.5418 / rho ** 2 },
  { name: 'fuel oils', belowKgPerM3: 1075.25, alpha: (rho: number) => 186.9696 / rho ** 2 + 0.4862 / rho },
] as const;
const lowestKgPerM3 = 653;

/** Thermal expansion per degree at 15 C. Throws a RangeError outside the table (0.653 to 1.075 kg/L). */
export const thermalExpansion = (densityAt15: KilogramsPerLitre): number => {
  const rho = densityAt15 * 1000;
  const band = rho >= lowestKgPerM3 ? bands.find(({ belowKgPerM3 }) => rho < belowKgPerM3) : undefined;
  if (!band)
    throw new RangeError(
      `Table 54B covers densities at 15 C from 0.653 to 1.075 kg/L, not ${densityAt15}: check the batch's certificate.`,
    );
  return band.alpha(rho);
};

/**
 * Volume correction factor: litres at `temperature` times this are litres at 15 C. No unit; exactly 1 at 15 C.
 * Throws a RangeError where the density at 15 C is outside the table.
 */
export const volumeCorrectionFactor = (densityAt15: KilogramsPerLitre, temperature: Celsius): number => {
  const alpha = thermalExpansion(densityAt15);
  const warmer = temperature - 15;
  return Math.exp(-alpha * warmer * (1 + 0.8 * alpha * warmer));
};

/** Litres at 15 C of a volume measured at `temperature`. Throws as `volumeCorrectionFactor`. */
export const volumeAt15 = (observed: Litres, densityAt15: KilogramsPerLitre, temperature: Celsius): Litres =>
  litres(observed * volumeCorrectionFactor(densityAt15, temperature));

/** Litres at `temperature` of a volume at 15 C. Throws as `volumeCorrectionFactor`. */
export const volumeAt = (at15: Litres, densityAt15: KilogramsPerLitre, temperature: Celsius): Litres =>
  litres(at15 / volumeCorrectionFactor(densityAt15, temperature));

/** Density at `temperature` of fuel whose density at 15 C is known. Throws as `volumeCorrectionFactor`. */
export const densityAt = (densityAt15: KilogramsPerLitre, temperature: Celsius): KilogramsPerLitre =>
  kilogramsPerLitre(densityAt15 * volumeCorrectionFactor(densityAt15, temperature));

/**
 * Density at 15 C of fuel whose density was observed at `temperature`. Throws a RangeError where it is outside the
 * table. The factor depends on the answer, so it is iterated: a round leaves at most 0.6 of the error (transition band,
 * 65 degrees from 15 C), so sixty rounds reach the last digit.
 */
export const densityAt15From = (observed: KilogramsPerLitre, temperature: Celsius): KilogramsPerLitre => {
  let densityAt15 = observed;
  for (let round = 0; round < 60; round++)
    densityAt15 = kilogramsPerLitre(observed / volumeCorrectionFactor(densityAt15, temperature));
  return densityAt15;
};

/** Whether a density at 15 C lies in the range of the Jet A-1 specification, 0.775 to 0.840 kg/L. */
export const isJetFuelDensity = (densityAt15: KilogramsPerLitre): boolean =>
  densityAt15 >= 0.775 && densityAt15 <= 0.84;
