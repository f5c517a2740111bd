import { kilograms, localDate } from '@drumline/units';
import type { Batch, Count, Drum, Hold } from '../drum.js';
import { bookOf, drumsEverAt } from './book-at.js';
import type { DrumState, LedgerState } from './ledger-state.js';
import { litresOf, type Millilitres } from './millilitres.js';
import type { Counted } from './movement.js';
import { standingHold } from './read-batch.js';
import { standingCounts } from './standing-counts.js';

/** Batch of a drum whose batch nobody has said; held, as its age is not known. */
const unknownBatch = 'unknown batch';

/** A drum that passed a retest of its own is of a batch of its own from then on. */
const batchOf = ({ batch, fitness }: DrumState): string =>
  fitness.retest ? `${batch ?? unknownBatch}/${fitness.retest.certificate}` : (batch ?? unknownBatch);

/**
 * The drums that stand at a place, by number, as the stock figures read them (`openingStock`, `projectCaches`,
 * `pickDrums`). Those aboard and lost are left out. A condemned drum is a held one. Use with `toBatches`.
 */
export function toDrums(state: Pick<LedgerState, 'drums'>, timeZone: string): readonly Drum[] {
  return [...state.drums.values()]
    .flatMap((drum) => (drum.where.kind === 'at' ? [toDrum(drum, drum.where.place, timeZone)] : []))
    .sort((a, b) => (a.number < b.number ? -1 : 1));
}

function toDrum(drum: DrumState, place: string, timeZone: string): Drum {
  const held = holdOf(drum);
  return {
    number: drum.number,
    batch: batchOf(drum),
    place,
    content: drum.content,
    litres: litresOf(drum.millilitres),
    ...(drum.openedAt === null ? {} : { openedOn: localDate(drum.openedAt, timeZone) }),
    tareKg: drum.tareKg ?? kilograms(0),
    grossKg: drum.grossKg ?? kilograms(0),
    ...(held ? { held } : {}),
  };
}

function holdOf({ batch, fitness: { held, condemned }, history }: DrumState): Hold | null {
  if (condemned) return { ...condemned, reason: `condemned: ${condemned.reason}` };
  if (held || batch !== null) return held;
  const first = history[0]!.movement;
  return { reason: 'its batch is not known', by: first.by, at: first.happenedAt };
}

/**
 * The registered batches with the holds and retests of the ledger, and a batch for each certificate that drums of
 * their own have passed, with the hold of the batch they come from. A batch that is not registered is past its retest
 * date, as its age is not known.
 */
export function toBatches(
  state: Pick<LedgerState, 'drums' | 'batches'>,
  registered: readonly Batch[],
): readonly Batch[] {
  const batches = registered.map((batch) => inLedger(state, batch));
  const byId = new Map(batches.map((batch) => [batch.id, batch]));
  const added = new Map<string, Batch>();
  for (const drum of state.drums.values()) {
    const id = batchOf(drum);
    if (byId.has(id) || added.has(id)) continue;
    const parent = byId.get(drum.batch ?? '');
    const retestDue = drum.fitness.retest?.retestDue;
    if (parent && retestDue) added.set(id, { ...parent, id, retestDue });
    else added.set(id, inLedger(state, unknown(id)));
  }
  return [...batches, ...[...added.values()].sort((a, b) => (a.id < b.id ? -1 : 1))];
}

function inLedger(state: Pick<LedgerState, 'batches'>, batch: Batch): Batch {
  const known = state.batches.get(batch.id);
  const hold = batch.held ?? standingHold(known);
  return {
    ...batch,
    ...(known?.retest ? { retestDue: known.retest.retestDue } : {}),
    ...(hold ? { held: hold } : {}),
  };
}

const unknown = (id: string): Batch => ({
  id,
  grade: 'unknown',
  filledOn: '0001-01-01',
  retestDue: '0001-01-01',
  densityAt15KgPerLitre: 0 as Batch['densityAt15KgPerLitre'],
  filledAt: [],
});

/**
 * The last count of each place as the stock figures read it, carried forward by what the book has changed since: what
 * it did not find stays missing. Counts in `wrong` (their case was closed by counting again) are left out.
 */
export function toCounts(state: LedgerState, wrong: ReadonlySet<string> = new Set()): readonly Count[] {
  const ever = drumsEverAt(state);
  return [...state.counts.keys()].sort().flatMap((place) => {
    const last = standingCounts(state, place).at(-1);
    if (!last || wrong.has(last.id)) return [];
    const bookNow = state.balances.get(place)?.bookMillilitres ?? 0;
    const bookThen = bookOf(ever.get(place) ?? [], place, last.happenedAt);
    return [carriedCount(last, bookThen, bookNow as Millilitres)];
  });
}

/** A count carried forward by what the book has changed since the moment of the count. */
export function carriedCount(
  { place, happenedAt, by, seenFrom, openDrums, millilitres }: Counted,
  bookThen: Millilitres,
  bookNow: Millilitres,
): Count {
  const carried = Math.max(0, millilitres + bookNow - bookThen) as Millilitres;
  return { place, at: happenedAt, litres: litresOf(carried), openDrums, by, seenFrom };
}
