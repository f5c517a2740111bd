import type { IsoInstant } from '@drumline/units';
import type { DrumState, DrumStep, LedgerState, Where } from './ledger-state.js';
import type { Millilitres } from './millilitres.js';
import { compareInstants } from './order.js';

/** Where a drum was and what was in it at a moment; null: not heard of by then. */
export function stepAt({ steps }: Pick<DrumState, 'steps'>, at: IsoInstant): DrumStep | null {
  return steps.findLast(({ from }) => compareInstants(from, at) <= 0) ?? null;
}

/** The book of a place at a moment, with everything known today. */
export function bookAt(state: Pick<LedgerState, 'drums'>, place: string, at: IsoInstant): Millilitres {
  return bookOf(drumsEverAt(state).get(place) ?? [], place, at);
}

/** The same from the drums that have ever stood there. */
export function bookOf(drums: readonly DrumState[], place: string, at: IsoInstant): Millilitres {
  return drums.reduce((book, drum) => {
    const step = stepAt(drum, at);
    return step && isAt(step.where, place) ? book + step.millilitres : book;
  }, 0) as Millilitres;
}

/** The drums that have ever stood at each place. */
export function drumsEverAt({
  drums,
}: Pick<LedgerState, 'drums'>): ReadonlyMap<string, readonly DrumState[]> {
  const ever = new Map<string, DrumState[]>();
  for (const drum of drums.values())
    for (const place of new Set(
      drum.steps.flatMap(({ where }) => (where.kind === 'at' ? [where.place] : [])),
    )) {
      const there = ever.get(place);
      if (there) there.push(drum);
      else ever.set(place, [drum]);
    }
  return ever;
}

export const isAt = (where: Where | undefined, place: string): boolean =>
  where?.kind === 'at' && where.place === place;
