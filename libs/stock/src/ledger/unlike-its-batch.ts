import { celsius, type KilogramsPerLitre } from '@drumline/units';
import { checkDensity, type DensityTolerance } from '../drum-check/density-check.js';
import { litresOf } from './millilitres.js';
import type { Filled } from './movement.js';

/** What a fill is held against. */
export interface BatchDensities {
  /** At 15 °C, by batch; of a batch that is not here nothing is said. */
  readonly densityAt15: ReadonlyMap<string, KilogramsPerLitre>;
  /** The operator's; null: it has said none, and nothing is compared. */
  readonly densityTolerance: DensityTolerance | null;
}

/**
 * That a fill weighs other than its litres of its batch would, by more than the operator's tolerance, with both
 * densities in words; null: it does not, or nobody can say. Without a temperature 15 °C is taken, and that is said.
 */
export function unlikeItsBatch(
  { batch, grossKg, tareKg, millilitres, temperatureC }: Filled,
  { densityAt15, densityTolerance }: BatchDensities,
): string | null {
  const ofBatch = densityAt15.get(batch);
  if (ofBatch === undefined || densityTolerance === null) return null;
  const temperature = temperatureC ?? celsius(15);
  const measured = { grossKg, tareKg, dipLitres: litresOf(millilitres), temperature };
  const { suspect, words } = checkDensity(measured, ofBatch, densityTolerance);
  if (!suspect) return null;
  return temperatureC === undefined ? `${words} No temperature was said: taken as 15 °C.` : words;
}
