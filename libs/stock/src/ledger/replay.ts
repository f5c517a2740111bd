import type { IsoInstant } from '@drumline/units';
import { rebalance } from './balance.js';
import type { BatchState, DrumGroup, DrumState, HistoryEntry, LedgerState } from './ledger-state.js';
import { mergeReports } from './merge-reports.js';
import type { Movement } from './movement.js';
import { compareInstants } from './order.js';
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
  return replay([...movements].filter(({ receivedAt }) => compareInstants(receivedAt, at) <= 0));
}

/**
 * The ledger as it was at a moment, with everything known today: from what had happened by then. Corrections and
 * joins say what was true all along, so they count whenever they were written.
 */
export function asItWasAt(movements: Iterable<Movement>, at: IsoInstant): LedgerState {
  return replay(
    [...movements].filter(
      ({ kind, happenedAt }) =>
        kind === 'corrected' || kind === 'joined' || compareInstants(happenedAt, at) <= 0,
    ),
  );
}

interface Draft {
  readonly movements: Map<string, Movement>;
  readonly corrections: Map<string, readonly string[]>;
}

/** What is to be read again, with the movements that are new to it; none for a correction. */
interface Touched {
  readonly numbers: Map<string, Movement[]>;
  readonly batches: Map<string, Movement[]>;
  readonly places: Map<string, Movement[]>;
}

/** Registers the movements, then reads again what they are about: batches first, as drums depend on their holds. */
function append(state: LedgerState, movements: Iterable<Movement>): LedgerState {
  const draft: Draft = {
    movements: new Map(state.movements),
    corrections: new Map(state.corrections),
  };
  const touched: Touched = { numbers: new Map(), batches: new Map(), places: new Map() };
  for (const movement of movements) register(draft, touched, movement);
  if (draft.movements.size === state.movements.size) return state;
  const groups = groupsAfter(state.groups, touched.numbers);
  const batches = batchesAfter(state, draft, touched);
  const changed = drumsAfter(state, { ...draft, groups }, touched, batches);
  const drums = new Map(state.drums);
  for (const { number } of changed.before) drums.delete(number);
  for (const drum of changed.after) drums.set(drum.number, drum);
  return {
    ...draft,
    groups,
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
  if (movement.kind === 'corrected') {
    const others = draft.corrections.get(movement.corrects) ?? [];
    draft.corrections.set(movement.corrects, [...others, movement.id].sort());
  }
  const added = movement.kind === 'corrected' ? [] : [movement];
  for (const number of subjects.drums) addTo(touched.numbers, number, added);
  if (subjects.batch !== null) addTo(touched.batches, subjects.batch, added);
  if (subjects.place !== null) addTo(touched.places, subjects.place, added);
}

function addTo(map: Map<string, Movement[]>, key: string, movements: readonly Movement[]): void {
  const there = map.get(key);
  if (there) there.push(...movements);
  else map.set(key, [...movements]);
}

/** A join makes one group of two numbers, for good; any other movement is entered with each drum it names. */
function groupsAfter(
  earlier: LedgerState['groups'],
  numbers: Touched['numbers'],
): ReadonlyMap<string, DrumGroup> {
  const groups = new Map(earlier);
  const put = (group: DrumGroup) => {
    for (const number of group.numbers) groups.set(number, group);
  };
  const groupOf = (number: string) => groups.get(number) ?? { numbers: [number], movements: [] };
  for (const movement of [...numbers.values()].flat())
    if (movement.kind === 'joined') put(joined(groupOf(movement.provisional), groupOf(movement.drum)));
  for (const [number, added] of numbers) {
    const group = groupOf(number);
    const ids = new Set([...group.movements, ...added.map(({ id }) => id)]);
    put({ ...group, movements: [...ids].sort() });
  }
  return groups;
}

function joined(a: DrumGroup, b: DrumGroup): DrumGroup {
  return {
    numbers: [...new Set([...a.numbers, ...b.numbers])].sort(),
    movements: [...new Set([...a.movements, ...b.movements])],
  };
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
  draft: Draft & Pick<LedgerState, 'groups'>,
  { numbers, batches }: Touched,
  batchStates: ReadonlyMap<string, BatchState>,
): ChangedDrums {
  const ofBatches =
    batches.size === 0 ? [] : [...state.drums.values()].filter((drum) => concerns(drum, batches));
  const groups = new Set(
    [...numbers.keys(), ...ofBatches.map(({ number }) => number)].map((number) => draft.groups.get(number)!),
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
