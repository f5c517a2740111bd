import { z } from 'zod';
import { type Answer, cents, instant } from '../field.js';
import { flightPlan, moneyParts, planProof } from '../planned.js';
import { moneyGapAnswer } from './standing-plan.js';

export const planState = z.enum(['queued', 'solving', 'solved', 'infeasible', 'failed', 'cancelled']);

export const planProgressAnswer = z
  .strictObject({
    stage: z.string(),
    seconds: z.number().meta({ unit: 's' }),
    figuresFrom: z
      .number()
      .meta({ unit: 's' })
      .describe(
        'When the solver gave these figures; earlier than `seconds` where it has been at work in silence since.',
      ),
    best: z.number().nullable(),
    bestMoney: z
      .number()
      .nullable()
      .exactOptional()
      .describe('Of `best`, flight, fuel and handling: what is paid; absent: of a run before it was told.'),
    bound: z.number().nullable(),
    gap: z.number().nullable(),
  })
  .meta({
    id: 'PlanProgress',
    description: 'Money in cents, shortages at their prices included; null: not known yet.',
  });

/** What a plan was asked for. */
const planRequestAnswer = z.strictObject({
  endTarget: z.enum(['minimum', 'hand plan', 'operator']),
  seconds: z.number(),
  seed: z.number(),
  frozen: z.array(z.string()),
  letGo: z.array(z.string()).exactOptional(),
  from: z.string().exactOptional(),
  days: z.number().exactOptional(),
  offeredDays: z.number().exactOptional(),
  changePrice: cents.exactOptional(),
  note: z.string().exactOptional(),
});

/** A run, wherever it is shown. */
const planRun = {
  id: z.string(),
  request: planRequestAnswer,
  state: planState,
  requestedByName: z.string(),
  progress: planProgressAnswer.nullable(),
};

export const listedPlanAnswer = z
  .strictObject({
    ...planRun,
    asOf: instant.describe("Facts of this moment, by the territory's clock."),
    secondsGone: z.number().describe('Since it was taken up, until it ended; 0: it waits.'),
    cancelAsked: z.boolean(),
    cost: moneyParts.nullable().describe('Null: no plan came of it, or none yet.'),
    moneyGap: moneyGapAnswer.nullable(),
    acceptedByName: z.string().nullable(),
    number: z
      .number()
      .nullable()
      .describe('Of the accepted plans, the how manieth it is; null: not accepted.'),
  })
  .meta({
    id: 'ListedPlan',
    description:
      'A run as the list of plans shows it: what it was asked for, how far it is, and what came of it.',
  });
export type ListedPlan = Answer<typeof listedPlanAnswer>;

export const planAcceptanceAnswer = z
  .strictObject({
    planId: z.string(),
    acceptedBy: z.string(),
    acceptedByName: z.string(),
    acceptedAt: instant,
    flights: z.array(
      z.strictObject({
        planned: z.string(),
        flight: z.string(),
      }),
    ),
    calledOff: z.array(z.string()),
    leftOut: z
      .array(z.string())
      .describe('Lines of the list of differences that were not accepted, by their keys.'),
    changed: z
      .array(z.string())
      .describe(
        'What has changed between the scenario of the run and the day it was accepted, in plain sentences.',
      ),
  })
  .meta({ id: 'PlanAcceptance', description: 'That a plan was accepted, and what came of it.' });

export const planRunAnswer = z
  .strictObject({
    accepted: planAcceptanceAnswer.nullable(),
    ...planRun,
    attempt: z.number().describe('Raised by every worker that takes the run up: only the last may write.'),
    requestedBy: z.string(),
    requestedAt: instant,
    startedAt: instant.nullable(),
    cancelAskedAt: instant.nullable(),
    finishedAt: instant.nullable(),
    firstPlan: flightPlan
      .nullable()
      .describe(
        'A checked plan of a short search, to look at while the long one goes on; null before it and at the end.',
      ),
    outcome: z
      .discriminatedUnion('status', [
        z.strictObject({
          status: z.literal('solved'),
          plan: flightPlan,
          proof: planProof,
        }),
        z.strictObject({
          status: z.literal('infeasible'),
          reasons: z.array(z.string()),
        }),
        z.strictObject({
          status: z.literal('failed'),
          error: z.string(),
        }),
        z.strictObject({
          status: z.literal('cancelled'),
          plan: flightPlan.nullable(),
          proof: planProof.nullable(),
        }),
      ])
      .nullable(),
  })
  .meta({ id: 'PlanRunAnswer' });
export type PlanRunAnswer = Answer<typeof planRunAnswer>;
