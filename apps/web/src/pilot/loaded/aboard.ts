import type { MyDay } from '@drumline/contract';
import { type DrumAsLoaded, drumInNoBook, type LoadSheetRequest } from '@drumline/loading';
import { type Kilograms, kilograms, litres } from '@drumline/units';

/** A drum by what is known of it, wherever it stands. */
export type KnownDrum = Omit<DrumAsLoaded, 'planned' | 'position'>;

/** Every drum where the sheet has it. */
export const asPlanned = ({ load }: LoadSheetRequest): readonly DrumAsLoaded[] =>
  load.drums.map(({ offAfterLeg: _, ...drum }) => ({ ...drum, planned: drum.number }));

/** Two drums change places. */
export const changePlaces = (
  aboard: readonly DrumAsLoaded[],
  one: string,
  other: string,
): readonly DrumAsLoaded[] =>
  aboard.map((drum) => {
    if (drum.position !== one && drum.position !== other) return drum;
    return { ...drum, position: drum.position === one ? other : one };
  });

/** Another drum stands in that place; one that is aboard already changes places with it. */
export const standsIn = (
  aboard: readonly DrumAsLoaded[],
  position: string,
  drum: KnownDrum,
): readonly DrumAsLoaded[] => {
  const already = aboard.find(({ number }) => number === drum.number);
  if (already !== undefined) return changePlaces(aboard, already.position, position);
  return aboard.map((each) =>
    each.position === position ? { ...drum, planned: each.planned, position } : each,
  );
};

/** As the book has it, or as it stands on this load; null: somebody has to say what it weighs. */
export const drumInBook = (
  number: string,
  aboard: readonly DrumAsLoaded[],
  { drums }: MyDay,
): KnownDrum | null => {
  const own = aboard.find((each) => each.number === number);
  if (own !== undefined) return own;
  const drum = drums.find((each) => each.number === number);
  if (drum === undefined) return null;
  const { batch, kg, tareKg, litres: held } = drum;
  return { number, batch, grossKg: kilograms(kg), tareKg: kilograms(tareKg), litres: litres(held) };
};

/** A drum that is in no book, by its weight. */
export const drumByWeight = (
  number: string,
  grossKg: Kilograms,
  { load, bookDensityKgPerLitre }: LoadSheetRequest,
): KnownDrum => drumInNoBook(number, grossKg, { drum: load.request.drum, bookDensityKgPerLitre });
