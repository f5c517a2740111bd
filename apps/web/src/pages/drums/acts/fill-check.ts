import {
  checkDensity,
  type DensityCheck,
  type DensityTolerance,
  quantityOfLitres,
  quantityOfWeight,
  ullageAt55,
} from '@drumline/stock';
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
  /** The operator's; undefined: it has said none, and only what is no jet fuel is suspect. */
  readonly tolerance?: DensityTolerance | undefined;
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

const check = ({ measured, tareKg, grossKg, brimLitres, tolerance, ...drum }: Measured): FillCheck => {
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
    tolerance ?? rangeOfJetFuel,
  );
  const ullage = brimLitres === undefined ? null : ullageAt55(fuel.litres, state, litres(brimLitres));
  return {
    litres: fuel.litres,
    litresAt15: fuel.litresAt15,
    expectedGrossKg,
    differenceKg,
    differenceWords: differenceWords(differenceKg),
    densityWords: tolerance === undefined ? withoutTolerance(density, densityAt15) : density.words,
    isSuspect: density.suspect,
    ullageWords: ullage?.words ?? null,
    fits: ullage?.fits ?? true,
  };
};

const noTolerance = 'The operator has given no tolerance for it: Set-up, Fuel, crew, drum rules.';

// Without the operator's tolerance the difference is shown, and only what is no jet fuel is suspect.
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

const withoutTolerance = ({ impliedAt15, differencePercent, suspect }: DensityCheck, ofBatch: number) => {
  if (impliedAt15 === null || differencePercent === null)
    return 'No fuel weighs that. Weigh and measure again.';
  const apart = `${figure(Math.abs(differencePercent), 1)} % ${differencePercent < 0 ? 'lighter' : 'heavier'}`;
  const found = suspect ? 'Suspect: outside 0.775 to 0.840 kg/L of jet fuel. ' : '';
  return `${found}${figure(impliedAt15, 3)} kg/L at 15 °C by the scale, its batch ${figure(ofBatch, 3)} kg/L: ${apart}. ${noTolerance}`;
};
