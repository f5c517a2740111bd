import type { Route } from '@drumline/routing';
import type { EndTarget } from '../flight-plan.js';
import type { Scenario } from '../scenario.js';
import type { UnpricedStore } from './cache-stores.js';

/**
 * Worth of a litre missing from the end target, in cents. A plan is judged against the plan made by hand at equal closing
 * stock: there a missing drum is worth the dearest flight that brings one, so that no plan is cheap by leaving it out.
 * Else the operator's figure, else the dearest delivered cost in the territory: full flights to a single strip, by whichever
 * type and base that costs most, fuel and handling included.
 */
export function replacementPerLitre(
  { policy }: Scenario,
  stores: readonly UnpricedStore[],
  routes: readonly Route[],
  mode: EndTarget,
): number {
  const { fillLitres } = policy.drum;
  const dearest = (packsOf: (most: number) => number): number =>
    routes
      .filter(({ stops }) => stops.length === 1)
      .flatMap(({ source, conditions }) =>
        conditions
          .filter(({ legPacks }) => legPacks[0]! > 0)
          .map(
            ({ cost, legPacks }) =>
              (cost / packsOf(legPacks[0]!) + stores[source]!.supply!.packCost) / fillLitres,
          ),
      )
      .reduce((most, cost) => Math.max(most, cost), 0);
  if (mode === 'hand plan') return dearest(() => 1);
  return policy.replacementCostPerLitre ?? dearest((most) => most);
}
