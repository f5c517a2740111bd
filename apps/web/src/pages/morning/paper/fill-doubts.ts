import { checkDensity } from '@drumline/stock';
import { celsius, kilograms, kilogramsPerLitre, litres } from '@drumline/units';
import { missing, type Sheet } from './sheet.js';
import { after } from './stick-words.js';

/** Said beside the help and under the line, before anybody types it out. */
export const fillsAreOthers = 'What was filled is entered by the storekeeper, not by you: give the sheet on.';

/** "temp 12", °C; null: not written. */
export const temperatureIn = (words: readonly string[]): number | null => {
  const written = after(words, 'temp');
  if (written === undefined) return null;
  const degrees = Number(written.replace('\u2212', '-'));
  return Number.isFinite(degrees) ? degrees : missing('How warm was the fuel, in °C? Write temp 12.');
};

interface Fill {
  readonly batch: string;
  readonly litres: number;
  readonly tareKg: number;
  readonly grossKg: number;
  readonly temperature: number | null;
}

/** Weight against litres, by the density of the batch and the operator's tolerance: asked about, never refused. */
export const fillDoubts = (
  { batch, litres: amount, tareKg, grossKg, temperature }: Fill,
  { batches, densityTolerance, bookDensityKgPerLitre }: Sheet,
): readonly string[] => {
  const known = batches.find(({ id }) => id === batch.toUpperCase());
  const tolerance = known === undefined ? null : densityTolerance;
  const { suspect, impliedAt15, words } = checkDensity(
    {
      ...{ grossKg: kilograms(grossKg), tareKg: kilograms(tareKg) },
      ...{ dipLitres: litres(amount), temperature: celsius(temperature ?? 15) },
    },
    known?.densityAt15KgPerLitre ?? bookDensityKgPerLitre,
    tolerance ?? onlyNoFuel,
  );
  if (!suspect) return [];
  const density = kilogramsPerLitre((grossKg - tareKg) / amount);
  const found =
    tolerance === null || impliedAt15 === null
      ? `${(grossKg - tareKg).toFixed(1)} kg in ${amount} L is ${density.toFixed(3)} kg/L: weigh or measure again.`
      : words;
  return [temperature === null ? `${found} ${taken}` : found];
};

const taken = 'No temperature is written: taken as 15 °C. Write temp 12 where it was another.';

// Without a tolerance, or of a batch that nobody has entered, only what is no jet fuel is asked about.
const onlyNoFuel = {
  ...{ percent: Number.POSITIVE_INFINITY, reference: 'the range of jet fuel' },
  ...{ scaleErrorKg: kilograms(0), dipErrorLitres: litres(0) },
};
