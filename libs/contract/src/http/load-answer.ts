import type {
  BalanceFault,
  BalanceMoment,
  IfSoft,
  LoadSheet,
  PayloadBar,
  PreparationList,
  SheetLeg,
  TotalsComparison,
} from '@drumline/loading';
import type { SurfaceReport } from '@drumline/network';
import type { PlannedFlight, WhoIsFit } from '@drumline/planning';
import type { ClockTime, Inches, IsoDate, IsoInstant, Pounds } from '@drumline/units';
import type { Fault } from '../faults/fault.js';

/** Answer of GET /api/flights/:id/sheet: one flight as it is loaded, without the totals that are typed blind. */
export interface LoadAnswer {
  readonly id: string;
  readonly kind: PlannedFlight['kind'];
  readonly state: string;
  readonly version: number;
  readonly revision: number;
  readonly needsDecision: string | null;
  readonly date: IsoDate;
  readonly departs: ClockTime;
  readonly aircraft: string;
  readonly pilot: string | null;
  readonly route: readonly string[];
  readonly lastAct: string;
  readonly changedAt: IsoInstant;
  readonly changedByName: string;
  readonly asOf: IsoInstant;
  readonly type: {
    readonly id: string;
    readonly note: string | null;
    readonly maxZeroFuelLb: Pounds;
    readonly envelope: readonly {
      readonly weightLb: Pounds;
      readonly forwardIn: Inches;
      readonly aftIn: Inches;
    }[];
  };
  /** What the loader prepares; places front to back. */
  readonly cabin: PreparationList | null;
  /** Null: `why` says why there is no load to show. */
  readonly load: LoadPicture | null;
  readonly why: string | null;
  /** Drums still to be filled. */
  readonly toFill: number;
  /** By stop: the oldest fit drum at the base that no flight has; null: none. */
  readonly nextOldest: readonly { readonly place: string; readonly drum: NextDrum | null }[];
  /** Unload or stay with every drum at its planning weight, as the plan has it. */
  readonly asPlanned: readonly PlannedFlight['stops'][number]['unloadOrStay'][];
  readonly planningKg: number;
  readonly crew: readonly WhoIsFit[];
  readonly stops: readonly { readonly place: string; readonly drums: readonly string[] }[];
  /** What was said of the places on the way, the newest first. */
  readonly reported: readonly SurfaceReport[];
  /** Flights that did not go, or turned back, at these places, in the words of their crews; the newest first. */
  readonly crewsSaid: readonly CrewSaid[];
  /** Null: the operator has not said by how much two totals may differ. */
  readonly toleranceLb: Pounds | null;
}

export interface NextDrum {
  readonly number: string;
  readonly batch: string;
  readonly kg: number;
}

export interface CrewSaid {
  readonly flight: string;
  readonly kind: string;
  readonly at: IsoInstant;
  readonly by: string;
  readonly words: string;
}

/** The load of a flight as it stands, drawn by leg. */
export interface LoadPicture extends LoadStanding {
  readonly sheet: BlindSheet;
  readonly bars: readonly PayloadBar[];
  /** What is left to do when a strip is soft, by leg where drums come off. */
  readonly fallbacks: readonly Fallback[];
}

/** Whether the drums may stand so, and what would mend it. */
export interface LoadStanding {
  readonly holds: boolean;
  readonly faults: readonly string[];
  readonly balanceFaults: readonly BalanceFault[];
  /** By leg and moment; weights are the sums of the bar. */
  readonly moments: readonly BlindMoment[];
  /** The least handling that mends it; null: nothing to mend, or nothing mends it. */
  readonly mend: {
    readonly words: string;
    readonly positions: readonly { readonly drum: string; readonly position: string }[];
  } | null;
}

/** Without its weight, which is a total that somebody may be adding up. */
export type BlindMoment = Omit<BalanceMoment, 'weightLb'>;

export interface Fallback extends Pick<IfSoft, 'place' | 'take' | 'leave' | 'moves' | 'words'> {
  readonly leg: number;
  readonly moments: readonly BlindMoment[];
  /** Of the drums that go. */
  readonly drumsLb: Pounds;
}

/** A load sheet whose totals of load and take-off weight are not told: they are compared with what somebody types. */
export interface BlindSheet extends Omit<LoadSheet, 'legs' | 'square'> {
  readonly legs: readonly Omit<SheetLeg, 'totals' | 'rows' | 'allowedTakeoffLb'>[];
}

/** Answer of POST /api/flights/:id/totals. */
export interface TotalsAnswer extends TotalsComparison {
  readonly of: 'load' | 'take-off weight';
  readonly bySheetLb: Pounds;
  readonly typedLb: Pounds;
  readonly toleranceLb: Pounds;
  /** What rounding row by row makes; null: nothing. */
  readonly roundingWords: string | null;
}

/** Answer of POST /api/booked-flights/:id/drums/check: what stands in the way, and which legs could take drums. */
export interface AddDrumsAnswer {
  readonly faults: readonly Fault[];
  readonly instead: readonly {
    readonly flight: string;
    readonly date: IsoDate;
    readonly from: string;
    readonly to: string;
    readonly drums: number;
    readonly words: string;
  }[];
}
