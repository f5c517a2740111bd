import type { BlockingLimit, BuiltProblem } from '../problem/problem-map.js';
import { listWords } from '../wording.js';
import type { Shortfall } from './find-shortages.js';

const limitWords: Readonly<Record<BlockingLimit, string>> = {
  closed: 'closed places, no-flying days and soft strips',
  'landing capacity': 'the drums that the strip can unload in a day',
  capacity: 'the capacity of the site',
  'aircraft hours': 'the aircraft at hand',
  crew: 'the pilots at hand',
  'base stock': 'the drums ready at the bases',
};

/** What stands in the way of a shortage, in words. `by`: the limits that would each spare it alone. */
export function blockedWords(
  built: BuiltProblem,
  { place, day }: Shortfall,
  by: readonly BlockingLimit[],
): string {
  if (day === 0) return 'It was short before the first day.';
  if (by.length > 0)
    return `It would be spared without one of these limits: ${listWords(by.map((limit) => limitWords[limit]))}.`;
  const store = built.map.storeOf.get(place)!;
  const isReached = built.problem.routes.some(({ stops }) => stops.includes(store));
  return isReached
    ? 'No single limit stands in the way: no flight lands enough in time, whichever of them is lifted.'
    : 'No aeroplane lands there: it is supplied under a helicopter, and the next sling comes too late.';
}
