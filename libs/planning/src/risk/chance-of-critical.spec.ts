import { randomFrom } from '@drumline/routing';
import { litres } from '@drumline/units';
import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { projectScenario } from '../flights/project.js';
import { tinyTerritory } from '../tiny-territory.js';
import { chanceOfCritical } from './chance-of-critical.js';
import { simulate, type WeatherLanding } from './simulate.js';

/** NOR stands at 800 L, gives 500 L on day 2, and is critical at 200 L. */
const scenario = tinyTerritory();
const landing = (
  day: number,
  half: 'morning' | 'afternoon',
  drums: number,
  place = 'NOR',
): WeatherLanding => ({
  place,
  day,
  half,
  drums,
  litres: drums * 200,
});
const levels = (landings: readonly WeatherLanding[]) =>
  projectScenario(
    scenario,
    landings.map(({ day, place, drums }) => ({ date: `2031-03-0${day + 2}`, stops: [{ place, drums }] })),
  ).map((cache) => ({ ...cache, criticalLitres: litres(450) }));
const odds = (morningCancel: number, afternoonCancel: number) =>
  ['NOR', 'SOU'].map((place) => ({ place, morningCancel, afternoonCancel }));
const chance = (landings: readonly WeatherLanding[], weather = odds(0.2, 0.5)) =>
  chanceOfCritical([levels(landings)[0]!], landings, weather);

describe('chance of falling below critical, exactly', () => {
  it('is that of the one landing that holds the level up', () => {
    expect(chance([landing(1, 'morning', 2)])).toBeCloseTo(0.2, 12);
    expect(chance([landing(1, 'afternoon', 2)])).toBeCloseTo(0.5, 12);
    expect(chance([landing(3, 'morning', 2)])).toBe(1);
  });

  it('counts two flights of one half day once, and two half days twice', () => {
    expect(chance([landing(1, 'morning', 1), landing(1, 'morning', 1)])).toBeCloseTo(0.2, 12);
    expect(chance([landing(1, 'morning', 1), landing(2, 'morning', 1)])).toBeCloseTo(0.2 * 0.2, 12);
  });

  it('takes a strip without odds as always open', () => {
    expect(chance([landing(1, 'morning', 2)], [])).toBe(0);
  });

  it('is what the drawn fortnights come near', () => {
    const landings = fc.array(
      fc
        .tuple(
          fc.integer({ min: 1, max: 5 }),
          fc.constantFrom('morning' as const, 'afternoon' as const),
          fc.integer({ min: 1, max: 3 }),
          fc.constantFrom('NOR', 'SOU'),
        )
        .map((figures) => landing(...figures)),
      { maxLength: 6 },
    );
    fc.assert(
      fc.property(landings, fc.integer({ min: 1, max: 1000 }), (made, seed) => {
        const caches = levels(made);
        const input = { caches, landings: made, flownDrums: 0, weather: odds(0.2, 0.5), days: scenario.days };
        const drawn = simulate(input, randomFrom(seed), { fortnights: 2000, seed }).belowCritical;
        // Five standard errors of 2,000 draws at the worst chance.
        expect(Math.abs(drawn - chanceOfCritical(caches, made, input.weather))).toBeLessThan(0.056);
      }),
      { numRuns: 40, seed: 7 },
    );
  });
});
