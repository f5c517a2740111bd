import type { IsoInstant } from '@drumline/units';
import type { DrumState, DrumStep, LedgerState } from './ledger-state.js';
import type { Millilitres } from './millilitres.js';

/** Where a drum was and what was in it at a moment; null: not heard of by then. */
export function stepAt({ steps }: Pick<DrumState, 'steps'>, at: IsoInstant): DrumStep | null {
  const moment = Date.parse(at);
  return steps.findLast(({ from }) => Date.parse(from) <= moment) ?? null;
}

/** The book of a place at a moment, with everything known today. */
export function bookAt(state: Pick<LedgerState, 'drums'>, place: string, at: IsoInstant): Millilitres {
  let book = 0;
  for (const drum of state.drums.values()) {
    const step = drum.steps.some(({ where }) => where.kind === 'at' && where.place === place)
      ? stepAt(drum, at)
      : null;
    if (step?.where.kind === 'at' && step.where.place === place) book += step.millilitres;
  }
  return book as Millilitres;
}
