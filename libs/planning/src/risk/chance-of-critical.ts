import type { CacheProjection } from '@drumline/stock';
import type { WeatherOdds } from '../scenario.js';
import type { WeatherLanding } from './simulate.js';

/** Drums that fly to one strip in one half day: they all land or none does. */
interface Draw {
  readonly day: number;
  readonly cancel: number;
  readonly litres: number;
}

/**
 * Chance that any cache ends a day below critical, exactly: what `simulate` estimates. Strips and half days are
 * independent, so each cache's chance follows from the spread of its missing litres, day by day, and the caches'
 * chances multiply. `caches` are the levels with every landing made.
 */
export function chanceOfCritical(
  caches: readonly CacheProjection[],
  landings: readonly WeatherLanding[],
  weather: readonly WeatherOdds[],
): number {
  const odds = new Map(weather.map((strip) => [strip.place, strip]));
  const noneFalls = caches.reduce((chance, cache) => {
    const here = landings.filter(({ place }) => place === cache.place);
    return chance * staysUp(cache, drawsOf(here, odds.get(cache.place)));
  }, 1);
  return 1 - noneFalls;
}

function drawsOf(landings: readonly WeatherLanding[], odds: WeatherOdds | undefined): readonly Draw[] {
  const draws = new Map<string, Draw>();
  for (const { day, half, litres } of landings) {
    const key = `${day} ${half}`;
    const cancel = odds ? (half === 'morning' ? odds.morningCancel : odds.afternoonCancel) : 0;
    draws.set(key, { day, cancel, litres: (draws.get(key)?.litres ?? 0) + litres });
  }
  return [...draws.values()];
}

/** Chance that no day ends below critical. `missing`: how likely it is that so many litres did not land, and all held. */
function staysUp({ usable, criticalLitres }: CacheProjection, draws: readonly Draw[]): number {
  let missing = new Map<number, number>([[0, 1]]);
  for (let day = 1; day < usable.length; day++) {
    for (const draw of draws) if (draw.day === day) missing = afterDraw(missing, draw);
    for (const litres of missing.keys()) if (usable[day]! - litres < criticalLitres) missing.delete(litres);
  }
  return [...missing.values()].reduce((sum, chance) => sum + chance, 0);
}

function afterDraw(missing: ReadonlyMap<number, number>, { cancel, litres }: Draw): Map<number, number> {
  const after = new Map<number, number>();
  const add = (amount: number, chance: number) => after.set(amount, (after.get(amount) ?? 0) + chance);
  for (const [amount, chance] of missing) {
    add(amount, chance * (1 - cancel));
    if (cancel > 0) add(amount + litres, chance * cancel);
  }
  return after;
}
