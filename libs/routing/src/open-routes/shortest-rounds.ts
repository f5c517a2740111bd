import type { OpenProblem } from './open-problem.js';

/** A round through a set of sites, base to base. */
export interface Round {
  /** Bit `i` stands for site `i`. */
  readonly set: number;
  /** Sites in the order of the shortest round. */
  readonly stops: readonly number[];
  /** Cents. */
  readonly cost: number;
}

/**
 * The shortest round of every non-empty set of sites, by dynamic programming on (set, last stop) (Held and Karp 1962,
 * Bellman 1962): round `set - 1` is that of `set`. For up to about a dozen sites: time and room double with each.
 */
export function shortestRounds({ sites, travelCost }: Pick<OpenProblem, 'sites' | 'travelCost'>): Round[] {
  const count = sites.length;
  const length = new Float64Array(count << count).fill(Number.POSITIVE_INFINITY);
  const previous = new Int8Array(count << count).fill(-1);
  for (let set = 1; set < 1 << count; set++)
    for (let last = 0; last < count; last++) {
      if (!(set & (1 << last))) continue;
      const rest = set & ~(1 << last);
      const label = set * count + last;
      if (rest === 0) length[label] = travelCost[0][last + 1];
      for (let before = 0; before < count; before++) {
        if (!(rest & (1 << before))) continue;
        const through = length[rest * count + before] + travelCost[before + 1][last + 1];
        if (through >= length[label]) continue;
        length[label] = through;
        previous[label] = before;
      }
    }
  return Array.from({ length: (1 << count) - 1 }, (_, at) => roundOf(at + 1));

  function roundOf(set: number): Round {
    let last = -1;
    let cost = Number.POSITIVE_INFINITY;
    for (let site = 0; site < count; site++) {
      if (!(set & (1 << site))) continue;
      const home = length[set * count + site] + travelCost[site + 1][0];
      if (home >= cost) continue;
      cost = home;
      last = site;
    }
    const stops: number[] = [];
    for (let left = set; last >= 0; ) {
      stops.unshift(last);
      const before = previous[left * count + last];
      left &= ~(1 << last);
      last = before;
    }
    return { set, stops, cost };
  }
}
