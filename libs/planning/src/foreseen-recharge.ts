import { type Cents, cents } from '@drumline/units';
import type { MoneyParts } from './flight-plan.js';
import type { Programme, Scenario, StandingFlight } from './scenario.js';

/** A flight with what it costs all told. */
export interface CostedFlight extends Pick<StandingFlight, 'stops'> {
  readonly cost: Pick<MoneyParts, 'total' | 'litres'>;
}

/**
 * What a litre is delivered for, in cents, by place: the mean of the flights that bring drums there, by drums; at a pad,
 * that of the strip from which it is slung to, slinging not counted. A place that nothing is flown to is not among them.
 */
export function deliveredCosts(
  flights: readonly CostedFlight[],
  slings: Scenario['slings'],
): ReadonlyMap<string, number> {
  const sums = new Map<string, { readonly drums: number; readonly cost: number }>();
  for (const { stops, cost } of flights) {
    if (cost.litres <= 0) continue;
    for (const { place, drums } of stops) {
      const { drums: before, cost: spent } = sums.get(place) ?? { drums: 0, cost: 0 };
      sums.set(place, { drums: before + drums, cost: spent + (drums * cost.total) / cost.litres });
    }
  }
  const flown = [...sums].flatMap(([place, { drums, cost }]) =>
    drums > 0 ? [[place, cost / drums] as const] : [],
  );
  const costs = new Map(flown);
  for (const { from, to } of slings) {
    const there = costs.get(from);
    if (there !== undefined && !costs.has(to)) costs.set(to, there);
  }
  return costs;
}

/**
 * What would be charged on to a programme for its helicopter tasks, at what fuel is delivered for to the places they draw
 * from. Null: at delivered cost, and not known for one of them. To the nearest cent.
 */
export function foreseenRecharge(
  { code, recharge }: Programme,
  { helicopterTasks }: Pick<Scenario, 'helicopterTasks'>,
  costs: ReadonlyMap<string, number>,
): Cents | null {
  if (recharge.kind === 'not recharged') return cents(0);
  let all = 0;
  for (const { programme, place, litres } of helicopterTasks) {
    if (programme !== code || litres === 0) continue;
    const perLitre = recharge.kind === 'fixed price' ? recharge.centsPerLitre : costs.get(place);
    if (perLitre === undefined) return null;
    all += litres * perLitre;
  }
  return cents(
    Math.round(recharge.kind === 'delivered cost' ? all * (1 + recharge.marginPercent / 100) : all),
  );
}
