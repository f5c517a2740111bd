import type { FlightPlan } from '@drumline/planning';
import { CommandEnd, exitCodes } from './exit-codes.js';
import { readDocument } from './read-document.js';

/** What `drumline plan --out` and `--json` write. */
export interface PlanDocument {
  readonly format: 'drumline-plan/1';
  readonly plan: FlightPlan;
  /** Plans to compare with: the minimum-only plan, the hand plan. */
  readonly beside: readonly { readonly name: string; readonly plan: FlightPlan }[];
}

/** The plan of a plan document. Ends the command where the file is none. */
export function loadPlan(path: string): FlightPlan {
  let document: Partial<PlanDocument>;
  try {
    document = JSON.parse(readDocument(path)) as Partial<PlanDocument>;
  } catch (error) {
    if (error instanceof CommandEnd) throw error;
    throw new CommandEnd(exitCodes.badInput, `${path} is not JSON: ${(error as Error).message}.`);
  }
  if (document.format !== 'drumline-plan/1' || !Array.isArray(document.plan?.flights)) {
    throw new CommandEnd(
      exitCodes.badInput,
      `${path} is not a plan document. Write one with: drumline plan <scenario> --out ${path === '-' ? 'plan.json' : path}`,
    );
  }
  return document.plan;
}
