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

type WithGaps = Pick<LoadedFlight, 'state' | 'toFill' | 'nextOldest' | 'version' | 'route'>;

/** The drums that were filled since, as words and press; null: none stands free, or it is loaded already. */
export const filledSince = ({ state, toFill, nextOldest, version, route }: WithGaps) => {
  const oldest = nextOldest.find(({ drum }) => drum !== null)?.drum;
  if (toFill === 0 || oldest == null || !['offered', 'approved', 'given'].includes(state)) return null;
  return {
    press: `Take fit drums from ${route[0]}`,
    words: `Fit drums stand free at ${route[0]}, the oldest is ${oldest.number}. Taken, they make it version ${version + 1}; what is then missing stays to be filled.`,
  };
};
