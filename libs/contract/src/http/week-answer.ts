import type { SurfaceReport } from '@drumline/network';
import type {
  BookedFlight,
  FlightCard,
  FlightReason,
  FlightState,
  MoneyGap,
  MoneyParts,
  PlannedFlight,
  PlannedLeg,
  Scenario,
  WeekTally,
} from '@drumline/planning';
import type { ClockTime, IsoDate, IsoInstant, Litres } from '@drumline/units';
import type { Fault } from '../faults/fault.js';

/** Answer of GET /api/week: the board of some days, and what its flights add up to. */
export interface WeekAnswer {
  readonly asOf: IsoInstant;
  readonly today: IsoDate;
  readonly days: readonly { readonly date: IsoDate; readonly noFlying: boolean }[];
  readonly aircraft: Scenario['aircraft'];
  /** Places that drums may be flown to. */
  readonly caches: readonly string[];
  readonly flights: readonly WeekFlight[];
  readonly booked: readonly WeekBooked[];
  /** Drums that standing flights land, by day and place. */
  readonly landings: readonly WeekLanding[];
  /** Of every flight that stands from the first of the days on, as planned. */
  readonly cost: MoneyParts;
  readonly flightsCosted: number;
  /** From today on. */
  readonly tally: WeekTally;
  /** Of the days for which flights are offered, and shortage is counted. */
  readonly lastDay: IsoDate;
  /** The plan that was accepted last; null: none was. */
  readonly plan: StandingPlan | null;
  /** What the strip limits in force were taken from: table and revision, the most used first. */
  readonly stripLimitsFrom: readonly string[];
  /** Reports of surfaces that came after the facts of that plan. */
  readonly heardSince: readonly SurfaceReport[];
  /** Stock has moved in the last seconds, and tally and spare drums are not of it yet: worth asking again soon. */
  readonly stockIsBehind: boolean;
}

/** A flight as its box shows it. */
export interface WeekFlight {
  readonly id: string;
  readonly kind: PlannedFlight['kind'];
  readonly state: FlightState;
  readonly version: number;
  readonly revision: number;
  readonly needsDecision: string | null;
  readonly heldInPlace: boolean;
  readonly date: IsoDate;
  readonly departs: ClockTime;
  readonly aircraft: string;
  readonly pilot: string | null;
  /** Places from base to base. */
  readonly route: readonly string[];
  readonly drums: number;
  readonly drumsPossible: number;
  /** Of the leg with the least room; null: no drum is aboard. */
  readonly binding: Pick<PlannedLeg['binding'], 'name' | 'place'> | null;
  readonly lastAct: string;
  readonly changedAt: IsoInstant;
  readonly changedByName: string;
}

/** A flight that flies anyway, no drum on it yet. */
export interface WeekBooked extends Pick<BookedFlight, 'id' | 'date' | 'aircraft' | 'purpose'> {
  readonly departs: ClockTime | null;
  readonly route: readonly string[];
  readonly passengers: number;
  /** Null: the day is over, or not looked ahead to. */
  readonly spareDrums: number | null;
}

export interface WeekLanding {
  readonly date: IsoDate;
  readonly place: string;
  readonly drums: number;
  /** What can be unloaded there in a day; null: no limit. */
  readonly limitDrums: number | null;
}

/** The plan that was accepted last, as it was found. */
export interface StandingPlan {
  readonly id: string;
  /** How many plans have been accepted, this one included. */
  readonly number: number;
  /** Facts of this moment, by the territory's clock. */
  readonly asOf: IsoInstant;
  readonly acceptedByName: string;
  readonly cost: MoneyParts;
  /** Null: nothing is proved. */
  readonly moneyGap: MoneyGap | null;
}

/** Answer of GET /api/flights/:id/card: all that one flight is decided by. */
export interface CardAnswer {
  readonly id: string;
  readonly revision: number;
  readonly asOf: IsoInstant;
  /** As it was when the flight last changed. */
  readonly planned: PlannedFlight;
  readonly reason: string | null;
  /** Numbers of the drums set aside; null: still to be filled. */
  readonly drumNumbers: readonly { readonly place: string; readonly drum: string | null }[];
  /** What the drums set aside weigh together, full: kg, and the whole pounds of each added; null: not all are named. */
  readonly weighed: { readonly kg: number; readonly lb: number } | null;
  /** By today's facts; null: its day is over, or it is no part of a plan any more. */
  readonly today: FlightCard | null;
  /** What stands in the way of flying it as it stands, by today's facts. */
  readonly faults: readonly Fault[];
  readonly ifDeclined: ConsequenceAnswer | null;
}

export interface ConsequenceAnswer {
  readonly flight: string;
  readonly ifDeclined: string;
  readonly protects: FlightReason['protects'];
  /** Each cache that would hold less, with the flight and without it. */
  readonly caches: readonly {
    readonly place: string;
    readonly minimumLitres: Litres;
    readonly criticalLitres: Litres;
    readonly withIt: ConsequenceLevels;
    readonly without: ConsequenceLevels;
  }[];
}

interface ConsequenceLevels {
  readonly lowestLitres: number;
  readonly endLitres: number;
  /** First day that ends below; null: none. */
  readonly belowMinimum: IsoDate | null;
  readonly belowCritical: IsoDate | null;
}
