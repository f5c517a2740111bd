import type { PlanDocument } from '@drumline/contract';
import type { Scenario } from '@drumline/planning';
import { printNumber } from '@drumline/units';
import { baseLines, cacheLines, shortageLines, totalsLine } from './caches.js';
import { cautions } from './cautions.js';
import { floorText, fragileCaches, planColumns } from './costs.js';
import { flightLines } from './flights.js';
import { localText, printDay } from './words.js';

/** The report of `drumline plan`: flights, stock, bases, shortages, plans beside each other, cautions. */
export function planLines(scenario: Scenario, name: string, { plan, beside }: PlanDocument): string[] {
  const { proof } = plan;
  return [
    `Plan: ${plan.title}`,
    `${printDay(plan.firstDay)} and ${plan.days - 1} days more, the first ${plan.offeredDays} offered. As known on ${localText(scenario.asOf, scenario.timeZone)}. Target: ${name}.`,
    `${totalsLine(plan)}. ${floorText(plan)} (${proof.solver}, ${printNumber(proof.seconds, 1)} s, seed ${proof.seed}.)`,
    ...decisionLines(plan),
    '',
    `FLIGHTS, times local (${scenario.timeZone})`,
    ...flightLines(plan),
    '',
    'STOCK, with these flights flown',
    ...cacheLines(plan.caches),
    '',
    'BASES',
    ...baseLines(plan),
    '',
    'SHORTAGES THAT COULD NOT BE AVOIDED',
    ...shortageLines(plan),
    '',
    'PLANS BESIDE EACH OTHER',
    ...planColumns([{ name, plan }, ...beside]),
    ...fragileCaches(plan),
    '',
    ...(plan.remarks.length === 0 ? [] : ['REMARKS', ...plan.remarks, '']),
    ...cautions,
  ];
}

/** Standing flights that can no longer be flown as they stand: first of all, because somebody must act. */
function decisionLines({ needsDecision }: PlanDocument['plan']): string[] {
  if (needsDecision.length === 0) return [];
  return [
    '',
    'NEEDS A DECISION: flights that stand and can no longer be flown as they stand; the stock below counts their drums',
    ...needsDecision.map(
      ({ flight, fault, consequence }) => `  ${flight}: ${fault.what} ${fault.mend} ${consequence}`,
    ),
  ];
}
