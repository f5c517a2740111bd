import type { PackFlight } from '../day-pack/day-pack.js';

/** What stands in the way of loading a flight, and why. */
export interface NotToLoad {
  readonly what: 'HOLD' | 'Needs a decision' | 'Does not hold';
  readonly why: string;
}

/** Of a flight whose crew is not told to load it before base has decided; null: nothing stands in the way. */
export const notToLoad = ({ sheet, needsDecision }: PackFlight): NotToLoad | null => {
  const made = 'why' in sheet ? null : sheet;
  if (made !== null && made.heldWords !== null) return { what: 'HOLD', why: made.heldWords };
  if (needsDecision !== null) return { what: 'Needs a decision', why: needsDecision };
  return made === null || made.holds ? null : { what: 'Does not hold', why: `${made.faults.join('. ')}.` };
};
