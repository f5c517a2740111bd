import { type PlanDocument, parsePlan, printFault } from '@drumline/contract';
import { CommandEnd, exitCodes } from './exit-codes.js';
import { readDocument } from './read-document.js';

/** The plan of a plan document. */
export const loadPlan = (path: string): PlanDocument['plan'] => loadPlanDocument(path).plan;

/** A plan document, as `drumline plan --out` writes it. Ends the command where the file is none. */
export function loadPlanDocument(path: string): PlanDocument {
  const parsed = parsePlan(readDocument(path));
  if (parsed.ok) return parsed.document;
  throw new CommandEnd(
    exitCodes.badInput,
    [
      `${path} is not a plan document. Write one with: drumline plan <scenario> --out plan.json`,
      ...parsed.faults.slice(0, 5).map((fault) => `  ${printFault(fault)}`),
    ].join('\n'),
  );
}
