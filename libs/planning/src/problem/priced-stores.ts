import type { BookedRoute, Route, Store } from '@drumline/routing';
import type { EndTarget } from '../flight-plan.js';
import type { Scenario } from '../scenario.js';
import type { UnpricedStore } from './cache-stores.js';
import { cushionOf, cushionPerLitreDay } from './cushion.js';
import { endTargets } from './end-targets.js';
import { dearestChange, largestLoad, smallestShortage, storePrices } from './prices.js';
import { replacementPerLitre } from './replacement-cost.js';

const free = { unmet: 0, belowMinimum: 0, belowCritical: 0, belowCushion: 0, belowEndTarget: 0 };

/**
 * The stores with what each cache is to hold at the end, and the prices of falling short. A cache that no route reaches
 * (a pad) has no price: what no flight can change would only blur how near to the best a plan is.
 */
export function pricedStores(
  scenario: Scenario,
  stores: readonly UnpricedStore[],
  routes: readonly Route[],
  booked: readonly BookedRoute[],
  mode: EndTarget,
): readonly Store[] {
  const packSize = scenario.policy.drum.fillLitres;
  const replacement = replacementPerLitre(scenario, stores, routes, mode);
  const prices = storePrices({
    days: scenario.days,
    dearestChange: dearestChange(routes, packSize, replacement, scenario.policy.changePrice),
    smallestShortage: smallestShortage(stores, packSize),
    largestLoad: largestLoad(routes, packSize),
    totalDemand: stores.flatMap(({ demand }) => demand).reduce((sum, litres) => sum + litres, 0),
    replacementPerLitre: replacement,
    cushionPerLitreDay,
  });
  const targets = new Map(endTargets(scenario, mode).map((target, i) => [scenario.caches[i]!.place, target]));
  const reached = new Set([...routes, ...booked].flatMap(({ stops }) => stops));
  return stores.map((store, index) => {
    const endTarget = targets.get(store.id);
    return endTarget === undefined
      ? { ...store, endTarget: 0, cushion: 0, prices: free }
      : { ...store, endTarget, cushion: cushionOf(store), prices: reached.has(index) ? prices : free };
  });
}
