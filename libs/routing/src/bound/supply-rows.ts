import type { Store } from '../problem.js';
import type { Draft } from './draft.js';
import type { Units } from './store-rows.js';

/** Rows in which a pack taken at a source counts 1, and own use counts in packs, by day. */
export interface SupplyRows {
  readonly packRow: readonly number[];
  readonly unitRow: readonly number[] | null;
}

/**
 * What a source has to give. What is left at the end of a day is a column of its own, so that a route appears on
 * its own day only.
 */
export function supplyRows(draft: Draft, source: Store, { packSize }: Units): SupplyRows | null {
  if (!source.supply) return null;
  const { packsByDay, unitsByDay } = source.supply;
  return {
    packRow: stockRows(draft, packsByDay),
    unitRow:
      unitsByDay &&
      stockRows(
        draft,
        unitsByDay.map((amount) => amount / packSize),
      ),
  };
}

/** Taken + left at the end of the day = left the day before + what becomes ready. */
function stockRows(draft: Draft, readyByDay: readonly number[]): number[] {
  const rows = readyByDay.map((ready, day) => {
    const added = ready - (readyByDay[day - 1] ?? 0);
    return draft.row(added, added);
  });
  rows.forEach((row, day) => {
    const left = draft.column(0, 0, Math.max(0, readyByDay[day]));
    draft.enter(left, row, 1);
    if (day < rows.length - 1) draft.enter(left, rows[day + 1], -1);
  });
  return rows;
}
