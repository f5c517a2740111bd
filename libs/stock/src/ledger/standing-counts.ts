import type { LedgerState } from './ledger-state.js';
import type { Counted } from './movement.js';

/** Counts of a place that stand, in the order in which they happened. */
export function standingCounts(state: Pick<LedgerState, 'counts'>, place: string): readonly Counted[] {
  return (state.counts.get(place) ?? [])
    .filter(({ reversedBy }) => reversedBy.length === 0)
    .map(({ movement }) => movement as Counted);
}
