import type { FlightPlan } from '@drumline/planning';
import { printNumber } from '@drumline/units';
import { table } from './table.js';
import { percent, price, wholeMoney } from './words.js';

/** Plans beside each other: cost in three parts, litres landed, closing stock, gap and the chance of going critical. */
export function planColumns(
  plans: readonly { readonly name: string; readonly plan: FlightPlan }[],
): string[] {
  const currency = plans[0]!.plan.currency;
  const closing = (plan: FlightPlan) => plan.caches.reduce((sum, cache) => sum + cache.usable.at(-1)!, 0);
  const rows: [string, (plan: FlightPlan) => string][] = [
    ['flight', (plan) => wholeMoney(plan.cost.flight, currency)],
    ['fuel', (plan) => wholeMoney(plan.cost.fuel, currency)],
    ['handling', (plan) => wholeMoney(plan.cost.handling, currency)],
    ['total', (plan) => wholeMoney(plan.cost.total, currency)],
    ['litres landed', (plan) => `${printNumber(plan.cost.litres)} L`],
    ['delivered cost', (plan) => price(plan.cost.perLitre, currency)],
    ['closing stock, all caches', (plan) => `${printNumber(closing(plan))} L`],
    [
      'positioning flights',
      (plan) => printNumber(plan.flights.filter(({ kind }) => kind === 'positioning').length),
    ],
    ['gap', (plan) => gapText(plan)],
    [
      'chance that a cache falls below critical',
      (plan) =>
        plan.risk === null
          ? '-'
          : `${percent(plan.risk.belowCritical)} of ${printNumber(plan.risk.fortnights)} fortnights`,
    ],
    [
      'the same, all flown in the morning',
      (plan) => (plan.risk === null ? '-' : percent(plan.risk.allMorning.belowCritical)),
    ],
    [
      'drums expected with the weather odds',
      (plan) => (plan.risk === null ? '-' : printNumber(plan.risk.expectedDrums, 1)),
    ],
    [
      'the same, all flown in the morning',
      (plan) => (plan.risk === null ? '-' : printNumber(plan.risk.allMorning.expectedDrums, 1)),
    ],
  ];
  return table(
    [{ head: '' }, ...plans.map(({ name }) => ({ head: name, align: 'right' as const }))],
    rows.map(([head, cell]) => [head, ...plans.map(({ plan }) => cell(plan))]),
  );
}

/** "at most 1.9 %": of the money, among plans with no more shortage, on the routes looked at. */
export function gapText({ moneyGap }: FlightPlan): string {
  if (moneyGap === null) return 'no bound';
  return moneyGap.atMostShare < 5e-6 ? 'proven cheapest' : `at most ${percent(moneyGap.atMostShare, 2)}`;
}

/** What is known of cheaper plans, as a sentence. */
export function floorText(plan: FlightPlan): string {
  const { moneyGap, currency } = plan;
  if (moneyGap === null) return 'How much cheaper a plan could be is not known.';
  return `No plan on the routes looked at, with no more shortage, costs less than ${wholeMoney(moneyGap.noLessThan, currency)}: gap ${gapText(plan)}.`;
}
