import { type Litres, litres } from '@drumline/units';
import type { Drum } from './drum.js';

/** What a draw takes out of one drum. */
export interface DrumDraw {
  readonly number: string;
  readonly litres: Litres;
  /** What the book then has left in it. */
  readonly leftLitres: Litres;
}

/** A draw over several drums. */
export interface SplitDraw {
  readonly draws: readonly DrumDraw[];
  /** Litres beyond what the book has in these drums: they stand at the last drum, to be looked at. */
  readonly beyondLitres: Litres;
}

/**
 * Litres over the drums in the order in which they were opened: each is emptied before the next. What is more than the
 * book has in them is put to the last one, as it did come out of a drum. A drum that nothing is left for is not in it.
 */
export function splitDraw(drums: readonly Pick<Drum, 'number' | 'litres'>[], wanted: Litres): SplitDraw {
  let open: number = wanted;
  const draws = drums.flatMap(({ number, litres: there }, index) => {
    const most = index === drums.length - 1 ? open : Math.min(open, there);
    open -= most;
    if (most <= 0) return [];
    return [{ number, litres: litres(most), leftLitres: litres(Math.max(0, there - most)) }];
  });
  const there = drums.reduce((sum, drum) => sum + drum.litres, 0);
  return { draws, beyondLitres: litres(Math.max(0, wanted - there)) };
}
