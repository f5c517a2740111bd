import { type Kilograms, type KilogramsPerLitre, litres, print } from '@drumline/units';
import type { PlanningDrum } from '../aircraft-type.js';
import type { NamedDrum } from './named-load.js';

/** In the place of a batch, which nobody knows. */
const noBatch = 'NOT IN BOOK';

/** What a drum that is in no book is reckoned by. */
interface ReckonedBy {
  readonly drum: Pick<PlanningDrum, 'grossKg' | 'tareKg'>;
  readonly bookDensityKgPerLitre: KilogramsPerLitre;
}

/**
 * A drum that stands in the aeroplane and is in no book, by the weight that its crew has told, kg; null: none was told,
 * and the planning weight counts. With the planning weight of the steel, the rest is fuel at the book's density, in whole
 * litres. Common practice, no source.
 */
export function drumInNoBook(
  number: string,
  toldKg: Kilograms | null,
  { drum, bookDensityKgPerLitre }: ReckonedBy,
): Omit<NamedDrum, 'offAfterLeg'> {
  const grossKg = toldKg ?? drum.grossKg;
  const fuelKg = Math.max(0, grossKg - drum.tareKg);
  return {
    number,
    batch: noBatch,
    grossKg,
    tareKg: drum.tareKg,
    litres: litres(Math.round(fuelKg / bookDensityKgPerLitre)),
    notInBook: toldKg === null ? 'planning weight' : 'weight by the crew',
  };
}

/** "0913 is not in the book: 190.0 kg by the crew." of each such drum of a load; null: every drum is in the book. */
export function notInBookWords(drums: readonly NamedDrum[]): string | null {
  const words = drums.flatMap(({ number, grossKg, notInBook }) => {
    if (notInBook === undefined) return [];
    const kg = print(grossKg, 'kg', 1);
    const by =
      notInBook === 'weight by the crew' ? `${kg} by the crew` : `no weight was told, ${kg} as planned`;
    return [`${number} is not in the book: ${by}.`];
  });
  return words.length === 0 ? null : words.join(' ');
}
