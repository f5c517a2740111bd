import type { BatchState, DrumState, LedgerState, PlaceBalance } from './ledger-state.js';
import type { Millilitres } from './millilitres.js';
import type { Raised } from './raised.js';
import { raisedIn } from './raised-in.js';

/** What one or more movements changed: rows to write beside the entry, in the same transaction. */
export interface LedgerChange {
  readonly drums: readonly DrumState[];
  /** Numbers that are no drum of their own any more: joined to another. */
  readonly drumsGone: readonly string[];
  readonly batches: readonly BatchState[];
  /** To be added to the balance of each place. */
  readonly balances: readonly PlaceBalance[];
  /** New, or said in other words than before. */
  readonly raised: readonly Raised[];
  /** Ids of raised things that no longer are. */
  readonly raisedGone: readonly string[];
}

/**
 * What differs between two states. It is enough that both hold every movement of the subjects concerned (the drums,
 * with all numbers ever joined to them, and their batches): the balances are differences, whatever else stands there.
 */
export function ledgerChange(before: LedgerState, after: LedgerState): LedgerChange {
  const was = new Map(raisedIn(before).map((each) => [each.id, each]));
  const is = new Map(raisedIn(after).map((each) => [each.id, each]));
  return {
    drums: [...after.drums.values()].filter((drum) => before.drums.get(drum.number) !== drum),
    drumsGone: [...before.drums.keys()].filter((number) => !after.drums.has(number)),
    batches: [...after.batches.values()].filter((batch) => before.batches.get(batch.batch) !== batch),
    balances: balanceChanges(before, after),
    raised: [...is.values()].filter((each) => !readsTheSame(was.get(each.id), each)),
    raisedGone: [...was.keys()].filter((id) => !is.has(id)),
  };
}

function readsTheSame(was: Raised | undefined, is: Raised): boolean {
  return was?.what === is.what && was.place === is.place && was.flight === is.flight;
}

function balanceChanges(before: LedgerState, after: LedgerState): PlaceBalance[] {
  const places = new Set([...before.balances.keys(), ...after.balances.keys()]);
  return [...places].sort().flatMap((place) => {
    const was = before.balances.get(place);
    const is = after.balances.get(place);
    if (was === is) return [];
    return [
      {
        place,
        sealedDrums: (is?.sealedDrums ?? 0) - (was?.sealedDrums ?? 0),
        partUsedDrums: (is?.partUsedDrums ?? 0) - (was?.partUsedDrums ?? 0),
        emptyDrums: (is?.emptyDrums ?? 0) - (was?.emptyDrums ?? 0),
        bookMillilitres: ((is?.bookMillilitres ?? 0) - (was?.bookMillilitres ?? 0)) as Millilitres,
      },
    ].filter(
      (change) => change.sealedDrums || change.partUsedDrums || change.emptyDrums || change.bookMillilitres,
    );
  });
}
