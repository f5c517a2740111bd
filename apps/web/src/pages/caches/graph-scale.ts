import { topFor } from '../../ui/index.js';
import type { Cache } from './caches-read.js';

export const topOf = (cache: Cache): number => {
  const { offered, noDeliveries } = cache.projections;
  return topFor(Math.max(...offered.usableLitres, ...noDeliveries.usableLitres, cache.minimumLitres));
};

export interface DeliveryMark {
  readonly day: number;
  readonly drums: number;
  readonly look: 'filled' | 'open' | 'asked';
  /** On neighbouring days the counts stand one above the other. */
  readonly raised: boolean;
}

/** One mark a day: open where any drum of it is only offered, asked where any of it needs a decision. */
export const deliveryMarks = (cache: Cache, dates: readonly string[]): readonly DeliveryMark[] => {
  const landings = [
    ...cache.deliveries.map(({ date, drums, state, needsDecision }) => ({
      date,
      drums,
      look:
        needsDecision !== null
          ? ('asked' as const)
          : state === 'offered'
            ? ('open' as const)
            : ('filled' as const),
    })),
    ...cache.slings
      .filter(({ to }) => to === cache.place)
      .map(({ date, drums }) => ({ date, drums, look: 'filled' as const })),
  ];
  let raised = false;
  let last = -1;
  return dates.flatMap((date, index) => {
    const of = landings.filter((landing) => landing.date === date);
    if (of.length === 0) return [];
    raised = index - last === 1 && last >= 0 ? !raised : false;
    last = index;
    const look = (['asked', 'open', 'filled'] as const).find((each) => of.some((one) => one.look === each))!;
    return [{ day: index + 1, drums: of.reduce((sum, { drums }) => sum + drums, 0), look, raised }];
  });
};

/** Days on which fuel leaves, by draws and by slings. */
export const drawDays = (cache: Cache, dates: readonly string[]): readonly number[] => {
  const gone = new Set([
    ...cache.draws.map(({ date }) => date),
    ...cache.slings.filter(({ from }) => from === cache.place).map(({ date }) => date),
  ]);
  return dates.flatMap((date, index) => (gone.has(date) ? [index + 1] : []));
};
