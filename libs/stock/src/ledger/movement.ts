import type { Celsius, IsoDate, IsoInstant, Kilograms } from '@drumline/units';
import type { DrumContent } from '../drum.js';
import type { Millilitres } from './millilitres.js';

/** By which means an event came to be written down. */
export type Means = 'screen' | 'phone' | 'radio' | 'paper';

/** What a report says of the drum itself. Anything but sound holds the drum. */
export type DrumCondition = 'sound' | 'seal broken' | 'damaged' | 'leaking';

/** Who wrote an event, when it happened and when it became known. */
export interface Written {
  /** Made by the client, a UUID: the same id is the same event. */
  readonly id: string;
  readonly happenedAt: IsoInstant;
  readonly writtenAt: IsoInstant;
  /** By the server's clock. */
  readonly receivedAt: IsoInstant;
  readonly means: Means;
  /** The person who reports. */
  readonly by: string;
  /** Others who saw it, as the report names them. */
  readonly witnesses: readonly string[];
  readonly note?: string;
}

/** A drum by its number, or by the provisional number of one that cannot be read. */
interface OfDrum extends Written {
  readonly drum: string;
}

interface AtPlace extends OfDrum {
  readonly place: string;
}

/** On one leg of a flight, numbered from 1. Several reports of one drum, kind and leg are one movement. */
interface OnLeg extends AtPlace {
  readonly flight: string;
  readonly leg: number;
  readonly condition: DrumCondition;
  /** What the reporter found in it; null: did not look. The book changes by fills and draws only. */
  readonly foundMillilitres: Millilitres | null;
}

/** A drum comes into the operator's books: from a supplier, or at the opening of the ledger. */
export interface Received extends AtPlace {
  readonly kind: 'received';
  readonly batch: string;
  readonly content: DrumContent;
  readonly millilitres: Millilitres;
  readonly openedAt?: IsoInstant;
  readonly tareKg: Kilograms;
  readonly grossKg: Kilograms;
}

export interface Filled extends AtPlace {
  readonly kind: 'filled';
  readonly batch: string;
  readonly millilitres: Millilitres;
  readonly tareKg: Kilograms;
  readonly grossKg: Kilograms;
  /** Of the fuel; absent: nobody has said it. */
  readonly temperatureC?: Celsius;
}

export interface Loaded extends OnLeg {
  readonly kind: 'loaded';
  /** Out to a cache, or home: a held drum may go home, not out. */
  readonly bound: 'out' | 'home';
}

/** Set down, at a place of the plan or any other. */
export interface LeftAt extends OnLeg {
  readonly kind: 'left at';
}

export interface BroughtHome extends OnLeg {
  readonly kind: 'brought home';
}

export interface Opened extends AtPlace {
  readonly kind: 'opened';
}

/** Fuel out of a drum into an aircraft. The first draw from a sealed drum opens it. */
export interface Drawn extends AtPlace {
  readonly kind: 'drawn';
  readonly millilitres: Millilitres;
  /** Helicopter or aeroplane that took it. */
  readonly into: string;
  readonly programme: string;
  /** What the drawer says is left in the drum; null: did not look. */
  readonly leftMillilitres: Millilitres | null;
  /** Why the medevac reserve was drawn; absent: a routine draw. */
  readonly medevac?: string;
}

/** One drum measured by stick. The book stays; a dip of a whole cache is a count. */
export interface Dipped extends AtPlace {
  readonly kind: 'dipped';
  readonly millilitres: Millilitres;
}

/** Someone looked at a whole place. */
export interface Counted extends Written {
  readonly kind: 'counted';
  readonly place: string;
  readonly method: 'dip' | 'drums seen';
  readonly seenFrom: 'ground' | 'air';
  readonly millilitres: Millilitres;
  readonly sealedDrums: number;
  readonly openDrums: number;
  readonly emptyDrums: number;
}

/** One drum, or a whole batch with every drum of it that is known now or later. */
export type HoldOf = { readonly drum: string } | { readonly batch: string };

export interface Held extends Written {
  readonly kind: 'held';
  readonly of: HoldOf;
  readonly reason: string;
}

export interface Released extends Written {
  readonly kind: 'released';
  readonly of: HoldOf;
  readonly reason: string;
  /** The second person. */
  readonly second: string;
}

/** Rejected for good: marked with a large X. */
export interface Condemned extends OfDrum {
  readonly kind: 'condemned';
  readonly reason: string;
}

export interface Emptied extends AtPlace {
  readonly kind: 'emptied';
  readonly leaves: 'clean empty' | 'empty with residue' | 'drained';
}

/** Carried under a helicopter; written when it is set down. */
export interface Slung extends OfDrum {
  readonly kind: 'slung';
  readonly helicopter: string;
  readonly from: string;
  readonly to: string;
}

export interface Weighed extends AtPlace {
  readonly kind: 'weighed';
  readonly grossKg: Kilograms;
}

export interface RetestPassed extends Written {
  readonly kind: 'retest passed';
  readonly of: HoldOf;
  readonly certificate: string;
  readonly retestDue: IsoDate;
}

/** Fuel pumped from one drum into another. */
export interface Transferred extends AtPlace {
  readonly kind: 'transferred';
  readonly into: string;
  /** Batch of the fuel pumped. */
  readonly batch: string;
  readonly millilitres: Millilitres;
}

export interface Spilled extends AtPlace {
  readonly kind: 'spilled';
  readonly millilitres: Millilitres;
  readonly cause: string;
}

/** Not where it should be, and nobody knows where it is. */
export interface Lost extends AtPlace {
  readonly kind: 'lost';
}

export interface Found extends AtPlace {
  readonly kind: 'found';
}

/** The number of a drum that could not be read is now known. */
export interface Joined extends Written {
  readonly kind: 'joined';
  readonly provisional: string;
  readonly drum: string;
}

/** Reverses an earlier movement: the figures are as if it had not happened, and both still show. */
export interface Corrected extends Written {
  readonly kind: 'corrected';
  readonly corrects: string;
  readonly reason: string;
}

/** An event of the stock ledger: appended, never changed. */
export type Movement =
  | Received
  | Filled
  | Loaded
  | LeftAt
  | BroughtHome
  | Opened
  | Drawn
  | Dipped
  | Counted
  | Held
  | Released
  | Condemned
  | Emptied
  | Slung
  | Weighed
  | RetestPassed
  | Transferred
  | Spilled
  | Lost
  | Found
  | Joined
  | Corrected;

export type MovementKind = Movement['kind'];
