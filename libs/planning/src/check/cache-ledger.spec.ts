import { litres } from '@drumline/units';
import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { projectScenario } from '../flights/project.js';
import type { Scenario, StandingFlight } from '../scenario.js';
import { tinyCache, tinyDrums, tinyTask, tinyTerritory } from '../tiny-territory.js';
import { cacheLedger } from './cache-ledger.js';
import { survey } from './survey.js';

const flight = (day: number, place: string, drums: number): StandingFlight => ({
  id: `F${day}${place}`,
  state: 'offered',
  date: `2031-03-0${2 + day}`,
  aircraft: 'T1',
  from: 'HOM',
  stops: [{ place, drums }],
  to: 'HOM',
});
const levelsOf = (changes: Partial<Scenario>, ...flights: readonly StandingFlight[]) => {
  const scenario = tinyTerritory(changes);
  return cacheLedger(scenario, survey(scenario, flights).flights)
    .get('NOR')!
    .map(({ usable }) => usable);
};
const distanceNm = tinyTerritory().distances[2]!.distanceNm;
const [batch] = tinyTerritory().batches;

describe("the checker's own book of a cache", () => {
  it('order of a day: landings, slings, draws, level', () => {
    const slings = [{ date: '2031-03-03', helicopter: 'H', from: 'NOR', to: 'SOU', drums: 5, distanceNm }];
    // 800 + 400 landed - 1,000 slung out; 500 asked for on day 2, 200 there.
    expect(levelsOf({ slings }, flight(1, 'NOR', 2))).toEqual([200, -300, -300, -300, -300]);
  });

  it('medevac reserve: no routine draw goes into it, and what is not drawn is taken off the level', () => {
    const caches = [tinyCache('NOR', { medevacReserveLitres: litres(400) }), tinyCache('SOU')];
    const helicopterTasks = [tinyTask('2031-03-03', 'NOR', 500)];
    const drums = tinyDrums('NOR', 4, 100);
    expect(levelsOf({ caches, helicopterTasks, drums })[0]).toBe(300);
  });

  it('retest date: a drum counts up to and on its day', () => {
    const batches = [{ ...batch!, retestDue: '2031-03-05' }];
    expect(levelsOf({ batches, helicopterTasks: [] })).toEqual([800, 800, 800, 0, 0]);
  });

  it('usable stock: a count outside the tolerance replaces the book, held drums do not count', () => {
    const count = {
      place: 'NOR',
      at: '2031-03-03T04:00Z',
      openDrums: 0,
      by: 'helper',
      seenFrom: 'ground' as const,
    };
    const counted = (found: number, at = count.at) =>
      levelsOf({ counts: [{ ...count, at, litres: litres(found) }], helicopterTasks: [] })[0];
    expect(counted(784)).toBe(800);
    expect(counted(783)).toBe(783);
    expect(counted(900)).toBe(800);
    expect(counted(500, '2031-03-03T06:00Z')).toBe(800);
    const [first, ...others] = tinyDrums('NOR', 4, 100);
    const held = { ...first!, held: { reason: 'water', by: 'QA', at: '2031-03-01T10:00Z' } };
    expect(levelsOf({ drums: [held, ...others], helicopterTasks: [] })[0]).toBe(600);
  });

  it('oldest fit first: what is drawn from an ageing drum does not age out', () => {
    const batches = [
      { ...batch!, retestDue: '2031-03-04' },
      { ...batch!, id: 'B2' },
    ];
    const young = tinyDrums('NOR', 2, 500).map((drum) => ({ ...drum, batch: 'B2' }));
    const drums = [...tinyDrums('NOR', 2, 100), ...young];
    const helicopterTasks = [tinyTask('2031-03-04', 'NOR', 300)];
    expect(levelsOf({ batches, drums, helicopterTasks })).toEqual([800, 500, 400, 400, 400]);
  });
});

describe('the book of the checker and the projection of stock', () => {
  const day = fc.integer({ min: 1, max: 5 });
  const date = day.map((each) => `2031-03-0${2 + each}`);
  const place = fc.constantFrom('NOR', 'SOU');
  const drum = fc.record({ place, ageing: fc.boolean(), held: fc.boolean(), part: fc.boolean() });
  const tasks = fc.array(
    fc
      .tuple(date, place, fc.integer({ min: 1, max: 9 }))
      .map(([on, at, tens]) => tinyTask(on, at, tens * 70)),
    { maxLength: 6 },
  );
  const changes = fc.record({
    drums: fc.array(drum, { maxLength: 10 }).map((drums) =>
      drums.map(({ place, ageing, held, part }, index) => ({
        ...tinyDrums(place, 1, 100 + index)[0]!,
        batch: ageing ? 'OLD' : 'B1',
        ...(part && { content: 'part used' as const, litres: litres(90) }),
        ...(held && { held: { reason: 'water', by: 'QA', at: '2031-03-01T10:00Z' } }),
      })),
    ),
    retestDue: date,
    helicopterTasks: tasks,
    slings: fc.array(
      fc.tuple(date, fc.integer({ min: 1, max: 4 })).map(([on, drums]) => ({
        date: on,
        helicopter: 'H',
        from: 'NOR',
        to: 'SOU',
        drums,
        distanceNm,
      })),
      { maxLength: 2 },
    ),
    counted: fc.option(fc.integer({ min: 0, max: 1500 })),
    reserve: fc.constantFrom(0, 200, 400),
  });

  it('come to the same levels, whatever happens', () => {
    fc.assert(
      fc.property(
        changes,
        fc.array(fc.tuple(day, place, fc.integer({ min: 1, max: 4 }), fc.boolean()), { maxLength: 4 }),
        (drawn, landings) => {
          const { retestDue, counted, reserve, ...direct } = drawn;
          const scenario = tinyTerritory({
            ...direct,
            batches: [batch!, { ...batch!, id: 'OLD', retestDue }],
            caches: ['NOR', 'SOU'].map((each) => tinyCache(each, { medevacReserveLitres: litres(reserve) })),
            counts:
              counted === null
                ? []
                : [
                    {
                      place: 'NOR',
                      at: '2031-03-03T04:00Z',
                      litres: litres(counted),
                      openDrums: 1,
                      by: 'helper',
                      seenFrom: 'air',
                    },
                  ],
          });
          const flights = landings.map(([on, at, drums, held], index) => ({
            ...flight(on, at, drums),
            id: `F${index}`,
            stops: [{ place: at, drums, ...(held && { heldDrums: Math.ceil(drums / 2) }) }],
          }));
          const ledger = cacheLedger(scenario, survey(scenario, flights).flights);
          for (const cache of projectScenario(scenario, flights)) {
            const days = ledger.get(cache.place)!;
            expect(days.map(({ usable }) => usable)).toEqual(cache.usable.slice(1));
            expect(days.map(({ afterLandings }) => afterLandings)).toEqual(cache.standing.slice(1));
          }
        },
      ),
      { numRuns: 300 },
    );
  });
});
