import {
  type BatchState,
  type DrumState,
  type DrumStep,
  type HistoryEntry,
  type LedgerState,
  ledgerChange,
  type Movement,
  type PlaceBalance,
  type Raised,
} from '@drumline/stock';
import type { IsoInstant } from '@drumline/units';

export interface DrumRow {
  readonly number: string;
  readonly place: string | null;
  /** Without its steps and what it raised; of its history the first entry only. */
  readonly data: DrumState;
}

export interface StepRow {
  readonly drum: string;
  readonly step: number;
  readonly movement: string;
  readonly from_at: IsoInstant;
  readonly until_at: IsoInstant | null;
  readonly place: string | null;
  readonly content: string;
  readonly millilitres: number;
}

export interface CountRow {
  readonly id: string;
  readonly place: string;
  readonly happened_at: IsoInstant;
  readonly written_at: IsoInstant;
  readonly stands: boolean;
  readonly data: Movement;
}

export interface RaisedRow extends Pick<Raised, 'id' | 'kind' | 'drum' | 'place' | 'flight'> {
  readonly data: Raised;
  /** When the last of its movements came in. */
  readonly raised_at: IsoInstant;
}

/** What the tables beside the ledger say otherwise once some movements are added. */
export interface StockRows {
  readonly drums: readonly DrumRow[];
  readonly drumsGone: readonly string[];
  readonly steps: readonly StepRow[];
  /** Drums whose steps end earlier than before: `length` of them are left. */
  readonly stepsGone: readonly { readonly drum: string; readonly length: number }[];
  readonly batches: readonly BatchState[];
  readonly counts: readonly CountRow[];
  /** To be added; every place where anything is other than before is among them. */
  readonly balances: readonly PlaceBalance[];
  readonly raised: readonly RaisedRow[];
  readonly raisedGone: readonly string[];
}

/** The difference between two ledgers as rows. With an empty `before` these are all rows that there are. */
export const stockRows = (before: LedgerState, after: LedgerState): StockRows => {
  const change = ledgerChange(before, after);
  const numbers = new Set([...change.drums.map(({ number }) => number), ...change.drumsGone]);
  const was = [...numbers].flatMap((number) => before.drums.get(number) ?? []);
  const oldSteps = was.flatMap(stepRows);
  const newSteps = change.drums.flatMap(stepRows);
  const steps = without(newSteps, oldSteps);
  const counts = without(countRows(after), countRows(before));
  const touched = [
    ...[...was, ...change.drums].map(placeOf),
    ...[...steps, ...without(oldSteps, newSteps), ...counts].map(({ place }) => place),
  ];
  return {
    drums: change.drums.map(drumRow),
    drumsGone: change.drumsGone,
    steps,
    stepsGone: was.flatMap(({ number, steps: { length } }) => {
      const left = after.drums.get(number)?.steps.length ?? 0;
      return left < length ? [{ drum: number, length: left }] : [];
    }),
    batches: change.batches.map((batch) => ({ ...batch, history: [], raised: [] })),
    counts,
    balances: withTouched(change.balances, touched),
    raised: change.raised.map((raised) => raisedRow(raised, after)),
    raisedGone: change.raisedGone,
  };
};

const placeOf = ({ where }: DrumState | DrumStep): string | null =>
  where.kind === 'at' ? where.place : null;

const drumRow = (drum: DrumState): DrumRow => ({
  number: drum.number,
  place: placeOf(drum),
  data: { ...drum, history: drum.history.slice(0, 1), steps: [], raised: [] },
});

const stepRows = ({ number, steps }: DrumState): StepRow[] =>
  steps.map((step, index) => ({
    drum: number,
    step: index,
    movement: step.movement,
    from_at: step.from,
    until_at: steps[index + 1]?.from ?? null,
    place: placeOf(step),
    content: step.content,
    millilitres: step.millilitres,
  }));

const countRows = ({ counts }: LedgerState): CountRow[] => [...counts.values()].flat().map(countRow);

const countRow = ({ movement, reversedBy }: HistoryEntry): CountRow => ({
  id: movement.id,
  place: (movement as Extract<Movement, { kind: 'counted' }>).place,
  happened_at: movement.happenedAt,
  written_at: movement.writtenAt,
  stands: reversedBy.length === 0,
  data: movement,
});

const raisedRow = (raised: Raised, { movements }: LedgerState): RaisedRow => {
  const { id, kind, drum, place, flight } = raised;
  const received = raised.movements.map((each) => new Date(movements.get(each)!.receivedAt).toISOString());
  return { id, kind, drum, place, flight, data: raised, raised_at: received.sort().at(-1)! };
};

const without = <Row extends object>(rows: readonly Row[], others: readonly Row[]): Row[] => {
  const known = new Set(others.map((row) => JSON.stringify(row)));
  return rows.filter((row) => !known.has(JSON.stringify(row)));
};

const withTouched = (
  balances: readonly PlaceBalance[],
  touched: readonly (string | null)[],
): PlaceBalance[] => {
  const changed = new Map(balances.map((balance) => [balance.place, balance]));
  const places = new Set([...changed.keys(), ...touched.filter((place) => place !== null)]);
  return [...places].sort().map((place) => changed.get(place) ?? nothing(place));
};

const nothing = (place: string): PlaceBalance => ({
  place,
  sealedDrums: 0,
  partUsedDrums: 0,
  emptyDrums: 0,
  bookMillilitres: 0 as PlaceBalance['bookMillilitres'],
});
