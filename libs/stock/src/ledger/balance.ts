import type { DrumState, PlaceBalance } from './ledger-state.js';
import type { Millilitres } from './millilitres.js';

/** The balances with some drums changed: each leaves where it was and stands where it is. Places left bare drop out. */
export function rebalance(
  balances: ReadonlyMap<string, PlaceBalance>,
  before: readonly DrumState[],
  after: readonly DrumState[],
): ReadonlyMap<string, PlaceBalance> {
  const next = new Map(balances);
  for (const drum of before) post(next, drum, -1);
  for (const drum of after) post(next, drum, 1);
  return next;
}

function post(balances: Map<string, PlaceBalance>, drum: DrumState, sign: 1 | -1): void {
  if (drum.where.kind !== 'at') return;
  const { place } = drum.where;
  const now = balances.get(place) ?? bare(place);
  const sealed = drum.content === 'filled sealed';
  const partUsed = drum.content === 'part used';
  const next: PlaceBalance = {
    place,
    sealedDrums: now.sealedDrums + (sealed ? sign : 0),
    partUsedDrums: now.partUsedDrums + (partUsed ? sign : 0),
    emptyDrums: now.emptyDrums + (sealed || partUsed || isUnheardOf(drum) ? 0 : sign),
    bookMillilitres: (now.bookMillilitres + sign * drum.millilitres) as Millilitres,
  };
  if (next.sealedDrums || next.partUsedDrums || next.emptyDrums) balances.set(place, next);
  else balances.delete(place);
}

/** It was seen, and nobody has ever said what is in it: not an empty drum, and to be looked at. */
export const isUnheardOf = ({
  content,
  batch,
  openedAt,
}: Pick<DrumState, 'content' | 'batch' | 'openedAt'>): boolean =>
  content === 'clean empty' && batch === null && openedAt === null;

const bare = (place: string): PlaceBalance => ({
  place,
  sealedDrums: 0,
  partUsedDrums: 0,
  emptyDrums: 0,
  bookMillilitres: 0 as Millilitres,
});
