import type { OpenProblem } from '../open-routes/open-problem.js';
import { pick, type Random } from '../random.js';

/** A small open problem, by chance: tight or loose, feasible or not; travel dearer one way than the other. */
export function randomOpenProblem(
  random: Random,
  size: { sites: number; days: number; demand: number; vehicles: number },
): OpenProblem {
  const { days, sites, demand, vehicles } = size;
  const some = (count: number) => Array.from({ length: count }, () => random());
  const byDay = (most: number) => some(days).map((at) => Math.floor(at * (most + 1)));
  return {
    days,
    fleet: { vehicles: 1 + pick(random, vehicles), capacity: 1 + pick(random, sites * demand) },
    base: {
      opening: pick(random, sites * demand + 1),
      production: byDay(sites * demand),
      holdingCost: pick(random, 5),
    },
    sites: some(sites).map((_, site) => {
      const maximum = demand + pick(random, demand + 1);
      const minimum = pick(random, 2);
      return {
        id: `site ${site}`,
        opening: pick(random, maximum + 1),
        demand: byDay(demand - minimum),
        minimum,
        maximum,
        holdingCost: pick(random, 5),
      };
    }),
    travelCost: Array.from({ length: sites + 1 }, (_, from) =>
      Array.from({ length: sites + 1 }, (_, to) => (from === to ? 0 : 10 + pick(random, 90))),
    ),
  };
}
