import type { FlightPlan } from '@drumline/planning';
import type { CacheProjection } from '@drumline/stock';
import { printNumber } from '@drumline/units';
import { levelGraph } from './level-graph.js';
import { table } from './table.js';
import { countOf } from './words.js';

/** The stock picture by cache: opening, lowest and closing usable litres, the first bad days, and a line of levels. */
export function cacheLines(caches: readonly CacheProjection[]): string[] {
  const days = (caches[0]?.usable.length ?? 1) - 1;
  const rows = caches.map((cache) => [
    cache.place,
    printNumber(cache.usable[0]!),
    printNumber(cache.book[0]!),
    printNumber(Math.min(...cache.usable)),
    printNumber(cache.usable.at(-1)!),
    printNumber(cache.minimumLitres),
    printNumber(cache.criticalLitres),
    printNumber(cache.reserveLitres),
    dayOr(cache.belowMinimumDay),
    dayOr(cache.belowCriticalDay),
    dayOr(cache.runOutDay),
    levelGraph(cache.usable, {
      minimum: cache.minimumLitres,
      critical: cache.criticalLitres,
      capacity: cache.capacityLitres,
    }),
  ]);
  return [
    ...table(
      [
        { head: 'cache' },
        { head: 'usable L', align: 'right' },
        { head: 'book L', align: 'right' },
        { head: 'lowest L', align: 'right' },
        { head: 'closing L', align: 'right' },
        { head: 'minimum L', align: 'right' },
        { head: 'critical L', align: 'right' },
        { head: 'reserve L', align: 'right' },
        { head: 'below min', align: 'right' },
        { head: 'below crit', align: 'right' },
        { head: 'run out', align: 'right' },
        { head: `day 0 to ${days}` },
      ],
      rows,
    ),
    'Graph: height is usable against capacity; m below minimum, c below critical, 0 run out. Day 0 is the opening.',
  ];
}

const dayOr = (day: number | null): string => (day === null ? '-' : day === 0 ? 'opening' : `day ${day}`);

/** What each base gave: drums, own fuel, and what is left. */
export function baseLines(plan: FlightPlan): string[] {
  return table(
    [
      { head: 'base' },
      { head: 'drums taken', align: 'right' },
      { head: 'of drums ready', align: 'right' },
      { head: 'own fuel L', align: 'right' },
      { head: 'left L', align: 'right' },
      { head: 'note' },
    ],
    plan.bases.map((base) => [
      base.place,
      printNumber(base.drumsTaken),
      printNumber(base.drumsReady),
      printNumber(base.ownFuelLitres),
      printNumber(base.leftLitres),
      base.note ?? '',
    ]),
  );
}

/** Shortages that the plan could not avoid, each with what stands in the way. */
export function shortageLines(plan: FlightPlan): string[] {
  if (plan.shortages.length === 0) return ['None: every cache stays at or above its minimum.'];
  return plan.shortages.map(({ text, blockedBy }) => `${text} Blocked by: ${blockedBy}`);
}

/** "16 flights, 73 drums". */
export function totalsLine(plan: FlightPlan): string {
  const flying = plan.flights.filter((flight) => flight.kind === 'positioning');
  const drums = plan.flights.reduce((sum, flight) => sum + flight.drums, 0);
  return `${countOf(flying.length, 'positioning flight')}, ${countOf(drums, 'drum')}`;
}
