import { solve } from '@drumline/routing';
import { hours, kilograms, litres } from '@drumline/units';
import { describe, expect, it } from 'vitest';
import { planByHand } from './plan-by-hand.js';
import { planScenario } from './plan-scenario.js';
import type { BookedFlight, Scenario } from './scenario.js';
import type { Solver } from './shortages/find-blockers.js';
import { tinyCache, tinyTask, tinyTerritory } from './tiny-territory.js';

const solver: Solver = (problem) => solve(problem, { seed: 1, budget: { iterations: 50 }, clock: () => 0 });
const options = { endTarget: 'minimum', weather: null, isOver: () => false } as const;

const planOf = async (changes: Partial<Scenario> = {}) => {
  const outcome = await planScenario(tinyTerritory(changes), options, solver);
  if (outcome.status === 'infeasible') throw new Error(outcome.reasons.join(' '));
  return outcome.plan;
};

const leg = { passengers: 0, passengersKg: kilograms(0), freightKg: kilograms(100) };
const mail: BookedFlight = {
  id: 'X1',
  date: '2031-03-04',
  aircraft: 'T1',
  configuration: 'drums',
  purpose: 'mail',
  heldHours: hours(2),
  legs: [
    { ...leg, from: 'HOM', to: 'NOR' },
    { ...leg, from: 'NOR', to: 'HOM' },
  ],
};

describe('planning a scenario', () => {
  it('order of aims: flies to the strips that would fall below minimum, and to no other', async () => {
    // NOR: 800 L less 500 L on day 2; SOU: 600 L less 300 L on day 3; each wants 400 L.
    const plan = await planOf();
    expect(plan.shortages).toEqual([]);
    expect(plan.flights.map(({ stops }) => stops.map(({ place }) => place))).toEqual(
      expect.arrayContaining([['NOR'], ['SOU']]),
    );
    expect((await planOf({ helicopterTasks: [] })).flights).toEqual([]);
  });

  it('order of aims: one aeroplane, one flight: the cache near critical comes before the one below minimum', async () => {
    const changes: Partial<Scenario> = {
      caches: [tinyCache('NOR', { criticalLitres: litres(310) }), tinyCache('SOU')],
      helicopterTasks: [tinyTask('2031-03-03', 'NOR', 500), tinyTask('2031-03-03', 'SOU', 400)],
      policy: {
        ...tinyTerritory().policy,
        flyingDay: { ...tinyTerritory().policy.flyingDay, lastLanding: '09:30' },
      },
      noFlyingDays: ['2031-03-04', '2031-03-05', '2031-03-06', '2031-03-07'],
    };
    const plan = await planOf(changes);
    expect(plan.flights.map(({ stops }) => stops[0]!.place)).toEqual(['NOR']);
    expect(plan.shortages.map(({ place, level }) => `${place} ${level}`)).toContain('SOU below minimum');
  });

  it('an overfull cache gets no drum until it has been drawn down below its capacity', async () => {
    // NOR holds 4 drums on a site for 3; 500 L drawn on Tuesday leave room for one drum and a half from Wednesday on.
    const caches = [
      tinyCache('NOR', { capacityDrums: 3, minimumLitres: litres(500), criticalLitres: litres(100) }),
      tinyCache('SOU'),
    ];
    const plan = await planOf({ caches });
    const landed = plan.flights.flatMap(({ date, stops }) =>
      stops.filter(({ place }) => place === 'NOR').map(({ drums }) => ({ date, drums })),
    );
    expect(landed).toEqual([{ date: expect.stringMatching(/^2031-03-0[5-7]$/), drums: 1 }]);
  });

  it('frozen flights: one that can no longer be flown is marked, listed, and its consequence told', async () => {
    const approved = {
      id: 'A01',
      state: 'approved',
      date: '2031-03-03',
      aircraft: 'T1',
      from: 'HOM',
      stops: [{ place: 'NOR', drums: 4 }],
      to: 'HOM',
      pilot: 'P1',
    } as const;
    const held = { reason: 'water found', by: 'quality', at: '2031-03-03T04:00Z' };
    const [batch] = tinyTerritory().batches;
    const drums = tinyTerritory().drums.map((drum) =>
      drum.place === 'HOM' ? { ...drum, batch: 'BAD' } : drum,
    );
    const batches = [batch!, { ...batch!, id: 'BAD', held }];
    const plan = await planOf({ flights: [approved], drums, batches });
    expect(plan.needsDecision).toMatchObject([
      {
        flight: 'A01',
        fault: { where: 'HOM, Mon 3 Mar', flights: ['A01'] },
        consequence:
          'The stock below counts on its 4 drums. Without it NOR falls below minimum on Tue 4 Mar: 300 L of 400 L.',
      },
    ]);
    const marks = plan.flights.map(({ id, needsDecision }) => [id, needsDecision !== null]);
    expect(marks.filter(([, marked]) => marked)).toEqual([['A01', true]]);
    expect((await planOf({ flights: [approved] })).needsDecision).toEqual([]);
  });

  it('an aircraft that broke down: what was booked on it is marked, carries no drum, and nothing else flies on it', async () => {
    const [aircraft] = tinyTerritory().aircraft;
    const absences = [{ from: '2031-03-03', until: '2031-03-04', reason: 'starter generator' }];
    const plan = await planOf({ aircraft: [{ ...aircraft!, absences }], bookedFlights: [mail] });
    expect(plan.flights.filter(({ drums }) => drums > 0).map(({ date }) => date)).not.toEqual([]);
    expect(plan.flights.filter(({ date }) => date <= '2031-03-04')).toMatchObject([
      { id: 'X1', drums: 0, needsDecision: expect.stringContaining('T1 is away: starter generator.') },
    ]);
  });

  it('a strip limit taken out: what was booked there is marked and carries no drum there', async () => {
    const stripLimits = tinyTerritory().stripLimits.filter(({ place }) => place !== 'NOR');
    const plan = await planOf({ stripLimits, bookedFlights: [mail] });
    expect(plan.flights.find(({ id }) => id === 'X1')).toMatchObject({
      drums: 0,
      needsDecision: expect.stringContaining('Type T is not approved at NOR.'),
    });
    const landed = plan.flights.flatMap(({ stops }) => stops.filter(({ drums }) => drums > 0));
    expect(landed.map(({ place }) => place)).toEqual(['SOU']);
  });

  it('says what is missing where the end targets are to come from a hand plan and there is none', async () => {
    const outcome = await planScenario(tinyTerritory(), { ...options, endTarget: 'hand plan' }, solver);
    expect(outcome).toMatchObject({
      status: 'infeasible',
      reasons: [expect.stringContaining('choose "operator"')],
    });
  });

  it('says on which day a booked flight has no pilot with the hours', async () => {
    const [pilot] = tinyTerritory().pilots;
    const tired = { ...pilot!, flown: [{ date: '2031-03-02', blockHours: hours(31.5) }] };
    const scenario = tinyTerritory({ pilots: [tired], bookedFlights: [mail] });
    expect(await planScenario(scenario, options, solver)).toEqual({
      status: 'infeasible',
      reasons: ['Tue 4 Mar: no pilots with the hours for X1: free a pilot, or move a flight.'],
    });
  });

  it('gives no gap where the bound of the solver is below zero', async () => {
    const hasty: Solver = async (problem, effort) => {
      const outcome = await solver(problem, effort);
      return outcome.status === 'solved' ? { ...outcome, proof: { ...outcome.proof, bound: -1 } } : outcome;
    };
    const outcome = await planScenario(tinyTerritory(), options, hasty);
    expect(outcome).toMatchObject({ status: 'solved', plan: { proof: { bound: null, gap: null } } });
  });

  it('adds up: the money of the plan is that of the problem, the bound apart', async () => {
    const plan = await planOf();
    expect(plan.cost.total).toBe(plan.tiers.travel + plan.tiers.packs);
    expect(plan.proof.objective).toBe(plan.tiers.total);
  });
});

describe('a plan made by hand', () => {
  it('keeps its ids, gets pilots, and is told what it breaks', () => {
    const stops = [{ place: 'NOR', drums: 5 }];
    const flight = {
      state: 'offered',
      date: '2031-03-03',
      aircraft: 'T1',
      from: 'HOM',
      stops,
      to: 'HOM',
    } as const;
    const handPlan = [
      { ...flight, id: 'H1', stops: [{ place: 'NOR', drums: 4 }] },
      { ...flight, id: 'H2' },
    ];
    const { plan, faults } = planByHand(tinyTerritory({ handPlan }), options);
    expect(plan.flights.map(({ id, pilot }) => `${id} ${pilot}`)).toEqual(['H1 P1', 'H2 P1']);
    expect(faults.map(({ where }) => where).join()).toContain('H2');
  });

  it('is told of every flight on an aircraft that broke down, and none is planned for it', () => {
    const [aircraft] = tinyTerritory().aircraft;
    const absences = [{ from: '2031-03-03', until: '2031-03-03', reason: 'starter generator' }];
    const handPlan = [
      {
        id: 'H1',
        state: 'offered',
        date: '2031-03-03',
        aircraft: 'T1',
        from: 'HOM',
        to: 'HOM',
        stops: [{ place: 'NOR', drums: 4 }],
      },
    ] as const;
    const { faults } = planByHand(
      tinyTerritory({ aircraft: [{ ...aircraft!, absences }], handPlan }),
      options,
    );
    expect(faults.map(({ what }) => what)).toContain('T1 is away: starter generator.');
  });
});
