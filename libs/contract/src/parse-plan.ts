import type { FlightPlan } from '@drumline/planning';
import type { Fault } from './faults/fault.js';
import { readJson } from './faults/read-json.js';
import { shapeFaults } from './faults/shape-faults.js';
import { planDocumentSchema } from './plan/flight-plan-schema.js';

/** What `drumline plan --json` writes. */
export interface PlanDocument {
  readonly format: 'drumline-plan/1';
  /** Fingerprint of the scenario, changes included, standing flights left out. */
  readonly madeFrom: string;
  readonly plan: FlightPlan;
  /** Plans to compare with: the minimum-only plan, the hand plan. */
  readonly beside: readonly { readonly name: string; readonly plan: FlightPlan }[];
}

export type ParsedPlan =
  | { readonly ok: true; readonly document: PlanDocument }
  | { readonly ok: false; readonly faults: readonly Fault[] };

/**
 * Reads a plan document, given as JSON text or as the value read from it. Returns the document, or every fault of form at
 * once. Whether the plan keeps the rules is not looked at here.
 */
export const parsePlan = (document: unknown): ParsedPlan => {
  const read = typeof document === 'string' ? readJson(document) : { ok: true as const, value: document };
  if (!read.ok) return { ok: false, faults: [read.fault] };
  const parsed = planDocumentSchema.safeParse(read.value);
  return parsed.success
    ? { ok: true, document: parsed.data }
    : { ok: false, faults: shapeFaults(planDocumentSchema, read.value) };
};
