import {
  comparePlans,
  type FlightChange,
  type FlightPlan,
  type PlanDifference,
  type PlannedFlight,
} from '@drumline/planning';
import { print, printNumber } from '@drumline/units';
import { loadPlan } from '../load-plan.js';
import { routeText } from '../output/flights.js';
import { table } from '../output/table.js';
import { countOf, price, printDay, wholeMoney } from '../output/words.js';
import { writeAnswer } from '../output/write-answer.js';

/** `drumline diff`: what a re-plan changes, before anything is accepted. */
export function diff(before: string, after: string, options: { readonly json?: boolean }): void {
  const plans = { before: loadPlan(before), after: loadPlan(after) };
  const difference = comparePlans(plans.before, plans.after);
  writeAnswer(
    options,
    () => difference,
    () => differenceLines(difference, plans.after),
  );
}

function differenceLines(difference: PlanDifference, { currency }: FlightPlan): string[] {
  const { removed, added, moved, drumsChanged, same, totals, lowest } = difference;
  const beforeAfter = (word: string, text: (totals: PlanDifference['totals']['before']) => string) => [
    word,
    text(totals.before),
    text(totals.after),
  ];
  return [
    ...group('Removed', removed, flightLine),
    ...group('Added', added, flightLine),
    ...group('Moved (other day or aircraft)', moved, changeLine),
    ...group('Drums changed', drumsChanged, changeLine),
    ...group('Same', same, sameLine),
    ...table(
      [{ head: '' }, { head: 'before', align: 'right' }, { head: 'after', align: 'right' }],
      [
        beforeAfter('flights', (plan) => printNumber(plan.flights)),
        beforeAfter('drums', (plan) => printNumber(plan.drums)),
        beforeAfter('litres landed', (plan) => print(plan.litres, 'L')),
        beforeAfter('block hours', (plan) => print(plan.blockHours, 'h', 1)),
        beforeAfter('flight cost', (plan) => wholeMoney(plan.cost.flight, currency)),
        beforeAfter('fuel cost', (plan) => wholeMoney(plan.cost.fuel, currency)),
        beforeAfter('handling cost', (plan) => wholeMoney(plan.cost.handling, currency)),
        beforeAfter('total cost', (plan) => wholeMoney(plan.cost.total, currency)),
        beforeAfter('delivered cost', (plan) => price(plan.cost.perLitre, currency)),
        ...totals.before.drumsFromBase.map(({ place, drums }, i) => [
          `drums from ${place}`,
          printNumber(drums),
          printNumber(totals.after.drumsFromBase[i]?.drums ?? 0),
        ]),
      ],
    ),
    '',
    'Lowest level of each cache with every flight, later ideas too, usable litres:',
    ...table(
      [
        { head: 'cache' },
        { head: 'before', align: 'right' },
        { head: 'after', align: 'right' },
        { head: 'minimum', align: 'right' },
        { head: 'critical', align: 'right' },
      ],
      lowest.map((row) => [
        row.place,
        printNumber(row.beforeLitres),
        printNumber(row.afterLitres),
        printNumber(row.minimumLitres),
        printNumber(row.criticalLitres),
      ]),
    ),
  ];
}

function group<T>(head: string, items: readonly T[], line: (item: T) => string): string[] {
  return [
    `${head}: ${items.length === 0 ? 'none' : printNumber(items.length)}`,
    ...items.map((item) => `  ${line(item)}`),
    '',
  ];
}

function flightLine(flight: PlannedFlight): string {
  return `${flight.id}  ${printDay(flight.date)}  ${flight.aircraft}  ${routeText(flight)}  ${countOf(flight.drums, 'drum')}  ${flight.state}`;
}

/** A flight that is the same may still have another pilot. */
function sameLine({ before, after }: FlightChange): string {
  const pilot =
    before.pilot === after.pilot ? '' : `  (pilot ${after.pilot ?? 'none'}, was ${before.pilot ?? 'none'})`;
  return `${flightLine(after)}${pilot}`;
}

function changeLine({ before, after }: FlightChange): string {
  const was = [
    before.date === after.date ? '' : printDay(before.date),
    before.aircraft === after.aircraft ? '' : before.aircraft,
    before.drums === after.drums ? '' : countOf(before.drums, 'drum'),
  ].filter((part) => part !== '');
  return `${flightLine(after)}  (was ${before.id}${was.length > 0 ? `: ${was.join(', ')}` : ''})`;
}
