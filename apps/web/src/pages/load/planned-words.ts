import { inWords } from '../../ui/qty.js';
import type { LoadedFlight } from './load-read.js';

type NotLoaded = Pick<LoadedFlight, 'id' | 'state' | 'toFill' | 'stops' | 'planned' | 'planningKg'>;

/** "Planned, no drum picked yet: 5 drums at 180 kg each". */
export const pickedWords = ({ stops, planned, planningKg }: NotLoaded): string => {
  const picked = stops.reduce((sum, { drums }) => sum + drums.length, 0);
  const drums = Math.max(0, ...(planned?.bars ?? []).map((bar) => bar.drums));
  const yet = picked === 0 ? 'no drum picked yet' : `${picked} of ${inWords(drums, 'drums')} picked`;
  return `Planned, ${yet}: ${inWords(drums, 'drums')} at ${inWords(planningKg, 'kg')} each`;
};

/** Who is to do what before there is a load sheet, and where. */
export const toDoNext = ({ id, state, toFill }: NotLoaded) => {
  const card = { href: `/week/${encodeURIComponent(id)}`, link: `${id} on Week` };
  if (toFill === 0) return { ...card, words: 'Amend the flight.' };
  return state === 'offered'
    ? { ...card, words: 'Approve the flight: then what is missing stands under Drums, To fill.' }
    : { href: '/drums?view=fill', link: 'Drums, To fill', words: 'Fill them first.' };
};
