import { litres } from '@drumline/units';
import type { Draw } from './drum.js';

/**
 * Planned draws less what has been drawn for them (conventions, "Left to draw"): a draw is taken off those of its own
 * day, place and purpose (`for`), in their order. What was drawn beyond them is taken off nothing else, and a planned
 * draw that is done stays, with 0 L. Litres.
 */
export function drawsLeft<Planned extends Draw>(
  planned: readonly Planned[],
  drawn: readonly Draw[],
): readonly Planned[] {
  if (drawn.length === 0) return planned;
  const open = new Map<string, number>();
  for (const draw of drawn) open.set(keyOf(draw), (open.get(keyOf(draw)) ?? 0) + draw.litres);
  return planned.map((draw) => {
    const left = open.get(keyOf(draw)) ?? 0;
    const done = Math.min(draw.litres, left);
    open.set(keyOf(draw), left - done);
    return done > 0 ? { ...draw, litres: litres(draw.litres - done) } : draw;
  });
}

const keyOf = ({ date, place, for: purpose }: Draw): string => JSON.stringify([date, place, purpose]);
