import type { PlanRequest } from '@drumline/contract';
import type { FlightPlan, Scenario } from '@drumline/planning';
import type { Proof } from '@drumline/routing';
import { EntitySchema } from 'typeorm';
import type { SolveProgress } from './solve-messages.js';

export type PlanState = 'queued' | 'solving' | 'solved' | 'infeasible' | 'failed' | 'cancelled';

/** How a run ended. It is never changed: the database refuses. */
export type PlanOutcome =
  | { readonly status: 'solved'; readonly plan: FlightPlan; readonly proof: Proof }
  | { readonly status: 'infeasible'; readonly reasons: readonly string[] }
  | { readonly status: 'failed'; readonly error: string }
  /** With the best checked plan that there was by then. */
  | { readonly status: 'cancelled'; readonly plan: FlightPlan | null; readonly proof: Proof | null };

/** One planning run, with the scenario it was made from. */
export interface PlanRun {
  readonly id: string;
  readonly request: PlanRequest;
  readonly scenario: Scenario;
  /** Revisions of the flights in the scenario, to tell later what people changed since. */
  readonly flightRevisions: Readonly<Record<string, number>>;
  readonly state: PlanState;
  /** Raised by every worker that takes the run up: only the last may write. */
  readonly attempt: number;
  readonly requestedBy: string;
  readonly requestedByName: string;
  readonly requestedAt: Date;
  readonly startedAt: Date | null;
  /** The worker that solves it says so every second. */
  readonly heartbeatAt: Date | null;
  readonly cancelAskedAt: Date | null;
  readonly finishedAt: Date | null;
  readonly progress: SolveProgress | null;
  /** A checked plan of a short search, to look at while the long one goes on; null before it and at the end. */
  readonly firstPlan: FlightPlan | null;
  readonly outcome: PlanOutcome | null;
}

/** That a plan was accepted, and what came of it. */
export interface PlanAcceptance {
  readonly planId: string;
  readonly acceptedBy: string;
  readonly acceptedByName: string;
  readonly acceptedAt: Date;
  readonly flights: readonly { readonly planned: string; readonly flight: string }[];
  readonly calledOff: readonly string[];
  /** Lines of the list of differences that were not accepted, by their keys. */
  readonly leftOut: readonly string[];
  /** What has changed between the scenario of the run and the day it was accepted, in plain sentences. */
  readonly changed: readonly string[];
}

export const planRunTable = new EntitySchema<PlanRun>({
  name: 'plan_run',
  tableName: 'plan_runs',
  columns: {
    id: { type: 'uuid', primary: true },
    request: { type: 'jsonb' },
    scenario: { type: 'jsonb' },
    flightRevisions: { type: 'jsonb' },
    state: { type: 'text', default: 'queued' },
    attempt: { type: 'integer', default: 0 },
    requestedBy: { type: 'uuid' },
    requestedByName: { type: 'text' },
    requestedAt: { type: 'timestamptz', createDate: true },
    startedAt: { type: 'timestamptz', nullable: true },
    heartbeatAt: { type: 'timestamptz', nullable: true },
    cancelAskedAt: { type: 'timestamptz', nullable: true },
    finishedAt: { type: 'timestamptz', nullable: true },
    progress: { type: 'jsonb', nullable: true },
    firstPlan: { type: 'jsonb', nullable: true },
    outcome: { type: 'jsonb', nullable: true },
  },
});

export const planAcceptanceTable = new EntitySchema<PlanAcceptance>({
  name: 'plan_acceptance',
  tableName: 'plan_acceptances',
  columns: {
    planId: { type: 'uuid', primary: true },
    acceptedBy: { type: 'uuid' },
    acceptedByName: { type: 'text' },
    acceptedAt: { type: 'timestamptz', createDate: true },
    flights: { type: 'jsonb' },
    calledOff: { type: 'jsonb' },
    leftOut: { type: 'jsonb' },
    changed: { type: 'jsonb' },
  },
});
