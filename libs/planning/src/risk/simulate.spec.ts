import { randomFrom } from '@drumline/routing';
import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { projectScenario } from '../flights/project.js';
import { tinyTerritory } from '../tiny-territory.js';
import { simulate, type WeatherLanding } from './simulate.js';

const scenario = tinyTerritory();
const flights = [{ date: '2031-03-03', stops: [{ place: 'NOR', drums: 2 }] }];
const caches = projectScenario(scenario, flights);
const landing = (changes: Partial<WeatherLanding> = {}): WeatherLanding => ({
  place: 'NOR',
  day: 1,
  half: 'morning',
  drums: 2,
  litres: 400,
  ...changes,
});
const weather = (morningCancel: number, afternoonCancel: number) => [
  { place: 'NOR', morningCancel, afternoonCancel },
];
const run = (
  odds: ReturnType<typeof weather>,
  landings: readonly WeatherLanding[],
  seed = 7,
  levels = caches,
) =>
  simulate(
    { caches: levels, landings, flownDrums: 0, weather: odds, days: scenario.days },
    randomFrom(seed),
    {
      fortnights: 1000,
      seed,
    },
  );
/** NOR stands at 800 L, gives 500 L on day 2: 300 L without the landing, critical here 350 L. */
const fragile = caches.map((cache) => ({ ...cache, criticalLitres: 350 as typeof cache.criticalLitres }));

describe('chance of falling below critical', () => {
  it('chance of falling below critical: never in good weather, always when nothing lands', () => {
    expect(run(weather(0, 0), [landing()], 7, fragile).byCache[0]).toMatchObject({ belowCritical: 0 });
    expect(run(weather(1, 0), [landing()], 7, fragile).byCache[0]).toMatchObject({
      belowCritical: 1,
      belowMinimum: 1,
    });
    expect(run(weather(1, 0), [landing({ half: 'afternoon' })], 7, fragile).belowCritical).toBeGreaterThan(0);
  });

  it('chance of falling below critical: the share comes near the chance that the strip is shut', () => {
    const nor = run(weather(0.3, 0), [landing()], 7, fragile).byCache[0]!;
    expect(nor.belowCritical).toBeGreaterThan(0.25);
    expect(nor.belowCritical).toBeLessThan(0.35);
  });

  it('chance of falling below critical: the weather of a half day hits every flight to the strip', () => {
    const one = run(weather(0.3, 0), [landing()], 7, fragile);
    const halves = run(weather(0.3, 0), [landing({ litres: 200 }), landing({ litres: 200 })], 7, fragile);
    expect(halves.byCache[0]!.belowCritical).toBe(one.byCache[0]!.belowCritical);
  });

  it('chance of falling below critical: the same seed judges every plan by the same weather', () => {
    expect(run(weather(0.3, 0.5), [landing()], 11, fragile)).toEqual(
      run(weather(0.3, 0.5), [landing()], 11, fragile),
    );
    const morning = run(weather(0.3, 0.5), [landing()], 11, fragile);
    const another = run(weather(0.3, 0.5), [landing(), landing({ day: 4, half: 'afternoon' })], 11, fragile);
    expect(another.byCache[0]!.belowCritical).toBeGreaterThanOrEqual(morning.byCache[0]!.belowCritical);
  });

  it('expected drums are exact: each landing times the chance that its strip is open', () => {
    const landings = [
      landing({ drums: 5 }),
      landing({ drums: 3, half: 'afternoon' }),
      landing({ place: 'HOM', drums: 2 }),
    ];
    expect(run(weather(0.1, 0.4), landings).expectedDrums).toBeCloseTo(5 * 0.9 + 3 * 0.6 + 2, 12);
  });

  it('a plan with more weather never falls less often', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 1, noNaN: true }),
        fc.double({ min: 0, max: 1, noNaN: true }),
        (one, other) => {
          const [better, worse] = one < other ? [one, other] : [other, one];
          const share = (cancel: number) =>
            run(weather(cancel, cancel), [landing()], 3, fragile).belowCritical;
          expect(share(better)).toBeLessThanOrEqual(share(worse));
        },
      ),
      { numRuns: 20 },
    );
  });
});
