import { z } from 'zod';
import { moneyParts } from '../plan/field.js';
import { baseUse, flightPlanSchema, proof } from '../plan/flight-plan-schema.js';
import { plannedFlightSchema } from '../plan/planned-flight-schema.js';
import { type Answer, cents, hours, instant, isoDate, litres } from './field.js';
import { moneyGapAnswer } from './week.js';

export const planState = z.enum(['queued', 'solving', 'solved', 'infeasible', 'failed', 'cancelled']);
export type PlanState = Answer<typeof planState>;

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
    bound: z.number().nullable(),
    gap: z.number().nullable(),
  })
  .meta({
    id: 'PlanProgress',
    description: 'Money in cents, shortages at their prices included; null: not known yet.',
  });
export type PlanProgress = Answer<typeof planProgressAnswer>;

export const listedPlanAnswer = z
  .strictObject({
    id: z.string(),
    request: z.strictObject({
      endTarget: z.enum(['minimum', 'hand plan', 'operator']),
      seconds: z.number(),
      seed: z.number(),
      frozen: z.array(z.string()),
      from: z.string().exactOptional(),
      days: z.number().exactOptional(),
      offeredDays: z.number().exactOptional(),
      changePrice: cents.exactOptional(),
      note: z.string().exactOptional(),
    }),
    state: planState,
    requestedByName: z.string(),
    asOf: instant.describe("Facts of this moment, by the territory's clock."),
    secondsGone: z.number().describe('Since it was taken up, until it ended; 0: it waits.'),
    cancelAsked: z.boolean(),
    progress: planProgressAnswer.nullable(),
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
export type PlanAcceptance = Answer<typeof planAcceptanceAnswer>;

export const planRunAnswer = z
  .strictObject({
    accepted: planAcceptanceAnswer.nullable(),
    id: z.string(),
    request: z.strictObject({
      endTarget: z.enum(['minimum', 'hand plan', 'operator']),
      seconds: z.number(),
      seed: z.number(),
      frozen: z.array(z.string()),
      from: z.string().exactOptional(),
      days: z.number().exactOptional(),
      offeredDays: z.number().exactOptional(),
      changePrice: cents.exactOptional(),
      note: z.string().exactOptional(),
    }),
    state: planState,
    attempt: z.number().describe('Raised by every worker that takes the run up: only the last may write.'),
    requestedBy: z.string(),
    requestedByName: z.string(),
    requestedAt: instant,
    startedAt: instant.nullable(),
    cancelAskedAt: instant.nullable(),
    finishedAt: instant.nullable(),
    progress: planProgressAnswer.nullable(),
    firstPlan: flightPlanSchema
      .nullable()
      .describe(
        'A checked plan of a short search, to look at while the long one goes on; null before it and at the end.',
      ),
    outcome: z
      .discriminatedUnion('status', [
        z.strictObject({
          status: z.literal('solved'),
          plan: flightPlanSchema,
          proof: proof,
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
          plan: flightPlanSchema.nullable(),
          proof: proof.nullable(),
        }),
      ])
      .nullable(),
  })
  .meta({ id: 'PlanRunAnswer' });
export type PlanRunAnswer = Answer<typeof planRunAnswer>;

export const flightChangeAnswer = z
  .strictObject({
    before: plannedFlightSchema,
    after: plannedFlightSchema,
  })
  .meta({ id: 'FlightChange' });
export type FlightChange = Answer<typeof flightChangeAnswer>;

export const planTotalsAnswer = z
  .strictObject({
    flights: z.number(),
    drums: z.number(),
    litres: litres,
    blockHours: hours,
    cost: moneyParts,
    drumsFromBase: z.array(
      z.strictObject({
        place: z.string(),
        drums: z.number(),
      }),
    ),
  })
  .meta({ id: 'PlanTotals' });
export type PlanTotals = Answer<typeof planTotalsAnswer>;

export const planDifferencesAnswer = z
  .strictObject({
    asOf: instant,
    lastOfferedDay: isoDate.describe(
      'Last day whose flights are offered when the plan is accepted; later ones stay ideas.',
    ),
    lastDay: isoDate,
    faults: z
      .array(
        z.strictObject({
          flight: z.string(),
          text: z.string(),
        }),
      )
      .describe('What stands in the way of a flight that stood, by the facts of the run.'),
    bases: z.strictObject({
      before: z.array(baseUse),
      after: z.array(baseUse),
    }),
    expectedDrums: z
      .strictObject({
        before: z.number(),
        after: z.number(),
      })
      .describe('Drums that the weather is likely to let land, if every flight flies in its half day.'),
    levels: z.array(
      z.strictObject({
        place: z.string(),
        dates: z.array(isoDate),
        before: z.array(z.number()),
        after: z.array(z.number()),
      }),
    ),
    removed: z.array(plannedFlightSchema),
    added: z.array(plannedFlightSchema),
    moved: z.array(flightChangeAnswer),
    drumsChanged: z.array(flightChangeAnswer),
    same: z.array(flightChangeAnswer),
    pilotChanged: z.array(flightChangeAnswer).describe('Those of `same` that another pilot flies.'),
    totals: z.strictObject({
      before: planTotalsAnswer,
      after: planTotalsAnswer,
    }),
    lowest: z.array(
      z.strictObject({
        place: z.string(),
        beforeLitres: litres,
        afterLitres: litres,
        minimumLitres: litres,
        criticalLitres: litres,
        withIdeas: z
          .strictObject({ beforeLitres: litres, afterLitres: litres })
          .describe('With the later ideas of each plan as well.'),
      }),
    ),
    laterIdeas: z
      .strictObject({ before: z.number(), after: z.number() })
      .describe('Flights of each plan later than those it offers: no level counts them.'),
    mayLeaveOut: z
      .array(z.string())
      .describe(
        "Keys of the lines that can be left out: the flight's number in the plan, of a removed one its own.",
      ),
    leftOut: z.array(z.string()).describe('Keys of the lines that were asked to be left out.'),
    faultsAfter: z
      .array(z.strictObject({ flights: z.array(z.string()), text: z.string() }))
      .describe('What stands in the way of the plan with those lines left out, by the facts of the run.'),
  })
  .meta({
    id: 'PlanDifferencesAnswer',
    description:
      'A plan beside what stood when it was asked for: the flights then standing, and after their days what the plan accepted last had in mind. Money, drums and hours are of the whole plans, ideas included; levels are with approved and offered flights, as on every page. With lines left out the lists are those of the whole plan still, and all that is added up is of what would be accepted.',
  });
export type PlanDifferencesAnswer = Answer<typeof planDifferencesAnswer>;

export type LowestBeside = PlanDifferencesAnswer['lowest'][number];
