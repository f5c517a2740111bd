import type { FlightPlan } from '@drumline/planning';
import { cents, litres, print, printNumber } from '@drumline/units';
import { table } from './table.js';
import { percent, price, wholeMoney } from './words.js';

type Row = readonly [head: string, cell: (plan: FlightPlan) => string];

/** Plans beside each other: cost in three parts, litres landed, closing stock, gap and the chance of going critical. */
export function planColumns(
  plans: readonly { readonly name: string; readonly plan: FlightPlan }[],
): string[] {
  const { currency } = plans[0]!.plan;
  const haveChanges = plans.some(({ plan }) => plan.tiers.changes > 0);
  const rows = [...moneyRows(currency, haveChanges), ...stockRows(currency), ...weatherRows];
  return table(
    [{ head: '' }, ...plans.map(({ name }) => ({ head: name, align: 'right' as const }))],
    rows.map(([head, cell]) => [head, ...plans.map(({ plan }) => cell(plan))]),
  );
}

function moneyRows(currency: string, haveChanges: boolean): Row[] {
  const changes: Row = [
    'price of changes to the standing plan, beside the total',
    (plan) => wholeMoney(cents(plan.tiers.changes), currency),
  ];
  return [
    ['flight, own fuel included', (plan) => wholeMoney(plan.cost.flight, currency)],
    ['fuel in the drums', (plan) => wholeMoney(plan.cost.fuel, currency)],
    ['handling', (plan) => wholeMoney(plan.cost.handling, currency)],
    ['total', (plan) => wholeMoney(plan.cost.total, currency)],
    ...(haveChanges ? [changes] : []),
    ['gap, of the total', gapText],
  ];
}

function stockRows(currency: string): Row[] {
  const closing = (plan: FlightPlan) => plan.caches.reduce((sum, cache) => sum + cache.usable.at(-1)!, 0);
  const positioning = (plan: FlightPlan) => plan.flights.filter(({ kind }) => kind === 'positioning').length;
  return [
    ['litres landed', (plan) => print(plan.cost.litres, 'L')],
    ['delivered cost', (plan) => price(plan.cost.perLitre, currency)],
    ['closing stock, all caches', (plan) => print(litres(closing(plan)), 'L')],
    ['positioning flights', (plan) => printNumber(positioning(plan))],
  ];
}

const ofRisk =
  (cell: (risk: NonNullable<FlightPlan['risk']>) => string): Row[1] =>
  ({ risk }) =>
    risk === null ? '-' : cell(risk);

const weatherRows: Row[] = [
  [
    'a cache falls below critical, morning odds',
    ofRisk((risk) => `${percent(risk.allMorning.belowCritical)} of ${printNumber(risk.fortnights)} runs`),
  ],
  ["the same, odds of each flight's half day", ofRisk((risk) => percent(risk.belowCritical))],
  ['drums expected to land, morning odds', ofRisk((risk) => printNumber(risk.allMorning.expectedDrums, 1))],
  ["the same, odds of each flight's half day", ofRisk((risk) => printNumber(risk.expectedDrums, 1))],
];

/** "at most 1.9 %": of the plan's total in flight, fuel and handling, among plans with no more shortage, on the routes looked at. */
export function gapText({ moneyGap }: FlightPlan): string {
  if (moneyGap === null) return 'not known';
  return moneyGap.share < 5e-6 ? 'proven cheapest' : `at most ${percent(moneyGap.share, 2)}`;
}

/** What is known of cheaper plans, as a sentence. */
export function floorText(plan: FlightPlan): string {
  const { moneyGap, currency } = plan;
  if (moneyGap === null) return 'How much cheaper a plan could be is not known.';
  if (moneyGap.share < 5e-6)
    return 'No plan on the routes looked at is cheaper with no more shortage: proven.';
  return `On the routes looked at, with no more shortage, at most ${wholeMoney(moneyGap.savedAtMost, currency)} could be saved: the gap is ${gapText(plan)} of ${wholeMoney(plan.cost.total, currency)}.`;
}

/** The caches that the drawn weather brings below critical most often. */
export function fragileCaches({ risk }: FlightPlan): string[] {
  const worst = [...(risk?.byCache ?? [])]
    .filter(({ belowCritical }) => belowCritical > 0)
    .sort((a, b) => b.belowCritical - a.belowCritical)
    .slice(0, 5);
  if (worst.length === 0) return [];
  const shares = worst.map(({ place, belowCritical }) => `${place} ${percent(belowCritical)}`).join(', ');
  return [`Below critical most often, in the first plan: ${shares}.`];
}
