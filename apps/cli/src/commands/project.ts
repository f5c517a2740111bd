import { projectScenario, type Scenario, suggestedMinimums } from '@drumline/planning';
import type { CacheProjection } from '@drumline/stock';
import { print, printNumber } from '@drumline/units';
import { loadScenario, type ScenarioOptions } from '../load-scenario.js';
import { cacheLines } from '../output/caches.js';
import { cautions } from '../output/cautions.js';
import { table } from '../output/table.js';
import { localText, printDay } from '../output/words.js';
import { writeAnswer } from '../output/write-answer.js';

/** `drumline project`: the stock of every cache by day, without deliveries and with the flights that stand. */
export function project(path: string, options: ScenarioOptions & { readonly json?: boolean }): void {
  const scenario = loadScenario(path, options);
  const withoutDeliveries = projectScenario(scenario, []);
  const withStandingFlights = projectScenario(scenario, scenario.flights);
  writeAnswer(
    options,
    () => ({
      withoutDeliveries,
      withStandingFlights,
      suggestedMinimums: suggestedMinimums(scenario, serviceLevel),
    }),
    () => [
      `Stock of ${scenario.title}, as known on ${localText(scenario.asOf, scenario.timeZone)}; litres at the end of each day.`,
      '',
      'WITHOUT DELIVERIES',
      ...cacheLines(withoutDeliveries),
      '',
      'Book, L: every drum at the place less what is drawn; below zero is what is missing.',
      ...levelTable(scenario, withoutDeliveries, 'book'),
      '',
      'Usable, L: the lower of book and count, less held and past retest.',
      ...levelTable(scenario, withoutDeliveries, 'usable'),
      ...(scenario.flights.length === 0
        ? []
        : ['', 'WITH THE FLIGHTS THAT STAND', ...cacheLines(withStandingFlights)]),
      '',
      ...agedOutLines(withoutDeliveries),
      ...suggestionLines(scenario),
      ...cautions,
    ],
  );
}

/** Chance that the stock above the reserve outlasts the wait for a flight. */
const serviceLevel = 0.95;

function suggestionLines(scenario: Scenario): string[] {
  return [
    `SUGGESTED MINIMUM, to outlast the wait for a flight in ${printNumber(serviceLevel * 100)} of 100 cases; the operator's figure decides`,
    ...table(
      [
        { head: 'cache' },
        { head: 'use while waiting', align: 'right' },
        { head: 'safety stock', align: 'right' },
        { head: 'reserve', align: 'right' },
        { head: 'suggested', align: 'right' },
        { head: "operator's", align: 'right' },
      ],
      suggestedMinimums(scenario, serviceLevel).map((cache) => [
        cache.place,
        print(cache.leadTimeUse, 'L'),
        print(cache.safetyStock, 'L'),
        print(cache.reserve, 'L'),
        print(cache.minimum, 'L'),
        print(cache.operatorsLitres, 'L'),
      ]),
    ),
    '',
  ];
}

function levelTable(
  scenario: Scenario,
  caches: readonly CacheProjection[],
  figure: 'book' | 'usable',
): string[] {
  const days = Array.from({ length: scenario.days + 1 }, (_, day) => day);
  return table(
    [{ head: 'cache' }, ...days.map((day) => ({ head: `d${day}`, align: 'right' as const }))],
    caches.map((cache) => [cache.place, ...cache[figure].map((level) => printNumber(level))]),
  );
}

/** Drums in date today but not when the plan would burn them. */
function agedOutLines(caches: readonly CacheProjection[]): string[] {
  const aged = caches.flatMap((cache) => cache.agedOut);
  if (aged.length === 0) return [];
  return [
    'PAST RETEST BEFORE THEY ARE USED (in date today, not when the plan would burn them)',
    ...aged.map(
      (drum) =>
        `${drum.place} drum ${drum.number}: ${printNumber(drum.litres)} L, last day of use ${printDay(drum.retestDue)} (day ${drum.dueDay})`,
    ),
    '',
  ];
}
