import type { CountTolerance, DensityTolerance, DipTable, StandingDrum } from '@drumline/stock';
import type { IsoDate, IsoInstant, KilogramsPerLitre } from '@drumline/units';
import type { Parted } from './tail.js';

export interface SheetFlight {
  readonly id: string;
  readonly state: string;
  readonly version: number;
  readonly date: IsoDate;
  readonly departs: string;
  readonly pilot: string | null;
  readonly fromPlace: string;
  readonly toPlace: string;
  readonly stops: readonly { readonly place: string }[];
  /** So many. */
  readonly legs: number;
  readonly loads: readonly { readonly place: string; readonly drum: string | null }[];
}

/** `held`: nobody may use it, or nobody knows until when. */
export interface SheetDrum extends StandingDrum {
  /** Null: aboard, or nobody knows. */
  readonly place: string | null;
}

/** What a line is read by: what the sheet says of all its lines, and what base knows. */
export interface Sheet {
  readonly day: IsoDate;
  readonly means: 'paper' | 'radio';
  /** Who wrote or said it; empty: the crew of the flight, or the line says so. */
  readonly by: string;
  readonly now: IsoInstant;
  readonly timeZone: string;
  readonly places: readonly { readonly code: string; readonly name: string }[];
  readonly flights: readonly SheetFlight[];
  /** Around the day, of which no crew reports: offered, declined, called off, closed. */
  readonly notGiven: readonly Pick<SheetFlight, 'id' | 'state'>[];
  readonly drums: readonly SheetDrum[];
  readonly programmes: readonly string[];
  readonly fillLitres: number;
  readonly countTolerance: CountTolerance;
  readonly batches: readonly { readonly id: string; readonly densityAt15KgPerLitre: KilogramsPerLitre }[];
  /** The operator's; null: it has said none, and only what is no jet fuel is asked about. */
  readonly densityTolerance: DensityTolerance | null;
  /** Whoever types may enter what was filled. */
  readonly mayFill: boolean;
  readonly bookDensityKgPerLitre: KilogramsPerLitre;
  /** The usual one first. */
  readonly dipTables: readonly DipTable[];
}

/** A request of an entry, without the id that is made when the line is kept. */
export interface Wanted {
  readonly to: 'movements' | 'flight-reports' | 'surface-reports';
  readonly body: Readonly<Record<string, unknown>>;
}

export const movement = (body: Wanted['body']): Wanted => ({ to: 'movements', body });

/** Who, when, how: the same of everything on one line. */
export interface Told {
  readonly happenedAt: IsoInstant;
  readonly writtenAt: IsoInstant;
  readonly means: 'paper' | 'radio';
  readonly by: string;
}

/** What a line says, before it is kept. */
export interface LineEntry extends Told {
  readonly kind: 'entry';
  readonly words: string;
  readonly flight: string | null;
  readonly wanted: readonly Wanted[];
  readonly doubts: readonly string[];
}

/** Reads one kind of line. */
export type Reader = (parted: Parted, sheet: Sheet) => LineEntry;

export type ReadLine = LineEntry | { readonly kind: 'fault'; readonly words: string };

/** Stops the reading of a line: what is wrong, and what to write. */
export class LineFault extends Error {}

export const missing = (words: string): never => {
  throw new LineFault(words);
};
