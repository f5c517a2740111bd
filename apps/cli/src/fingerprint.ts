import { createHash } from 'node:crypto';
import type { PlanDocument } from '@drumline/contract';
import type { Scenario } from '@drumline/planning';

/** What a scenario says, standing flights apart, in twelve characters: two equal ones are the same picture. */
export function fingerprint({ flights: _, ...picture }: Scenario): string {
  return createHash('sha256').update(JSON.stringify(picture)).digest('hex').slice(0, 12);
}

/** Warns on standard error where a plan was made from another picture than this one. */
export function warnOfOtherPicture(scenario: Scenario, document: PlanDocument): void {
  if (document.madeFrom !== fingerprint(scenario))
    process.stderr.write(
      'look at: the plan was made from another picture than this scenario. Give the same --with files as for the plan.\n',
    );
}
