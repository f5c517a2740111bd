import { checkDensity, quantityOfLitres, quantityOfWeight, ullageAt55 } from '@drumline/stock';
import { celsius, kilograms, kilogramsPerLitre, litres } from '@drumline/units';
import { figure } from '../../../ui/index.js';

/** A drum as it was filled or weighed. `litres` or `netKg`: whichever was measured. */
export interface Measured {
  readonly measured: { readonly litres: number } | { readonly netKg: number };
  readonly tareKg: number;
  readonly grossKg: number;
  readonly temperatureC: number;
  readonly densityAt15KgPerLitre: number;
  /** Whole volume of a drum; undefined: the operator's table does not say. */
  readonly brimLitres: number | undefined;
}

export interface FillCheck {
  /** At the measured temperature, and at 15 °C. */
  readonly litres: number;
  readonly litresAt15: number;
  readonly expectedGrossKg: number;
  /** Scale over expected; negative: lighter. */
  readonly differenceKg: number;
  readonly differenceWords: string;
  readonly densityWords: string;
  readonly isSuspect: boolean;
  /** Null: the whole volume is not known. */
  readonly ullageWords: string | null;
  readonly fits: boolean;
}

/** What a full drum should weigh against what the scale says. A text: why it cannot be said. */
export const checkFill = (drum: Measured): FillCheck | string => {
  try {
    return check(drum);
  } catch (error) {
    // Outside the table of volume correction.
    if (error instanceof RangeError) return error.message;
    throw error;
  }
};

const check = ({ measured, tareKg, grossKg, brimLitres, ...drum }: Measured): FillCheck => {
  const temperature = celsius(drum.temperatureC);
  const densityAt15 = kilogramsPerLitre(drum.densityAt15KgPerLitre);
  const state = { densityAt15, temperature };
  const fuel =
    'litres' in measured
      ? quantityOfLitres(litres(measured.litres), state)
      : quantityOfWeight(kilograms(measured.netKg), state);
  const expectedGrossKg = tareKg + fuel.kg;
  const differenceKg = grossKg - expectedGrossKg;
  const density = checkDensity(
    {
      grossKg: kilograms(grossKg),
      tareKg: kilograms(tareKg),
      dipLitres: fuel.litres,
      temperature,
    },
    densityAt15,
    rangeOfJetFuel,
  );
  const ullage = brimLitres === undefined ? null : ullageAt55(fuel.litres, state, litres(brimLitres));
  return {
    litres: fuel.litres,
    litresAt15: fuel.litresAt15,
    expectedGrossKg,
    differenceKg,
    differenceWords: differenceWords(differenceKg),
    densityWords: densityWords(density.impliedAt15, density.differencePercent, densityAt15),
    isSuspect: density.suspect,
    ullageWords: ullage?.words ?? null,
    fits: ullage?.fits ?? true,
  };
};

// The operator's tables have no tolerance for this check: the difference is shown, and only what is no jet fuel is suspect.
const rangeOfJetFuel = {
  percent: Number.POSITIVE_INFINITY,
  scaleErrorKg: kilograms(0),
  dipErrorLitres: litres(0),
  reference: 'the range of jet fuel',
};

const differenceWords = (kg: number): string => {
  const size = figure(Math.abs(kg), 1);
  if (size === '0.0') return 'as expected, 0.0 kg';
  return `${size} kg ${kg > 0 ? 'heavier' : 'lighter'} than expected`;
};

const densityWords = (implied: number | null, percent: number | null, ofBatch: number): string => {
  if (implied === null || percent === null) return 'No fuel weighs that. Weigh and measure again.';
  const apart = `${figure(Math.abs(percent), 1)} % ${percent < 0 ? 'lighter' : 'heavier'}`;
  return `${figure(implied, 3)} kg/L at 15 °C by the scale, its batch ${figure(ofBatch, 3)} kg/L: ${apart}.`;
};
