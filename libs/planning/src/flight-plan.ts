import type { LegLimit, UnloadOrStay } from '@drumline/loading';
import type { SurfaceState } from '@drumline/network';
import type { PlanCost, Proof } from '@drumline/routing';
import type { CacheProjection } from '@drumline/stock';
import type { Cents, ClockTime, Hours, IsoDate, Knots, Litres, NauticalMiles, Pounds } from '@drumline/units';
import type { StandingState, StandingStop } from './scenario.js';

/** A plan as people read it: flights by day and aircraft, with reasons, cost and the stock that results. */
export interface FlightPlan {
  readonly title: string;
  readonly firstDay: IsoDate;
  readonly days: number;
  readonly offeredDays: number;
  readonly currency: string;
  /** What the caches are to hold at the end. */
  readonly endTarget: EndTarget;
  readonly flights: readonly PlannedFlight[];
  readonly caches: readonly CacheProjection[];
  readonly bases: readonly BaseUse[];
  readonly cost: MoneyParts;
  readonly tiers: PlanCost;
  readonly proof: Proof;
  readonly moneyGap: MoneyGap | null;
  readonly shortages: readonly Shortage[];
  /** Flights that stand and can no longer be flown as they stand; empty: none. */
  readonly needsDecision: readonly Decision[];
  /** Assumptions and facts that were not used, in plain sentences ("still air on every leg"). */
  readonly remarks: readonly string[];
  readonly risk: Risk | null;
}

export type EndTarget = 'hand plan' | 'minimum' | 'operator';

export interface PlannedFlight {
  readonly id: string;
  readonly kind: 'positioning' | 'booked';
  readonly state: StandingState;
  readonly date: IsoDate;
  /** Day of the plan, from 1. */
  readonly day: number;
  readonly departs: ClockTime;
  readonly half: 'morning' | 'afternoon';
  readonly aircraft: string;
  readonly type: string;
  readonly pilot: string | null;
  readonly from: string;
  readonly to: string;
  readonly legs: readonly PlannedLeg[];
  readonly stops: readonly PlannedStop[];
  readonly drums: number;
  readonly litres: Litres;
  readonly rampFuelLb: Pounds;
  readonly ownFuelLitres: Litres;
  readonly blockHours: Hours;
  readonly dutyHours: Hours;
  readonly cost: MoneyParts;
  readonly reason: FlightReason;
  /** Why a flight that stands cannot be flown as it stands, in words; null: it can, or the plan may still change it. */
  readonly needsDecision: string | null;
}

export interface PlannedLeg {
  readonly from: string;
  readonly to: string;
  readonly distanceNm: NauticalMiles;
  readonly windKt: Knots | null;
  readonly blockHours: Hours;
  readonly surface: SurfaceState;
  readonly drumsAboard: number;
  /** Most drums the leg may carry. */
  readonly drumsPossible: number;
  readonly binding: LegLimit;
  /** Room left under the binding limit with the drums aboard. */
  readonly spareLb: Pounds;
  readonly relax: string;
  /** Drum positions that balance, front to back; empty where no drum is aboard. */
  readonly positions: readonly string[];
}

export interface PlannedStop extends StandingStop {
  readonly unloadOrStay: UnloadOrStay;
  /** What to do when the strip is soft on arrival day: the drums that may still go, or null where not even those for other stops may land there then. */
  readonly drumsIfSoft: number | null;
  readonly ifSoft: string;
  readonly tailwindLimitKt: Knots;
  readonly committalPoint: string | null;
}

/** Why the flight flies, found by taking it out of the plan and looking again. */
export interface FlightReason {
  /** The first cache and day that would fall short without it; null: nothing falls short. */
  readonly protects: { readonly place: string; readonly date: IsoDate; readonly level: ShortLevel } | null;
  /** Days from the flight to the first that suffers without it; 0: no day in hand; null: nothing falls short. */
  readonly daysInHand: number | null;
  /** Every cache that suffers without it, a sentence each, the worst first. */
  readonly ifDeclined: string;
  readonly text: string;
}

export type ShortLevel = 'below minimum' | 'below critical' | 'run out' | 'short of the end target';

export interface MoneyParts {
  readonly flight: Cents;
  readonly fuel: Cents;
  readonly handling: Cents;
  readonly total: Cents;
  readonly litres: Litres;
  /** Cents per litre landed; null where nothing is landed. */
  readonly perLitre: number | null;
}

export interface BaseUse {
  readonly place: string;
  readonly drumsTaken: number;
  readonly drumsReady: number;
  readonly ownFuelLitres: Litres;
  /** Bulk and filled drums left at the end of the horizon. */
  readonly leftLitres: Litres;
  readonly note: string | null;
}

/** A standing flight that no re-plan may touch and that breaks a rule: somebody must decide on it. */
export interface Decision {
  readonly flight: string;
  readonly fault: Fault;
  /** What the stock picture counts on as long as it stands, and what happens without it. */
  readonly consequence: string;
}

/** A shortage that the plan could not avoid, with what stands in the way. */
export interface Shortage {
  readonly place: string;
  readonly date: IsoDate;
  readonly day: number;
  readonly level: ShortLevel;
  /** Usable on that day, and the level it should have held; run out: what cannot be drawn, and what is asked for. */
  readonly litres: Litres;
  readonly limitLitres: Litres;
  /** The shortage as a sentence. */
  readonly text: string;
  /** What stands in the way, to follow "Blocked by:". */
  readonly blockedBy: string;
}

/** No plan with no more shortage is cheaper by more than `savedAtMost`, a `share` of this one's cost in flight, fuel and handling. */
export interface MoneyGap {
  readonly savedAtMost: Cents;
  readonly share: number;
}

export interface Risk {
  readonly fortnights: number;
  readonly seed: number;
  /** Share of fortnights in which any cache ends a day below critical. */
  readonly belowCritical: number;
  readonly byCache: readonly {
    readonly place: string;
    readonly belowCritical: number;
    readonly belowMinimum: number;
  }[];
  readonly expectedDrums: number;
  /** The same if every flight were flown in the morning, as far as the weather goes. */
  readonly allMorning: { readonly belowCritical: number; readonly expectedDrums: number };
}

/** A difference between two plans, matched by id where frozen, else by route, then nearest day. */
export interface PlanDifference {
  readonly removed: readonly PlannedFlight[];
  readonly added: readonly PlannedFlight[];
  readonly moved: readonly FlightChange[];
  readonly drumsChanged: readonly FlightChange[];
  readonly same: readonly FlightChange[];
  /** Those of `same` that another pilot flies. */
  readonly pilotChanged: readonly FlightChange[];
  readonly totals: { readonly before: PlanTotals; readonly after: PlanTotals };
  readonly lowest: readonly {
    readonly place: string;
    readonly beforeLitres: Litres;
    readonly afterLitres: Litres;
    readonly minimumLitres: Litres;
    readonly criticalLitres: Litres;
  }[];
}

export interface FlightChange {
  readonly before: PlannedFlight;
  readonly after: PlannedFlight;
}

export interface PlanTotals {
  readonly flights: number;
  readonly drums: number;
  readonly litres: Litres;
  readonly blockHours: Hours;
  readonly cost: MoneyParts;
  readonly drumsFromBase: readonly { readonly place: string; readonly drums: number }[];
}

/** A fault found by the checker: where, what, and what would mend it. */
export interface Fault {
  readonly where: string;
  readonly what: string;
  readonly mend: string;
  /** Ids of the flights concerned, so that a frozen flight can be marked for a decision. */
  readonly flights: readonly string[];
}
