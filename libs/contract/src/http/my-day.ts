import type { BalanceMoment, LoadSheet, LoadSheetRequest } from '@drumline/loading';
import type { Place, SurfaceReport } from '@drumline/network';
import type { FlightState } from '@drumline/planning';
import type { ClockTime, IsoDate, IsoInstant, Pounds } from '@drumline/units';

/**
 * Answer of GET /api/my-day: everything that a crew's phone needs while it has no line. The sheets have their totals in
 * them; the phone hides them until two others are typed.
 */
export interface MyDay {
  /** A phone that was away through a change of the program reads this first. */
  readonly format: 'my-day/1';
  /** By the territory's clock. */
  readonly at: IsoInstant;
  /** By the server's own clock: a demo's territory has another day. */
  readonly serverAt: IsoInstant;
  readonly timeZone: string;
  readonly today: IsoDate;
  readonly crew: string | null;
  readonly places: readonly PhonePlace[];
  readonly surfaceReports: readonly SurfaceReport[];
  /** Every drum of the book, where it is, and why it is held. */
  readonly drums: readonly PhoneDrum[];
  /** Reports of this person that somebody else has made too: they count once. */
  readonly sameReports: readonly SameReport[];
  /** With this crew, by day and time: given, under way, or not reported yet. */
  readonly flights: readonly PhoneFlight[];
}

/** What another person said of the same drum, on the same leg. */
export interface SameReport {
  /** Id of this person's movement. */
  readonly movement: string;
  readonly by: string;
  readonly writtenAt: IsoInstant;
}

export interface PhonePlace extends Omit<Place, 'latitudeDeg' | 'longitudeDeg'> {
  readonly drums: number;
  /** Null: no cache. */
  readonly capacityDrums: number | null;
}

export interface PhoneDrum {
  readonly number: string;
  readonly place: string;
  readonly batch: string;
  readonly kg: number;
  readonly tareKg: number;
  readonly litres: number;
  /** Null: not held. */
  readonly held: string | null;
}

export interface PhoneFlight {
  readonly id: string;
  readonly state: FlightState;
  readonly version: number;
  readonly needsDecision: string | null;
  readonly date: IsoDate;
  readonly departs: ClockTime;
  readonly aircraft: string;
  readonly route: readonly string[];
  readonly stops: readonly {
    readonly place: string;
    readonly drums: readonly string[];
    /** Null: closed when soft. */
    readonly drumsIfSoft: number | null;
    /** Take-off limit on arrival with every drum at its planning weight: over it, unload or stay. */
    readonly planned: { readonly arrivalLb: Pounds; readonly overLb: Pounds } | null;
  }[];
  readonly lastAct: string;
  readonly changedAt: IsoInstant;
  readonly changedByName: string;
  readonly reason: string | null;
  /** Null: `why` says why there is none. */
  readonly sheet: LoadSheet | null;
  /** What the sheet is made from: with another drum aboard the phone makes it anew. Null: there is no sheet. */
  readonly request: LoadSheetRequest | null;
  readonly why: string | null;
  /** Where the weight lies on each leg. */
  readonly balance: readonly BalanceMoment[];
}
