import { solve } from '@drumline/routing';
import { litres } from '@drumline/units';
import { describe, expect, it } from 'vitest';
import { buildProblem } from '../problem/build-problem.js';
import { planFromFlights } from '../problem/plan-from-flights.js';
import type { StandingFlight } from '../scenario.js';
import { tinyTerritory } from '../tiny-territory.js';
import { fragilityOf } from './fragility.js';
import { noMoreFragileThanByHand } from './no-more-fragile.js';

const flight = (id: string, date: string, ...stops: [string, number][]): StandingFlight => ({
  id,
  state: 'offered',
  date,
  aircraft: 'T1',
  from: 'HOM',
  stops: stops.map(([place, drums]) => ({ place, drums })),
  to: 'HOM',
});
// The same drums: by hand one flight to each strip; the other way each strip waits for two half days.
const byHand = [flight('H1', '2031-03-03', ['NOR', 4]), flight('H2', '2031-03-04', ['SOU', 4])];
const fragile = [
  flight('P1', '2031-03-03', ['NOR', 2], ['SOU', 2]),
  flight('P2', '2031-03-04', ['NOR', 2], ['SOU', 2]),
];
const base = tinyTerritory({
  handPlan: byHand,
  weather: ['NOR', 'SOU'].map((place) => ({ place, morningCancel: 0.3, afternoonCancel: 0.3 })),
});
// NOR and SOU both need all four drums from day 2 on: with a flight lost they end below critical.
const critical = new Map([
  ['NOR', 1000],
  ['SOU', 550],
]);
const scenario = {
  ...base,
  caches: base.caches.map((cache) => ({
    ...cache,
    minimumLitres: litres(critical.get(cache.place)! + 50),
    criticalLitres: litres(critical.get(cache.place)!),
  })),
};
const solver = (problem: Parameters<typeof solve>[0]) =>
  solve(problem, { seed: 1, budget: { iterations: 100 }, clock: () => 0 });
const never = () => false;

describe('a plan judged against the plan made by hand', () => {
  it('gives way to flights to one strip each where it is the more fragile one', async () => {
    const built = buildProblem({ ...scenario, flights: [] }, 'hand plan', fragile);
    const fragility = fragilityOf(built);
    const cheap = planFromFlights(built, fragile);
    expect(fragility(cheap)).toBeLessThan(1);
    const kept = await noMoreFragileThanByHand(built, cheap, solver, never);
    expect(fragility(kept)).toBeLessThan(fragility(cheap));
  });

  it('stays the plan that was shown where the search is stopped', async () => {
    const built = buildProblem({ ...scenario, flights: [] }, 'hand plan', fragile);
    const cheap = planFromFlights(built, fragile);
    expect(await noMoreFragileThanByHand(built, cheap, solver, () => true)).toBe(cheap);
  });

  it('stays as it is where no hand plan judges it', async () => {
    const built = buildProblem(scenario, 'minimum', fragile);
    const cheap = planFromFlights(built, fragile);
    expect(await noMoreFragileThanByHand(built, cheap, solver, never)).toBe(cheap);
  });
});
