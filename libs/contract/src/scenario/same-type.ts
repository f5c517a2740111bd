import type { Scenario } from '@drumline/planning';
import type { z } from 'zod';
import type { scenarioSchema } from './scenario-schema.js';

/** Readonly, and with optional fields asked for: a field known to one side only is then a difference. */
type Whole<T> = T extends string | number | boolean | null
  ? T
  : { readonly [K in keyof T]-?: Whole<Exclude<T[K], undefined>> };

type Assignable<From extends To, To> = From;
type Parsed = z.output<typeof scenarioSchema>;

/** Does not compile when the schema and the planner's `Scenario` part ways, in either direction. */
export type SchemaGivesScenario = Assignable<Whole<Parsed>, Whole<Scenario>>;
export type ScenarioFitsSchema = Assignable<Whole<Scenario>, Whole<Parsed>>;
