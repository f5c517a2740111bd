import type { DrumContent, Where } from '@drumline/stock';
import type { ClockTime, IsoDate, Kilograms, Litres } from '@drumline/units';

/** A flight for which drums are to be made ready. */
interface ReadiedFlight {
  readonly flight: string;
  readonly version: number;
  readonly state: 'approved' | 'given';
  readonly needsDecision: string | null;
  readonly date: IsoDate;
  readonly departs: ClockTime;
  readonly aircraft: string;
  readonly pilot: string | null;
  readonly from: string;
}

/** Answer of GET /api/pick-lists, a flight each, by date: the drums set aside for it, in the order of its stops. */
export interface PickListAnswer extends ReadiedFlight {
  readonly stops: readonly {
    readonly place: string;
    /** When the plan burns the drums: they are to be fit until then. */
    readonly plannedUse: IsoDate;
    readonly drums: readonly PickedDrum[];
    /** Drums that nobody has filled yet. */
    readonly toFill: number;
  }[];
}

export interface PickedDrum {
  readonly number: string;
  readonly where: Where;
  readonly batch: string | null;
  readonly content: DrumContent;
  readonly litres: Litres;
  readonly grossKg: Kilograms | null;
  readonly retestDue: IsoDate | null;
  /** Why it is not to be taken after all, each a sentence; empty: take it. */
  readonly against: readonly string[];
}

/** Answer of GET /api/fill-lists, a base each: what is to be filled there, and from what. */
export interface FillListAnswer {
  readonly place: string;
  readonly drums: number;
  readonly litres: Litres;
  readonly bulkLitres: Litres;
  readonly emptiesFitForUse: number;
  readonly fillDrumsPerDay: number;
  /** Batches filled there that are fit throughout, the newest first. */
  readonly batches: readonly {
    readonly id: string;
    readonly filledOn: IsoDate;
    readonly retestDue: IsoDate;
  }[];
  readonly lines: readonly (ReadiedFlight & {
    readonly to: string;
    readonly drums: number;
    /** A drum filled on a day flies from the next. */
    readonly fillBy: IsoDate;
    readonly plannedUse: IsoDate;
  })[];
  /** What falls short, each a sentence. */
  readonly short: readonly string[];
}

/** Answer of GET /api/retest-coming: a drum whose retest date comes within the days looked ahead, or is over. */
export interface RetestComingAnswer {
  readonly number: string;
  readonly place: string;
  readonly batch: string;
  readonly content: DrumContent;
  readonly litres: Litres;
  readonly retestDue: IsoDate;
  readonly isPast: boolean;
  /** Litres that the plan would not have burned by then. */
  readonly unusedLitres: Litres;
  /** The first draw that would find it past retest; null: none in the days ahead. */
  readonly drawTooLate: { readonly date: IsoDate; readonly for: string } | null;
  /** The flight that it is set aside for. */
  readonly flight: string | null;
}
