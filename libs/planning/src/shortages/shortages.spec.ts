import { solve } from '@drumline/routing';
import { nauticalMiles } from '@drumline/units';
import { describe, expect, it } from 'vitest';
import { projectScenario } from '../flights/project.js';
import { planScenario } from '../plan-scenario.js';
import { buildProblem } from '../problem/build-problem.js';
import type { Scenario } from '../scenario.js';
import { tinyCache, tinyDrums, tinyPlace, tinyTask, tinyTerritory } from '../tiny-territory.js';
import { findBlockers, type Solver } from './find-blockers.js';
import { findShortages } from './find-shortages.js';

const solver: Solver = (problem) => solve(problem, { seed: 1, budget: { iterations: 30 }, clock: () => 0 });

/** NOR stands at 800 L with a minimum of 400 L and a critical level of 200 L. */
const shortOf = (changes: Partial<Scenario>, target = 0) => {
  const [nor] = projectScenario(tinyTerritory(changes), []);
  return findShortages([nor!], [target]).map(({ day, level, litres, limitLitres }) => [
    day,
    level,
    litres,
    limitLitres,
  ]);
};

describe('shortages', () => {
  it('begin on the first day below a level, and again where it gets worse', () => {
    const helicopterTasks = [tinyTask('2031-03-04', 'NOR', 500), tinyTask('2031-03-06', 'NOR', 150)];
    expect(shortOf({ helicopterTasks })).toEqual([
      [2, 'below minimum', 300, 400],
      [4, 'below critical', 150, 200],
    ]);
  });

  it('name what a draw asked for and did not get', () => {
    const helicopterTasks = [tinyTask('2031-03-04', 'NOR', 900)];
    expect(shortOf({ helicopterTasks })[0]).toEqual([2, 'run out', 800, 900]);
  });

  it('name a cache that was short before the first day', () => {
    expect(shortOf({ drums: tinyDrums('NOR', 1, 100), helicopterTasks: [] })).toEqual([
      [0, 'below minimum', 200, 400],
    ]);
  });

  it('name the end target where no level is short', () => {
    expect(shortOf({ helicopterTasks: [] }, 1000)).toEqual([[5, 'short of the end target', 800, 1000]]);
  });
});

/** What blocks the shortages of the best plan. */
const blockedBy = async (changes: Partial<Scenario>) => {
  const options = { endTarget: 'minimum', weather: null, isOver: () => false } as const;
  const outcome = await planScenario(tinyTerritory(changes), options, solver);
  if (outcome.status === 'infeasible') throw new Error(outcome.reasons.join(' '));
  return outcome.plan.shortages.map(({ place, day, blockedBy }) => `${place} day ${day}: ${blockedBy}`);
};
const thirsty = { helicopterTasks: [tinyTask('2031-03-03', 'NOR', 500)] };

describe('what blocks a shortage', () => {
  it('is nothing where a flight comes in time', async () => {
    expect(await blockedBy(thirsty)).toEqual([]);
  });

  it('the pilots, where nobody is on duty', async () => {
    const pilots = [{ ...tinyTerritory().pilots[0]!, daysOff: ['2031-03-03'] }];
    expect(await blockedBy({ ...thirsty, pilots })).toEqual(['NOR day 1: In the way: the pilots at hand.']);
  });

  it('the drums at the base, where none is filled', async () => {
    const drums = [...tinyDrums('NOR', 4, 100), ...tinyDrums('SOU', 3, 200)];
    expect(await blockedBy({ ...thirsty, drums })).toEqual([
      'NOR day 1: In the way: the drums ready at the bases.',
    ]);
  });

  it('the aircraft, where it is absent', async () => {
    const absences = [{ from: '2031-03-03', until: '2031-03-03', reason: 'check' }];
    const aircraft = [{ tail: 'T1', type: 'T', home: 'HOM', absences }];
    expect(await blockedBy({ ...thirsty, aircraft })).toEqual([
      'NOR day 1: In the way: the aircraft at hand.',
    ]);
  });

  it('a notice, where the strip is closed', async () => {
    const notices: Scenario['notices'] = [
      {
        id: 'N1',
        places: ['NOR'],
        from: '2031-03-03T00:00Z',
        until: '2031-03-03T23:00Z',
        source: 'office',
        text: '',
      },
    ];
    expect(await blockedBy({ ...thirsty, notices })).toEqual([
      'NOR day 1: In the way: closures, no-flying days or soft strips.',
    ]);
  });

  it('the hands at the strip, and the size of the site', async () => {
    const [home, nor, sou] = tinyTerritory().places;
    const places = [home!, { ...nor!, landingCapacityDrumsPerDay: 0 }, sou!];
    expect(await blockedBy({ ...thirsty, places })).toEqual([
      'NOR day 1: In the way: the drums that the strip can unload in a day.',
    ]);
    const caches = [tinyCache('NOR', { capacityDrums: 4 }), tinyCache('SOU')];
    expect(await blockedBy({ ...thirsty, caches })).toEqual([
      'NOR day 1: In the way: the capacity of the site.',
    ]);
  });

  it('no single limit, where two stand in the way', async () => {
    const drums = [...tinyDrums('NOR', 4, 100), ...tinyDrums('SOU', 3, 200)];
    const [blocked] = await blockedBy({ ...thirsty, drums, noFlyingDays: ['2031-03-03'] });
    expect(blocked).toContain('No single limit was found');
  });

  it('slings alone, where no aeroplane lands', async () => {
    const pad = tinyPlace('PAD', 61, { kind: 'pad', stripClass: null, runway: null });
    const changes = {
      places: [...tinyTerritory().places, pad],
      caches: [...tinyTerritory().caches, tinyCache('PAD')],
      drums: [...tinyTerritory().drums, ...tinyDrums('PAD', 3, 400)],
      helicopterTasks: [tinyTask('2031-03-03', 'PAD', 300)],
      slings: [
        {
          date: '2031-03-05',
          helicopter: 'H',
          from: 'NOR',
          to: 'PAD',
          drums: 2,
          distanceNm: nauticalMiles(12),
        },
      ],
    };
    expect(await blockedBy(changes)).toContain(
      'PAD day 1: No aeroplane brings drums there, only slings do: the next one is planned for Wed 5 Mar.',
    );
  });

  it('is not looked for once the time is up', async () => {
    const scenario = tinyTerritory(thirsty);
    const built = buildProblem(scenario, 'minimum');
    const shortfalls = findShortages(projectScenario(scenario, []), [0, 0]);
    const never: Solver = () => Promise.reject(new Error('asked for a solve'));
    const blocked = await findBlockers(built, shortfalls, never, () => true);
    expect(blocked.every(({ by }) => by.length === 0)).toBe(true);
  });
});
