import { type Plan, type Problem, solve } from '@drumline/routing';
import { litres, nauticalMiles } from '@drumline/units';
import { describe, expect, it } from 'vitest';
import { projectScenario } from '../flights/project.js';
import { planScenario } from '../plan-scenario.js';
import { buildProblem } from '../problem/build-problem.js';
import type { Scenario } from '../scenario.js';
import { tinyCache, tinyDrums, tinyPlace, tinyTask, tinyTerritory } from '../tiny-territory.js';
import { blockedWords } from './blocked-words.js';
import { findBlockers, type Solver } from './find-blockers.js';
import { findShortages } from './find-shortages.js';

const solver: Solver = (problem, _, from) =>
  solve(problem, { seed: 1, budget: { iterations: 30 }, clock: () => 0, ...(from && { from }) });

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
    expect(shortOf({ helicopterTasks })[0]).toEqual([2, 'run out', 100, 900]);
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

describe('a shortage in words', () => {
  const textsOf = (changes: Partial<Scenario>, target = 0) =>
    findShortages([projectScenario(tinyTerritory(changes), [])[0]!], [target]).map(({ text }) => text);

  it('tells what cannot be drawn of what is asked for', () => {
    const helicopterTasks = [tinyTask('2031-03-04', 'NOR', 900)];
    expect(textsOf({ helicopterTasks })).toEqual([
      'NOR runs out on Tue 4 Mar: 100 L of the 900 L asked for cannot be drawn. It stays below critical to Fri 7 Mar.',
    ]);
    const caches = [tinyCache('NOR', { medevacReserveLitres: litres(100) })];
    expect(textsOf({ helicopterTasks, caches })).toEqual([
      'NOR runs out on Tue 4 Mar: 200 L of the 900 L asked for cannot be drawn without going into the reserve. It stays below critical to Fri 7 Mar.',
    ]);
  });

  it('tells how long a cache that begins empty stays below minimum, though each day is better than the one before', () => {
    const flights = ['2031-03-03', '2031-03-05'].map((date) => ({
      date,
      stops: [{ place: 'NOR', drums: 1 }],
    }));
    const [nor] = projectScenario(tinyTerritory({ drums: [], helicopterTasks: [] }), flights);
    expect(findShortages([nor!], [0]).map(({ text }) => text)).toEqual([
      'NOR is below critical at the opening: nothing of 200 L. It stays below minimum to Tue 4 Mar.',
    ]);
  });

  it('tells the level of the limit, and the opening by name', () => {
    expect(textsOf({})).toEqual(['NOR falls below minimum on Tue 4 Mar: 300 L of 400 L.']);
    expect(textsOf({ drums: tinyDrums('NOR', 1, 100), helicopterTasks: [] })).toEqual([
      'NOR is below minimum at the opening: 200 L of 400 L.',
    ]);
    expect(textsOf({ helicopterTasks: [] }, 1000)).toEqual([
      'NOR ends short of its target on Fri 7 Mar: 800 L of 1,000 L.',
    ]);
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
    expect(await blockedBy({ ...thirsty, pilots })).toEqual(['NOR day 1: the pilots at hand.']);
  });

  it('the drums at the base, where none is filled', async () => {
    const drums = [...tinyDrums('NOR', 4, 100), ...tinyDrums('SOU', 3, 200)];
    expect(await blockedBy({ ...thirsty, drums })).toEqual(['NOR day 1: the drums ready at the bases.']);
  });

  it('the aircraft, where it is absent', async () => {
    const absences = [{ from: '2031-03-03', until: '2031-03-03', reason: 'check' }];
    const aircraft = [{ tail: 'T1', type: 'T', home: 'HOM', absences }];
    expect(await blockedBy({ ...thirsty, aircraft })).toEqual(['NOR day 1: the aircraft at hand.']);
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
      'NOR day 1: closures, no-flying days or soft strips.',
    ]);
  });

  it('the hands at the strip, and the size of the site', async () => {
    const [home, nor, sou] = tinyTerritory().places;
    const places = [home!, { ...nor!, landingCapacityDrumsPerDay: 0 }, sou!];
    expect(await blockedBy({ ...thirsty, places })).toEqual([
      'NOR day 1: the drums that the strip can unload in a day.',
    ]);
    const caches = [tinyCache('NOR', { capacityDrums: 4 }), tinyCache('SOU')];
    expect(await blockedBy({ ...thirsty, caches })).toEqual(['NOR day 1: the capacity of the site.']);
  });

  it('the drums at the base and nothing else, where frozen flights take them all', async () => {
    const taken = {
      id: 'A01',
      state: 'approved',
      date: '2031-03-03',
      aircraft: 'T1',
      from: 'HOM',
      stops: [{ place: 'SOU', drums: 1 }],
      to: 'HOM',
      pilot: 'P1',
    } as const;
    const { bases } = tinyTerritory();
    const drums = tinyTerritory().drums.filter(({ place, number }) => place !== 'HOM' || number === '0300');
    const changes = { drums, bases: [{ ...bases[0]!, emptiesFitForUse: 0 }], flights: [taken] };
    expect(await blockedBy(changes)).toEqual(['NOR day 2: the drums ready at the bases.']);
  });

  it('no limit, where a plan within all of them spares it: it was only not found', async () => {
    const scenario = tinyTerritory(thirsty);
    const built = buildProblem(scenario, 'minimum');
    const caches = projectScenario(scenario, []);
    const idle: Plan = { trips: [], bookedDrops: [], bookedCrews: [] };
    const blocked = await findBlockers(
      built,
      idle,
      caches,
      findShortages(caches, [0, 0]),
      solver,
      () => false,
    );
    expect(blocked.map(({ place, by }) => [place, by])).toEqual([['NOR', []]]);
  });

  it('not a limit that only moves the shortage to another cache', async () => {
    const [home, nor, sou] = tinyTerritory().places;
    const places = [home!, { ...nor!, landingCapacityDrumsPerDay: 0 }, sou!];
    const helicopterTasks = [tinyTask('2031-03-03', 'NOR', 500), tinyTask('2031-03-03', 'SOU', 300)];
    const scenario = tinyTerritory({ places, helicopterTasks });
    const built = buildProblem(scenario, 'minimum');
    const storeOf = (place: string) => built.map.storeOf.get(place)!;
    const to = ({ routes }: Problem, place: string) => ({
      vehicle: 0,
      day: 0,
      route: routes.findIndex(({ stops }) => stops.length === 1 && stops[0] === storeOf(place)),
      drops: [2],
      crew: 0,
    });
    const flown = (...trips: Plan['trips']): Plan => ({ trips, bookedDrops: [], bookedCrews: [] });
    const plan = flown(to(built.problem, 'SOU'));
    /** Once hands are at NOR, flies there: instead, or besides. */
    const answering =
      (instead: boolean): Solver =>
      async (problem, _, from) => {
        const isLifted = problem.stores[storeOf('NOR')]!.packsPerDay === null;
        const trips = [to(problem, 'NOR'), ...(instead ? [] : [to(problem, 'SOU')])];
        const outcome = await solver(problem, 'quick');
        if (outcome.status !== 'solved') throw new Error('no plan');
        return { ...outcome, plan: isLifted ? flown(...trips) : from! };
      };
    const caches = projectScenario(scenario, [{ date: '2031-03-03', stops: [{ place: 'SOU', drums: 2 }] }]);
    const short = findShortages(caches, [0, 0]);
    const by = async (answer: Solver) =>
      (await findBlockers(built, plan, caches, short, answer, () => false)).map((each) => each.by);
    expect(await by(answering(true))).toEqual([[]]);
    expect(await by(answering(false))).toEqual([['landing capacity']]);
  });

  it('no single limit, where two stand in the way', async () => {
    const drums = [...tinyDrums('NOR', 4, 100), ...tinyDrums('SOU', 3, 200)];
    const [blocked] = await blockedBy({ ...thirsty, drums, noFlyingDays: ['2031-03-03'] });
    expect(blocked).toContain('no single limit that was found');
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
      'PAD day 1: the slings, no aeroplane brings drums there: the next one is planned for Wed 5 Mar.',
    );
  });

  it('is not looked for once the time is up', async () => {
    const scenario = tinyTerritory(thirsty);
    const built = buildProblem(scenario, 'minimum');
    const caches = projectScenario(scenario, []);
    const never: Solver = () => Promise.reject(new Error('asked for a solve'));
    const nothing: Plan = { trips: [], bookedDrops: [], bookedCrews: [] };
    const blocked = await findBlockers(
      built,
      nothing,
      caches,
      findShortages(caches, [0, 0]),
      never,
      () => true,
    );
    expect(blocked.map(({ by }) => by)).toEqual([null]);
    expect(blockedWords(built, blocked[0]!, null)).toBe('not looked for, the time was up.');
  });
});
