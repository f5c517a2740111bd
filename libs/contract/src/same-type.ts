import type { FlightPlan, Scenario } from '@drumline/planning';
import type { z } from 'zod';
import type { flightPlanSchema } from './plan/flight-plan-schema.js';
import type { scenarioSchema } from './scenario/scenario-schema.js';

/** Readonly, and with optional fields asked for: a field known to one side only is then a difference. */
type Whole<T> = T extends string | number | boolean | null
  ? T
  : { readonly [K in keyof T]-?: Whole<Exclude<T[K], undefined>> };

type Assignable<From extends To, To> = From;
type ParsedScenario = z.output<typeof scenarioSchema>;
type ParsedPlan = z.output<typeof flightPlanSchema>;

/** Does not compile when a schema and the planner's type part ways, in either direction. */
export type SameTypes = [
  Assignable<Whole<ParsedScenario>, Whole<Scenario>>,
  Assignable<Whole<Scenario>, Whole<ParsedScenario>>,
  Assignable<Whole<ParsedPlan>, Whole<FlightPlan>>,
  Assignable<Whole<FlightPlan>, Whole<ParsedPlan>>,
];
