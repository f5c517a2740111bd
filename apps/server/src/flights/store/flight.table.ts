import type { Closing } from '@drumline/contract';
import type { FlightState, PlannedFlight } from '@drumline/planning';
import type { ClockTime, IsoDate, Kilograms } from '@drumline/units';
import { EntitySchema } from 'typeorm';

/** A flight that came out of an accepted plan. What it was before stands in its history. */
export interface Flight {
  /** "F012"; a booked flight that carries drums has the number of its booking. */
  readonly id: string;
  readonly kind: PlannedFlight['kind'];
  readonly state: FlightState;
  /** As printed on the sheet: raised where what is flown changes. */
  readonly version: number;
  /** Raised with every change: the ETag. */
  readonly revision: number;
  readonly needsDecision: string | null;
  /** Offered, and not to be moved by a re-plan. */
  readonly heldInPlace: boolean;
  /** Null: a person put drums on a booked flight. */
  readonly planId: string | null;
  readonly date: IsoDate;
  readonly departs: ClockTime;
  readonly aircraft: string;
  readonly pilot: string | null;
  readonly fromPlace: string;
  readonly toPlace: string;
  readonly stops: readonly Stop[];
  /** As the planner read it when it last changed: legs, limits, reason, cost. */
  readonly planned: PlannedFlight;
  /** As reported: off, and down again. */
  readonly offAt: Date | null;
  readonly landedAt: Date | null;
  /** What it took in the end; null: not closed. */
  readonly closing: Closing | null;
  /** Set by a hold, until the release; null: none of its drums is held, or somebody has decided since. */
  readonly holdMark: HoldMark | null;
  /** What a rule has marked it for, as `needsDecision` says it; null: no rule has, or somebody has decided since. */
  readonly ruleMark: string | null;
  /** What was done last, by whom and when, and why. */
  readonly lastAct: string;
  readonly reason: string | null;
  readonly changedAt: Date;
  readonly changedBy: string | null;
  readonly changedByName: string;
}

export interface HoldMark {
  readonly why: string;
  /** What else the flight needed a decision for. */
  readonly besides: string | null;
}

/** Of a flight that nobody has reported on. */
export const unreported = {
  offAt: null,
  landedAt: null,
  closing: null,
  holdMark: null,
  ruleMark: null,
} as const;

export interface Stop {
  readonly place: string;
  readonly drums: number;
}

/** One drum of a flight; `drum` null: still to be filled. */
export interface Load {
  readonly flightId: string;
  readonly load: number;
  /** Index into the flight's stops. */
  readonly stop: number;
  readonly place: string;
  readonly drum: string | null;
  /** The flight has left: where the drum is, the ledger knows. */
  readonly settled: boolean;
  /** As somebody has set it; null: it is found anew with every look. */
  readonly position: string | null;
  /** What its crew said it weighs, kg; null: nothing. It counts where the drum is in no book. */
  readonly toldKg: Kilograms | null;
}

interface Leg {
  readonly flightId: string;
  readonly leg: number;
  readonly fromPlace: string;
  readonly toPlace: string;
  readonly distanceNm: number;
  readonly blockHours: number;
  readonly drumsAboard: number;
  readonly drumsPossible: number;
}

/** The flight and its loads after one act. */
export interface FlightPast {
  readonly flightId: string;
  readonly revision: number;
  readonly act: string;
  readonly state: FlightState;
  readonly data: unknown;
  readonly reason: string | null;
  readonly at: Date;
  readonly accountId: string | null;
  readonly person: string;
}

export const flightTable = new EntitySchema<Flight>({
  name: 'flight',
  tableName: 'flights',
  columns: {
    id: { type: 'text', primary: true },
    kind: { type: 'text' },
    state: { type: 'text' },
    version: { type: 'integer' },
    revision: { type: 'integer' },
    needsDecision: { type: 'text', nullable: true },
    heldInPlace: { type: 'boolean' },
    planId: { type: 'uuid', nullable: true },
    date: { type: 'date' },
    departs: { type: 'text' },
    aircraft: { type: 'text' },
    pilot: { type: 'text', nullable: true },
    fromPlace: { type: 'text' },
    toPlace: { type: 'text' },
    stops: { type: 'jsonb' },
    planned: { type: 'jsonb' },
    offAt: { type: 'timestamptz', nullable: true },
    landedAt: { type: 'timestamptz', nullable: true },
    closing: { type: 'jsonb', nullable: true },
    holdMark: { type: 'jsonb', nullable: true },
    ruleMark: { type: 'text', nullable: true },
    lastAct: { type: 'text' },
    reason: { type: 'text', nullable: true },
    changedAt: { type: 'timestamptz' },
    changedBy: { type: 'uuid', nullable: true },
    changedByName: { type: 'text' },
  },
});

export const loadTable = new EntitySchema<Load>({
  name: 'flight_load',
  tableName: 'flight_loads',
  columns: {
    flightId: { type: 'text', primary: true },
    load: { type: 'integer', primary: true },
    stop: { type: 'integer' },
    place: { type: 'text' },
    drum: { type: 'text', nullable: true },
    settled: { type: 'boolean', default: false },
    position: { type: 'text', nullable: true },
    toldKg: { type: 'double precision', nullable: true },
  },
});

export const legTable = new EntitySchema<Leg>({
  name: 'flight_leg',
  tableName: 'flight_legs',
  columns: {
    flightId: { type: 'text', primary: true },
    leg: { type: 'integer', primary: true },
    fromPlace: { type: 'text' },
    toPlace: { type: 'text' },
    distanceNm: { type: 'double precision' },
    blockHours: { type: 'double precision' },
    drumsAboard: { type: 'integer' },
    drumsPossible: { type: 'integer' },
  },
});

export const flightHistoryTable = new EntitySchema<FlightPast>({
  name: 'flight_past',
  tableName: 'flight_history',
  columns: {
    flightId: { type: 'text', primary: true },
    revision: { type: 'integer', primary: true },
    act: { type: 'text' },
    state: { type: 'text' },
    data: { type: 'jsonb' },
    reason: { type: 'text', nullable: true },
    at: { type: 'timestamptz' },
    accountId: { type: 'uuid', nullable: true },
    person: { type: 'text' },
  },
});
