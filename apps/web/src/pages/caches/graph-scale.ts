import type { Cache } from './caches-read.js';

/** A graph in pixels: days from left to right, litres from zero up. */
export interface GraphScale {
  readonly width: number;
  readonly height: number;
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
  readonly topLitres: number;
  /** `day` 0 is the start of the first day. */
  readonly x: (day: number) => number;
  readonly y: (litres: number) => number;
}

/** Three sizes serve nearly every cache, so that graphs can be compared; above them, the next 5,000 L. */
export const topOf = (cache: Cache): number => {
  const { offered, noDeliveries } = cache.projections;
  const highest = Math.max(...offered.usableLitres, ...noDeliveries.usableLitres, cache.minimumLitres);
  return [2000, 3000, 5000].find((top) => highest <= top) ?? Math.ceil(highest / 5000) * 5000;
};

export const graphScale = (
  size: { width: number; height: number },
  days: number,
  topLitres: number,
): GraphScale => {
  const { width, height } = size;
  const [left, right, top, bottom] = [36, width - 22, 19, height - 27];
  return {
    width,
    height,
    left,
    right,
    top,
    bottom,
    topLitres,
    x: (day) => round(left + (day / days) * (right - left)),
    y: (litres) => round(bottom - (Math.max(litres, 0) / topLitres) * (bottom - top)),
  };
};

const round = (value: number): number => Math.round(value * 10) / 10;

/** Levels as one stepped path: what is there now, then each day's figure at the day's end. */
export const stepped = (levels: readonly number[], { x, y }: GraphScale): string =>
  levels
    .slice(1)
    .reduce((path, litres, day) => `${path}H${x(day + 1)}V${y(litres)}`, `M${x(0)} ${y(levels[0]!)}`);

/** Lines across, and what stands at their ends: five at most. */
export const litreLines = (topLitres: number): readonly number[] => {
  const step = topLitres <= 5000 ? 1000 : topLitres / 5;
  return Array.from({ length: Math.floor(topLitres / step) + 1 }, (_, index) => index * step);
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
