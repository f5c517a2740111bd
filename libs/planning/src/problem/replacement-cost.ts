import type { Route } from '@drumline/routing';
import type { Scenario } from '../scenario.js';
import type { UnpricedStore } from './cache-stores.js';

/**
 * Worth of a litre missing from the end target, in cents: the operator's figure, else the dearest delivered cost in
 * the territory: full flights to a single strip, by whichever type and base that costs most, fuel and handling included.
 */
export function replacementPerLitre(
  { policy }: Scenario,
  stores: readonly UnpricedStore[],
  routes: readonly Route[],
): number {
  const { fillLitres } = policy.drum;
  const delivered = routes
    .filter(({ stops }) => stops.length === 1)
    .flatMap(({ source, conditions }) =>
      conditions
        .filter(({ legPacks }) => legPacks[0]! > 0)
        .map(({ cost, legPacks }) => (cost / legPacks[0]! + stores[source]!.supply!.packCost) / fillLitres),
    );
  return policy.replacementCostPerLitre ?? delivered.reduce((dearest, cost) => Math.max(dearest, cost), 0);
}
