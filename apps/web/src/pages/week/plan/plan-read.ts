import type { ListedPlan as ListedPlanAnswer, PlanRunAnswer } from '@drumline/contract/answers';
import { z } from 'zod';
import { partOf } from '../../../api/index.js';
import { moneySchema } from './money-read.js';

const requestSchema = z.object({
  endTarget: z.enum(['hand plan', 'minimum', 'operator']),
  seconds: z.number(),
  letGo: z.array(z.string()).optional(),
  note: z.string().optional(),
});

const progressSchema = z.object({
  stage: z.string(),
  seconds: z.number(),
  best: z.number().nullable(),
  bestMoney: z.number().nullable().exactOptional(),
  bound: z.number().nullable(),
  gap: z.number().nullable(),
});

export type PlanProgress = z.output<typeof progressSchema>;

const gapSchema = z.object({ savedAtMost: z.number(), share: z.number() });

/** GET /api/plans and /api/plans/:id/progress. */
export const listedPlanSchema = partOf<ListedPlanAnswer>()(
  z.object({
    id: z.string(),
    request: requestSchema,
    state: z.enum(['queued', 'solving', 'solved', 'infeasible', 'failed', 'cancelled']),
    requestedByName: z.string(),
    asOf: z.string(),
    secondsGone: z.number(),
    cancelAsked: z.boolean(),
    progress: progressSchema.nullable(),
    cost: moneySchema.nullable(),
    moneyGap: gapSchema.nullable(),
    acceptedByName: z.string().nullable(),
    number: z.number().nullable(),
  }),
);

export type ListedPlan = z.output<typeof listedPlanSchema>;

/** It waits or is being made. */
export const isUnderWay = ({ state }: Pick<ListedPlan, 'state'>): boolean =>
  state === 'queued' || state === 'solving';

const planSchema = z.object({
  endTarget: z.enum(['hand plan', 'minimum', 'operator']),
  moneyGap: gapSchema.nullable(),
  needsDecision: z.array(
    z.object({
      flight: z.string(),
      fault: z.object({ what: z.string(), mend: z.string() }),
      consequence: z.string(),
    }),
  ),
});

/** GET /api/plans/:id, as far as a page needs it. */
export const endedPlanSchema = partOf<PlanRunAnswer>()(
  z.object({
    id: z.string(),
    request: requestSchema,
    state: z.string(),
    outcome: z
      .object({
        status: z.string(),
        plan: planSchema.nullable().optional(),
        reasons: z.array(z.string()).optional(),
        error: z.string().optional(),
      })
      .nullable(),
    accepted: z
      .object({
        acceptedByName: z.string(),
        flights: z.array(z.object({ planned: z.string(), flight: z.string() })),
        calledOff: z.array(z.string()),
        leftOut: z.array(z.string()),
        changed: z.array(z.string()),
      })
      .nullable(),
  }),
);

export type EndedPlan = z.output<typeof endedPlanSchema>;
export type FoundPlan = z.output<typeof planSchema>;
