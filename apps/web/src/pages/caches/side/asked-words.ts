import type { Cache } from '../caches-read.js';

type Delivery = Pick<Cache['deliveries'][number], 'flight' | 'needsDecision'>;

/** "F03, F05 need a decision: XLOR is soft. F06 needs a decision: Drum 0451 is held.": each reason once, with its flights. */
export const askedWords = (deliveries: readonly Delivery[]): string => {
  const flightsOf = new Map<string, Set<string>>();
  for (const { flight, needsDecision } of deliveries)
    if (needsDecision !== null)
      flightsOf.set(needsDecision, (flightsOf.get(needsDecision) ?? new Set()).add(flight));
  return [...flightsOf]
    .map(
      ([reason, flights]) =>
        `${[...flights].join(', ')} ${flights.size === 1 ? 'needs' : 'need'} a decision: ${reason}`,
    )
    .join(' ');
};
