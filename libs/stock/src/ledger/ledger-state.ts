import type { IsoDate, IsoInstant, Kilograms } from '@drumline/units';
import type { DrumContent, Hold } from '../drum.js';
import type { Millilitres } from './millilitres.js';
import type { Movement } from './movement.js';
import type { Raised } from './raised.js';

/** Where a drum is. Not known is a state, and somebody has to look. */
export type Where =
  | { readonly kind: 'at'; readonly place: string }
  | { readonly kind: 'aboard'; readonly flight: string; readonly leg: number; readonly from: string }
  | { readonly kind: 'unknown'; readonly lastSeenAt: string | null };

/** A drum as the ledger has it: where it is, what is in it and whether it may be used are three facts. */
export interface DrumState {
  /** Its number; the provisional one as long as no other is known. */
  readonly number: string;
  /** Provisional numbers that were joined to it. */
  readonly alsoKnownAs: readonly string[];
  readonly where: Where;
  readonly content: DrumContent;
  readonly millilitres: Millilitres;
  /** Null: nobody has said yet. */
  readonly batch: string | null;
  readonly openedAt: IsoInstant | null;
  readonly tareKg: Kilograms | null;
  readonly grossKg: Kilograms | null;
  readonly fitness: Fitness;
  readonly lastDip: {
    readonly at: IsoInstant;
    readonly by: string;
    readonly millilitres: Millilitres;
    /** The book of the drum at that moment. */
    readonly bookMillilitres: Millilitres;
  } | null;
  /** Every movement that names it, in the order in which they happened, reversed ones included. */
  readonly history: readonly HistoryEntry[];
  /** Where it was and what was in it, from each moment on. */
  readonly steps: readonly DrumStep[];
  /** What its movements leave to be looked at. */
  readonly raised: readonly Raised[];
}

/** The drum's own: a hold of its batch stands in the batch. */
export interface Fitness {
  readonly held: Hold | null;
  readonly condemned: Hold | null;
  readonly retest: { readonly certificate: string; readonly retestDue: IsoDate } | null;
}

export interface HistoryEntry {
  readonly movement: Movement;
  /** Ids of the standing corrections of it; empty: it stands. */
  readonly reversedBy: readonly string[];
  /** The movement that it is another report of; null: it is one of its own. */
  readonly sameAs: string | null;
  /** Everyone who reported or saw it, over all its reports. */
  readonly witnesses: readonly string[];
}

export interface DrumStep {
  readonly movement: string;
  readonly from: IsoInstant;
  readonly where: Where;
  readonly content: DrumContent;
  readonly millilitres: Millilitres;
}

/** Holds and retests of a whole batch. */
export interface BatchState {
  readonly batch: string;
  /** In the order in which they began; `until` null: it stands. */
  readonly holds: readonly {
    readonly hold: Hold;
    readonly from: IsoInstant;
    readonly until: IsoInstant | null;
  }[];
  readonly retest: { readonly certificate: string; readonly retestDue: IsoDate } | null;
  readonly history: readonly HistoryEntry[];
  readonly raised: readonly Raised[];
}

/** What the book says stands at a place. */
export interface PlaceBalance {
  readonly place: string;
  readonly sealedDrums: number;
  readonly partUsedDrums: number;
  readonly emptyDrums: number;
  readonly bookMillilitres: Millilitres;
}

/** Numbers that joins have ever linked, with the ids of every movement that names one of them. */
export interface DrumGroup {
  readonly numbers: readonly string[];
  readonly movements: readonly string[];
}

/** Everything that follows from a set of movements, whatever the order of their arrival. */
export interface LedgerState {
  readonly movements: ReadonlyMap<string, Movement>;
  /** Ids of the corrections of a movement, by its id. */
  readonly corrections: ReadonlyMap<string, readonly string[]>;
  readonly groups: ReadonlyMap<string, DrumGroup>;
  readonly drums: ReadonlyMap<string, DrumState>;
  readonly batches: ReadonlyMap<string, BatchState>;
  /** Counts of a place in the order in which they happened, reversed ones included. */
  readonly counts: ReadonlyMap<string, readonly HistoryEntry[]>;
  /** Places where something stands. */
  readonly balances: ReadonlyMap<string, PlaceBalance>;
}
