import type { BaseUse, MoneyGap, MoneyParts, PlanDifference } from '@drumline/planning';
import type { IsoDate, IsoInstant } from '@drumline/units';
import type { PlanRequest } from './plan-request.js';

export type PlanState = 'queued' | 'solving' | 'solved' | 'infeasible' | 'failed' | 'cancelled';

/** Money in cents, shortages at their prices included; null: not known yet. */
export interface PlanProgress {
  readonly stage: string;
  readonly seconds: number;
  readonly best: number | null;
  readonly bound: number | null;
  readonly gap: number | null;
}

/** A run as the list of plans shows it: what it was asked for, how far it is, and what came of it. */
export interface ListedPlan {
  readonly id: string;
  readonly request: PlanRequest;
  readonly state: PlanState;
  readonly requestedByName: string;
  /** Facts of this moment, by the territory's clock. */
  readonly asOf: IsoInstant;
  /** Since it was taken up, until it ended; 0: it waits. */
  readonly secondsGone: number;
  readonly cancelAsked: boolean;
  readonly progress: PlanProgress | null;
  /** Null: no plan came of it, or none yet. */
  readonly cost: MoneyParts | null;
  readonly moneyGap: MoneyGap | null;
  readonly acceptedByName: string | null;
  /** Of the accepted plans, the how manieth it is; null: not accepted. */
  readonly number: number | null;
}

/**
 * A plan beside what stood when it was asked for: the flights then standing, and after their days what the plan accepted
 * last had in mind.
 */
export interface PlanDifferencesAnswer extends PlanDifference {
  readonly asOf: IsoInstant;
  /** Last day whose flights are offered when the plan is accepted; later ones stay ideas. */
  readonly lastOfferedDay: IsoDate;
  readonly lastDay: IsoDate;
  /** What stands in the way of a flight that stood, by the facts of the run. */
  readonly faults: readonly { readonly flight: string; readonly text: string }[];
  readonly bases: { readonly before: readonly BaseUse[]; readonly after: readonly BaseUse[] };
  /** Drums that the weather is likely to let land, if every flight flies in its half day. */
  readonly expectedDrums: { readonly before: number; readonly after: number };
  readonly levels: readonly {
    readonly place: string;
    readonly dates: readonly IsoDate[];
    readonly before: readonly number[];
    readonly after: readonly number[];
  }[];
}
