import type {
  BaseUse,
  FlightPlan,
  HelicopterTask,
  MoneyParts,
  PlannedFlight,
  Scenario,
  SlingMove,
  SlingToCome,
} from '@drumline/planning';
import { z } from 'zod';
import { litres, moneyParts as money } from '../plan/field.js';
import { flightPlanSchema, proof, baseUse as use } from '../plan/flight-plan-schema.js';
import { plannedFlightSchema } from '../plan/planned-flight-schema.js';
import { scenarioSchema } from '../scenario/scenario-schema.js';

// What an answer takes over from the planner goes by the planner's own type: spelled out in every answer that has one in
// it, the declarations of this library would be many times as long, and as slow to check.
const { surfaceReports, slings, helicopterTasks } = scenarioSchema.shape;

export const flightPlan: z.ZodType<FlightPlan> = flightPlanSchema;
export const planProof: z.ZodType<FlightPlan['proof']> = proof;
export const plannedFlight: z.ZodType<PlannedFlight> = plannedFlightSchema;
export const moneyParts: z.ZodType<MoneyParts> = money;
export const baseUse: z.ZodType<BaseUse> = use;
export const surfaceReport: z.ZodType<Scenario['surfaceReports'][number]> = surfaceReports.element;
export const slingMove: z.ZodType<SlingMove> = slings.element;
const slingLoad = z.strictObject({ drums: z.number(), litres });
export const slingToCome: z.ZodType<SlingToCome> = slings.element.extend({
  load: slingLoad.describe(
    'What it takes along with all flights landed; `drums` of the sling itself: as planned.',
  ),
  inQuestion: slingLoad.describe(
    'Of its load, what would stay behind if no flight landed that somebody has still to decide on.',
  ),
});
export const helicopterTask: z.ZodType<HelicopterTask> = helicopterTasks.element;
