import {
  asStandingFlight,
  type EndTarget,
  type FlightPlan,
  planByHand,
  planScenario,
  type Solver,
} from '@drumline/planning';
import { solve } from '@drumline/routing';
import { describe, expect, it } from 'vitest';
import { hollowtarn, softMorning } from './hand-plan.js';

const scenario = hollowtarn();
const weather = { fortnights: 4000, seed: 1 };
const credits = (cents: number) => cents / 100;

/** A budget of rounds, not of time: the same plan on every machine. */
const solver: Solver = (problem, effort) =>
  solve(problem, { seed: 1, budget: { iterations: effort === 'full' ? 1500 : 100 }, clock: () => 0 });

async function planOf(
  endTarget: EndTarget,
  changes: Parameters<typeof hollowtarn>[0] = {},
): Promise<FlightPlan> {
  const options = { endTarget, weather, isOver: () => false };
  const outcome = await planScenario(hollowtarn(changes), options, solver);
  if (outcome.status === 'infeasible') throw new Error(outcome.reasons.join(' '));
  return outcome.plan;
}

const shortages = ({ shortages }: FlightPlan) =>
  shortages.map(({ place, day, level, litres, limitLitres }) => [place, day, level, litres, limitLitres]);
const unavoidable = [
  ['XKNA', 0, 'below minimum', 720, 800],
  ['XMAR', 3, 'below minimum', 375, 400],
];

const byHand = planByHand(scenario, { endTarget: 'hand plan', weather });

describe('the plan made by hand, costed and checked by the same rules', () => {
  it('breaks no rule and costs 55,218 cr from rounded distances, within 3 cr a flight', () => {
    expect(byHand.faults).toEqual([]);
    expect(Math.abs(credits(byHand.plan.cost.total) - 55_218)).toBeLessThan(3 * byHand.plan.flights.length);
    expect(byHand.plan.cost).toMatchObject({ fuel: 3_254_000, handling: 65_700 });
  });

  it('is short at XKNA before day 1 and at XMAR on day 3, and nowhere else', () => {
    expect(shortages(byHand.plan)).toEqual(unavoidable);
  });
});

describe('a plan with the closing stock of the hand plan', async () => {
  const plan = await planOf('hand plan');

  it('costs at most 53,000 cr, falls short nowhere else, and leaves as much in every cache', () => {
    expect(credits(plan.cost.total)).toBeLessThanOrEqual(53_000);
    expect(shortages(plan)).toEqual(unavoidable);
    for (const [i, { usable }] of plan.caches.entries())
      expect(usable.at(-1)).toBeGreaterThanOrEqual(byHand.plan.caches[i]!.usable.at(-1)!);
  });

  it('says why the two shortages stay', () => {
    expect(plan.shortages.map(({ blockedBy }) => blockedBy)).toEqual([
      'nothing that a plan decides: it is short before the first day.',
      'the slings, no aeroplane brings drums there: the next one is planned for Thu 17 Jun.',
    ]);
  });

  it('chance of falling below critical: is no higher than that of the hand plan', () => {
    expect(plan.risk!.belowCritical).toBeLessThanOrEqual(byHand.plan.risk!.belowCritical);
  });
});

describe('a plan that only keeps the minimums', () => {
  it('costs at most 45,000 cr and falls short nowhere else', async () => {
    const plan = await planOf('minimum');
    expect(credits(plan.cost.total)).toBeLessThanOrEqual(45_000);
    expect(shortages(plan)).toEqual(unavoidable);
  });
});

describe('the plan made again on the second morning, XLOR and XHAS soft', async () => {
  const flown = ['F01', 'F02', 'F03', 'F04'];
  const flights = byHand.plan.flights
    .map(asStandingFlight)
    .filter(({ id }) => id.startsWith('F'))
    .map(({ departs: _, ...flight }) =>
      flown.includes(flight.id) ? ({ ...flight, state: 'reported' } as const) : flight,
    );
  const plan = await planOf('hand plan', { ...softMorning, flights });
  const again = plan.flights.map(asStandingFlight);

  it('frozen flights: keep aircraft, pilot, stops and drums', () => {
    for (const flight of flights.filter(({ id }) => flown.includes(id)))
      expect(again.find(({ id }) => id === flight.id)).toMatchObject(flight);
  });

  it('while XLOR is soft nothing lands more than four drums there: F05 and F08 with six do not fly on those days, and no minimum more is missed', () => {
    const onSoftDays = again.filter(({ date }) => date === '2027-06-15' || date === '2027-06-16');
    const landed = onSoftDays.flatMap(({ stops }) => stops.filter(({ place }) => place === 'XLOR'));
    expect(landed.length).toBeGreaterThan(0);
    expect(Math.max(...landed.map(({ drums }) => drums))).toBeLessThanOrEqual(4);
    expect(onSoftDays.filter(({ id }) => id === 'F05' || id === 'F08')).toEqual([]);
    expect(shortages(plan).filter(([, , level]) => level !== 'short of the end target')).toEqual(unavoidable);
  });

  it('offered flights stay as they were unless a change is worth its price', () => {
    const kept = plan.flights.filter(({ id }) => id.startsWith('F') && !flown.includes(id));
    expect(kept.length).toBeGreaterThanOrEqual(8);
  });
});
