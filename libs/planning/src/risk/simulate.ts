import type { CacheProjection } from '@drumline/stock';
import type { Risk } from '../flight-plan.js';
import type { WeatherOdds } from '../scenario.js';

/** Drums set down at a strip by one flight, as the weather sees it. */
export interface WeatherLanding {
  readonly place: string;
  /** Day of the plan, from 1. */
  readonly day: number;
  readonly half: 'morning' | 'afternoon';
  readonly drums: number;
  readonly litres: number;
}

export interface SimulationInput {
  /** Levels with every landing made. */
  readonly caches: readonly CacheProjection[];
  /** Landings still to be made; those already flown are facts of the levels and are left out here. */
  readonly landings: readonly WeatherLanding[];
  readonly flownDrums: number;
  readonly weather: readonly WeatherOdds[];
  readonly days: number;
}

/**
 * Chance of falling below critical, over `fortnights` draws of the weather. The weather of a strip in a half day is
 * drawn once and hits every flight to it; every strip, day and half is drawn in the same order whatever the plan, so
 * that one seed judges every plan alike. A landing that is not made takes its litres off the level from that day on.
 * `expectedDrums` is the exact expectation, not a mean of the draws. `random` gives numbers in [0, 1).
 */
export function simulate(
  input: SimulationInput,
  random: () => number,
  settings: { readonly fortnights: number; readonly seed: number },
): Omit<Risk, 'allMorning'> {
  const strips = [...input.weather].sort((one, other) => (one.place < other.place ? -1 : 1));
  const caches = input.caches.map((cache) => new CacheUnderWeather(cache, input, strips));
  const cancelled = new Uint8Array(strips.length * input.days * 2);
  let anyBelowCritical = 0;
  for (let fortnight = 0; fortnight < settings.fortnights; fortnight++) {
    drawWeather(strips, input.days, random, cancelled);
    let fell = false;
    for (const cache of caches) fell = cache.liveThrough(cancelled) || fell;
    if (fell) anyBelowCritical++;
  }
  return {
    fortnights: settings.fortnights,
    seed: settings.seed,
    belowCritical: anyBelowCritical / settings.fortnights,
    byCache: caches.map((cache) => cache.shares(settings.fortnights)),
    expectedDrums: input.flownDrums + expectedDrums(input.landings, input.weather),
  };
}

/** Drums that land on average: each landing's drums times the chance that its strip is open in that half day. */
export function expectedDrums(landings: readonly WeatherLanding[], weather: readonly WeatherOdds[]): number {
  const odds = new Map(weather.map((strip) => [strip.place, strip]));
  return landings.reduce((drums, landing) => {
    const strip = odds.get(landing.place);
    const cancel = strip ? cancelChance(strip, landing.half === 'morning' ? 0 : 1) : 0;
    return drums + landing.drums * (1 - cancel);
  }, 0);
}

const cancelChance = (strip: WeatherOdds, half: 0 | 1): number =>
  half === 0 ? strip.morningCancel : strip.afternoonCancel;

const weatherIndex = (strip: number, day: number, half: 0 | 1, days: number): number =>
  (strip * days + day - 1) * 2 + half;

function drawWeather(
  strips: readonly WeatherOdds[],
  days: number,
  random: () => number,
  cancelled: Uint8Array,
): void {
  let index = 0;
  for (const strip of strips) {
    for (let day = 0; day < days; day++) {
      cancelled[index++] = random() < strip.morningCancel ? 1 : 0;
      cancelled[index++] = random() < strip.afternoonCancel ? 1 : 0;
    }
  }
}

/** One cache's levels and landings in flat arrays, with the count of fortnights in which it fell. */
class CacheUnderWeather {
  private readonly landings: readonly { weather: number; day: number; litres: number }[];
  private belowCritical = 0;
  private belowMinimum = 0;

  constructor(
    private readonly cache: CacheProjection,
    input: SimulationInput,
    strips: readonly WeatherOdds[],
  ) {
    const strip = strips.findIndex((odds) => odds.place === cache.place);
    const landings = strip < 0 ? [] : input.landings.filter((landing) => landing.place === cache.place);
    this.landings = landings
      .map((landing) => ({
        weather: weatherIndex(strip, landing.day, landing.half === 'morning' ? 0 : 1, input.days),
        day: landing.day,
        litres: landing.litres,
      }))
      .sort((one, other) => one.day - other.day);
  }

  /** Lives one fortnight; true when a day ends below critical. */
  liveThrough(cancelled: Uint8Array): boolean {
    const { usable, criticalLitres, minimumLitres } = this.cache;
    let missing = 0;
    let next = 0;
    let critical = false;
    let minimum = false;
    for (let day = 1; day < usable.length; day++) {
      for (; next < this.landings.length && this.landings[next]!.day <= day; next++) {
        if (cancelled[this.landings[next]!.weather]) missing += this.landings[next]!.litres;
      }
      const level = usable[day]! - missing;
      if (level < criticalLitres) critical = true;
      if (level < minimumLitres) minimum = true;
    }
    if (critical) this.belowCritical++;
    if (minimum) this.belowMinimum++;
    return critical;
  }

  shares(fortnights: number) {
    return {
      place: this.cache.place,
      belowCritical: this.belowCritical / fortnights,
      belowMinimum: this.belowMinimum / fortnights,
    };
  }
}
