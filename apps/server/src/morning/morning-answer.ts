import type { ProjectionsAnswer, Role } from '@drumline/contract';
import type { SurfaceState } from '@drumline/network';
import type {
  CacheBelowCritical,
  CacheBelowMinimum,
  DrawNotReported,
  FlightReason,
  FlightState,
  WindowFlight,
} from '@drumline/planning';
import type { ClockTime, IsoDate, IsoInstant } from '@drumline/units';
import type { AwayFlight } from '../flights/away/away-flights.service.js';
import type { Handover } from '../handover/handovers.service.js';
import type { OpenCalls } from '../stock/holds/open-calls.service.js';
import type { More, RaisedNow } from '../stock/raised/raised.service.js';

/** The dispatcher's picture at one moment: what to decide, what has changed, who has not been heard from. */
export interface MorningAnswer {
  readonly asOf: IsoInstant;
  readonly today: IsoDate;
  /** What has changed is told from here on. */
  readonly since: IsoInstant;
  /** When the last handover was signed for in full; null: none was. */
  readonly handedOverAt: IsoInstant | null;
  /** A handover that nobody has taken over yet, with what is signed for and what is not. */
  readonly handover: Handover | null;
  readonly flights: readonly DecideFlight[];
  readonly booked: readonly DecideBooked[];
  /** Of days that are over: nobody has said whether they flew. */
  readonly didTheyFly: readonly UnheardFlight[];
  /** Bases that cannot fill in time what approved and given flights want; `by`: the first of them leaves. */
  readonly fillsShort: readonly {
    readonly place: string;
    readonly short: readonly string[];
    readonly flights: readonly string[];
    readonly by: IsoInstant;
  }[];
  /** Flights of any state that stand from today on; 0: no plan stands. */
  readonly flightsStanding: number;
  /** Although every approved and offered flight flies. */
  readonly belowCritical: readonly CacheBelowCritical[];
  /** Of the others. */
  readonly belowMinimum: readonly CacheBelowMinimum[];
  /** Caches that fall short before a sling that feeds them. */
  readonly slingRemedies: ProjectionsAnswer['slingRemedies'];
  /** Holds of which somebody has still to be told by radio, the oldest first. */
  readonly openCalls: readonly OpenCalls[];
  readonly cases: readonly DecideCase[];
  readonly proposals: readonly DecideProposal[];
  /** What can hurt people first. */
  readonly raised: readonly Pick<RaisedNow, 'id' | 'mayHurt' | 'place' | 'what' | 'whatNext'>[];
  readonly moreRaised: More;
  readonly changed: readonly Changed[];
  readonly notHeard: NotHeard;
  readonly oneWindow: readonly WindowFlight[];
  readonly strips: readonly StripNow[];
  readonly away: readonly AwayFlight[];
  /** What the operator's rule for a flight that is not back refers to; null: no minutes are set. */
  readonly overdueRule: { readonly afterMinutes: number; readonly reference: string } | null;
  readonly firstTakeOff: {
    readonly at: ClockTime;
    readonly flight: string;
    readonly aircraft: string;
    /** Past its hour by so many minutes and not given to its pilot; 0: still to come. */
    readonly lateMinutes: number;
  } | null;
  readonly worstOdds: {
    readonly place: string;
    readonly morningCancel: number;
    readonly afternoonCancel: number;
  } | null;
  readonly fuel: readonly FuelAt[];
  readonly bases: readonly FuelAtBase[];
}

/** A flight that waits for somebody: offered, or marked, or approved and past its hour without having been given. */
export interface DecideFlight {
  readonly id: string;
  readonly state: FlightState;
  readonly needsDecision: string | null;
  /** The latest moment at which it makes sense to decide. */
  readonly by: IsoInstant;
  readonly date: IsoDate;
  readonly departs: ClockTime;
  readonly aircraft: string;
  readonly pilot: string | null;
  readonly route: readonly string[];
  readonly drums: number;
  readonly ifDeclined: string;
  readonly protects: FlightReason['protects'];
}

/** A booked flight without drums that cannot be flown as it is booked. */
export interface DecideBooked {
  readonly id: string;
  readonly date: IsoDate;
  readonly aircraft: string;
  readonly route: readonly string[];
  readonly purpose: string;
  readonly passengers: number;
  readonly needsDecision: string;
  readonly by: IsoInstant;
}

/** A flight of a day that is over, offered to loaded still. */
export type UnheardFlight = Omit<DecideFlight, 'by' | 'ifDeclined' | 'protects'>;

export interface DecideCase {
  readonly count: string;
  readonly place: string;
  readonly at: IsoInstant;
  readonly countedBy: readonly string[];
  readonly countedLitres: number;
  readonly bookLitres: number;
  readonly toleranceLitres: number;
  /** Ways of closing it that wait for a second person. */
  readonly proposed: number;
}

export interface DecideProposal {
  readonly id: string;
  readonly subject: string;
  readonly act: string;
  readonly proposedAt: IsoInstant;
  /** Those whose signature counts, the first one first. */
  readonly signedBy: readonly string[];
  readonly stillToSign: { readonly people: number; readonly roles: readonly Role[] };
  /** Whether the person who asks may be the second. */
  readonly mayAgree: boolean;
}

export interface Changed {
  /** When it came in, by the territory's clock. */
  readonly at: IsoInstant;
  /** When it was written down, where that was earlier. */
  readonly writtenAt: IsoInstant | null;
  readonly what: string;
  /** Who, and by which means. */
  readonly source: string;
}

export interface NotHeard {
  /** Planned draws of days that are over. */
  readonly draws: readonly DrawNotReported[];
  readonly caches: readonly {
    readonly place: string;
    readonly countedAt: IsoInstant | null;
    readonly why: readonly string[];
  }[];
  readonly phones: readonly { readonly person: string; readonly hoursSilent: number }[];
  readonly crews: readonly {
    readonly pilot: string | null;
    readonly flight: string;
    readonly state: FlightState;
    /** When a word was to come. */
    readonly expectedAt: IsoInstant;
    readonly what: 'not loaded' | 'not off' | 'not back' | 'drums not reported';
  }[];
}

/** A strip as its column shows it. */
export interface StripNow {
  readonly place: string;
  readonly name: string;
  /** Null: unknown. */
  readonly surface: SurfaceState | null;
  /** What is planned on today. */
  readonly counts: SurfaceState;
  readonly reportedAt: IsoInstant | null;
  readonly by: string | null;
  readonly reported: SurfaceState | null;
  readonly staleAt: IsoInstant | null;
  readonly untilDate: IsoDate | null;
  readonly radioTime: ClockTime | null;
  readonly tailwindLimitKt: number | null;
  readonly stripClass: number | null;
  readonly drumsToday: number;
  readonly drumsADay: number | null;
}

/** What can be drawn at a place now: the rest for a medevac only. */
export interface FuelAt {
  readonly place: string;
  readonly usableLitres: number;
  /** What stands there and what of it may not be used. */
  readonly bookLitres: number;
  readonly heldLitres: number;
  readonly pastRetestLitres: number;
  /** Of the usable litres for a medevac only; and what is to be kept for that. */
  readonly reserveLitres: number;
  readonly reserveSetLitres: number;
  /** Of the usable litres, planned as drawn by now and not reported. */
  readonly notReportedLitres: number;
  readonly countedAt: IsoInstant | null;
  readonly confidence: 'high' | 'medium' | 'low';
}

/** Filled drums at a base that may be used, those that may not, and the bulk. */
export interface FuelAtBase {
  readonly place: string;
  readonly usableLitres: number;
  readonly usableDrums: number;
  readonly heldDrums: number;
  readonly pastRetestDrums: number;
  readonly bulkLitres: number;
}
