import { type IsoInstant } from '@drumline/units';
import { rebalance } from './balance.js';
import type { BatchState, DrumGroup, DrumState, HistoryEntry, LedgerState } from './ledger-state.js';
import { mergeReports } from './merge-reports.js';
import type { Movement } from './movement.js';
import { holdAt, readBatch } from './read-batch.js';
import { readGroup } from './read-group.js';
import { standingCorrections } from './reversals.js';
import { subjectsOf } from './subjects.js';

const emptyLedger: LedgerState = {
  movements: new Map(),
  corrections: new Map(),
  groups: new Map(),
  drums: new Map(),
  batches: new Map(),
  counts: new Map(),
  balances: new Map(),
};

/** The ledger that a set of movements makes, whatever their order. */
export function replay(movements: Iterable<Movement>): LedgerState {
  return append(emptyLedger, movements);
}

/** The ledger with one more movement; the same as `replay` of all of them. A known id changes nothing. */
export function applyMovement(state: LedgerState, movement: Movement): LedgerState {
  return append(state, [movement]);
}

/** The ledger as it was known at a moment: from what had been received by then. */
export function asKnownAt(movements: Iterable<Movement>, at: IsoInstant): LedgerState {
  const moment = Date.parse(at);
  return replay([...movements].filter(({ receivedAt }) => Date.parse(receivedAt) <= moment));
}

/**
 * The ledger as it was at a moment, with everything known today: from what had happened by then. Corrections and
 * joins say what was true all along, so they count whenever they were written.
 */
export function asItWasAt(movements: Iterable<Movement>, at: IsoInstant): LedgerState {
  const moment = Date.parse(at);
  return replay(
    [...movements].filter(
      ({ kind, happenedAt }) => kind === 'corrected' || kind === 'joined' || Date.parse(happenedAt) <= moment,
    ),
  );
}

interface Draft {
  readonly movements: Map<string, Movement>;
  readonly corrections: Map<string, readonly string[]>;
  readonly groups: Map<string, DrumGroup>;
}

interface Touched {
  readonly numbers: Set<string>;
  readonly batches: Map<string, Movement[]>;
  readonly places: Map<string, Movement[]>;
}

/** Registers the movements, then reads again what they are about: batches first, as drums depend on their holds. */
function append(state: LedgerState, movements: Iterable<Movement>): LedgerState {
  const draft: Draft = {
    movements: new Map(state.movements),
    corrections: new Map(state.corrections),
    groups: new Map(state.groups),
  };
  const touched: Touched = { numbers: new Set(), batches: new Map(), places: new Map() };
  for (const movement of movements) register(draft, touched, movement);
  if (draft.movements.size === state.movements.size) return state;
  const batches = batchesAfter(state, draft, touched);
  const changed = drumsAfter(state, draft, touched, batches);
  const drums = new Map(state.drums);
  for (const { number } of changed.before) drums.delete(number);
  for (const drum of changed.after) drums.set(drum.number, drum);
  return {
    ...draft,
    drums,
    batches,
    counts: countsAfter(state, draft, touched),
    balances: rebalance(state.balances, changed.before, changed.after),
  };
}

/** A movement that came twice is known by its first receipt. */
function register(draft: Draft, touched: Touched, movement: Movement): void {
  if (draft.movements.has(movement.id)) return;
  draft.movements.set(movement.id, movement);
  const find = (id: string) => draft.movements.get(id);
  const subjects = subjectsOf(movement, find);
  for (const number of subjects.drums) touched.numbers.add(number);
  if (movement.kind === 'corrected') {
    const others = draft.corrections.get(movement.corrects) ?? [];
    draft.corrections.set(movement.corrects, [...others, movement.id].sort());
  } else if (subjects.drums.length > 0) {
    link(draft.groups, subjects.drums, movement);
  }
  const added = movement.kind === 'corrected' ? [] : [movement];
  if (subjects.batch !== null) addTo(touched.batches, subjects.batch, added);
  if (subjects.place !== null) addTo(touched.places, subjects.place, added);
}

function addTo(map: Map<string, Movement[]>, key: string, movements: readonly Movement[]): void {
  const there = map.get(key);
  if (there) there.push(...movements);
  else map.set(key, [...movements]);
}

/** A join makes one group of two numbers, for good; any other movement is entered with each drum it names. */
function link(groups: Map<string, DrumGroup>, numbers: readonly string[], movement: Movement): void {
  const sets = movement.kind === 'joined' ? [numbers] : numbers.map((number) => [number]);
  for (const set of sets) {
    const linked = set.map((number) => groups.get(number) ?? { numbers: [number], movements: [] });
    const group: DrumGroup = {
      numbers: [...new Set(linked.flatMap((each) => each.numbers))].sort(),
      movements: [...new Set([...linked.flatMap((each) => each.movements), movement.id])].sort(),
    };
    for (const number of group.numbers) groups.set(number, group);
  }
}

function batchesAfter(state: LedgerState, draft: Draft, { batches }: Touched): Map<string, BatchState> {
  const next = new Map(state.batches);
  for (const [batch, added] of batches) {
    const earlier = state.batches.get(batch)?.history ?? [];
    next.set(batch, readBatch(batch, [...movementsIn(earlier), ...added], reversedByIn(draft)));
  }
  return next;
}

function countsAfter(state: LedgerState, draft: Draft, { places }: Touched) {
  const next = new Map(state.counts);
  for (const [place, added] of places) {
    const earlier = state.counts.get(place) ?? [];
    const { history } = mergeReports(place, [...movementsIn(earlier), ...added], reversedByIn(draft));
    next.set(place, history);
  }
  return next;
}

interface ChangedDrums {
  readonly before: readonly DrumState[];
  readonly after: readonly DrumState[];
}

function drumsAfter(
  state: LedgerState,
  draft: Draft,
  { numbers, batches }: Touched,
  batchStates: ReadonlyMap<string, BatchState>,
): ChangedDrums {
  const ofBatches =
    batches.size === 0 ? [] : [...state.drums.values()].filter((drum) => concerns(drum, batches));
  const groups = new Set(
    [...numbers, ...ofBatches.map(({ number }) => number)].map((number) => draft.groups.get(number)!),
  );
  const aid = {
    movement: (id: string) => draft.movements.get(id)!,
    reversedBy: reversedByIn(draft),
    batchHold: (batch: string, at: IsoInstant) => holdAt(batchStates.get(batch), at),
  };
  return {
    before: [...groups].flatMap((group) =>
      group.numbers.map((number) => state.drums.get(number)).filter((drum) => drum !== undefined),
    ),
    after: [...groups].flatMap((group) => readGroup(group, aid)),
  };
}

/** Whether the drum has ever held fuel of one of the batches. */
function concerns({ history }: DrumState, batches: ReadonlyMap<string, unknown>): boolean {
  return history.some(({ movement }) => 'batch' in movement && batches.has(movement.batch));
}

const movementsIn = (history: readonly HistoryEntry[]): Movement[] => history.map(({ movement }) => movement);

const reversedByIn = (draft: Draft) => (id: string) => standingCorrections(draft, id);
