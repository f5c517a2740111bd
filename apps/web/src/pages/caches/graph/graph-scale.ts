import { topFor } from '../../../ui/index.js';
import type { Cache } from '../caches-read.js';

export const topOf = (cache: Cache): number => {
  const { offered, noDeliveries } = cache.projections;
  return topFor(Math.max(...offered.usableLitres, ...noDeliveries.usableLitres, cache.minimumLitres));
};

export interface DeliveryMark {
  readonly day: number;
  readonly drums: number;
  readonly look: 'filled' | 'open' | 'asked';
  /** How many lines its count stands above the lowest: no count lies over another. */
  readonly row: number;
}

/** As wide as a letter of a count gets, and the room beside it, in pixels. */
const letter = { width: 7, gap: 3 };

/**
 * One mark a day, `dayWidth` pixels apart: open where any drum of it is only offered, asked where any of it needs a
 * decision.
 */
export const deliveryMarks = (
  cache: Cache,
  dates: readonly string[],
  dayWidth: number,
): readonly DeliveryMark[] => {
  const landings = [
    ...cache.deliveries.map(({ date, drums, heldDrums, state, needsDecision }) => ({
      date,
      drums: drums - heldDrums,
      look:
        needsDecision !== null
          ? ('asked' as const)
          : state === 'offered'
            ? ('open' as const)
            : ('filled' as const),
    })),
    ...cache.slings
      .filter(({ to }) => to === cache.place)
      .map(({ date, load }) => ({ date, drums: load.drums, look: 'filled' as const })),
  ];
  /** Where the counts of each row end. */
  const ends: number[] = [];
  return dates.flatMap((date, index) => {
    const of = landings.filter((landing) => landing.date === date);
    if (of.length === 0) return [];
    const drums = of.reduce((sum, landing) => sum + landing.drums, 0);
    const look = (['asked', 'open', 'filled'] as const).find((each) => of.some((one) => one.look === each))!;
    const halfWidth = (String(drums).length + (look === 'asked' ? 1 : 0)) * (letter.width / 2);
    const at = (index + 1) * dayWidth;
    const free = ends.findIndex((end) => end + letter.gap <= at - halfWidth);
    const row = free === -1 ? ends.length : free;
    ends[row] = at + halfWidth;
    return [{ day: index + 1, drums, look, row }];
  });
};

/** Days on which fuel leaves, by draws and by slings. */
export const drawDays = (cache: Cache, dates: readonly string[]): readonly number[] => {
  const gone = new Set([
    ...cache.draws.map(({ date }) => date),
    ...cache.slings
      .filter(({ from, load }) => from === cache.place && load.drums > 0)
      .map(({ date }) => date),
  ]);
  return dates.flatMap((date, index) => (gone.has(date) ? [index + 1] : []));
};
