import type { LedgerState } from './ledger-state.js';

/**
 * Ids of the corrections of a movement that stand: a correction that is itself corrected does not. Sorted; empty: the
 * movement stands. A circle of corrections is cut where it closes.
 */
export function standingCorrections(
  { corrections }: Pick<LedgerState, 'corrections'>,
  id: string,
  above: readonly string[] = [],
): readonly string[] {
  const all = corrections.get(id);
  if (!all) return [];
  const path = [...above, id];
  return all.filter(
    (correction) =>
      path.includes(correction) || standingCorrections({ corrections }, correction, path).length === 0,
  );
}
