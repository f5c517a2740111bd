import type { CacheProjection } from '@drumline/stock';
import type { IsoDate, Litres } from '@drumline/units';
import { litres } from '@drumline/units';
import type { ShortLevel } from '../flight-plan.js';

/** A cache that falls to a level, on the first day it does so; a later recovery and fall is a shortage of its own. */
export interface Shortfall {
  readonly place: string;
  readonly date: IsoDate;
  /** Day of the plan, from 1; 0: already at the opening. */
  readonly day: number;
  readonly level: ShortLevel;
  /** Usable on that day, and what it should have been; for "run out" the litres refused and asked for. */
  readonly litres: Litres;
  readonly limitLitres: Litres;
}

/** Every shortage of the caches by day, the worse first; `endTargets` in the order of the caches. */
export function findShortages(
  caches: readonly CacheProjection[],
  endTargets: readonly number[],
): readonly Shortfall[] {
  return caches
    .flatMap((cache, i) => [...fallsOf(cache), ...endShort(cache, endTargets[i]!)])
    .sort((a, b) => a.day - b.day || harm.indexOf(a.level) - harm.indexOf(b.level));
}

const harm: readonly ShortLevel[] = ['run out', 'below critical', 'below minimum', 'short of the end target'];

/** How bad each day is, 3 for the worst. A day opens a shortage where it is worse than the day before. */
function fallsOf(cache: CacheProjection): readonly Shortfall[] {
  const severity = cache.usable.map((_, day) => severityOf(cache, day));
  return severity.flatMap((now, day) => (now > (severity[day - 1] ?? 0) ? [fallOn(cache, day, now)] : []));
}

function severityOf({ usable, unmet, minimumLitres, criticalLitres }: CacheProjection, day: number): number {
  if (unmet[day]! > 0) return 3;
  if (usable[day]! < criticalLitres) return 2;
  return usable[day]! < minimumLitres ? 1 : 0;
}

function fallOn(cache: CacheProjection, day: number, severity: number): Shortfall {
  const at = { place: cache.place, date: cache.dates[Math.max(0, day - 1)]!, day };
  const usable = cache.usable[day]!;
  if (severity === 3) {
    const drawn = cache.drawn[day]!;
    return { ...at, level: 'run out', litres: litres(drawn - cache.unmet[day]!), limitLitres: drawn };
  }
  return severity === 2
    ? { ...at, level: 'below critical', litres: usable, limitLitres: cache.criticalLitres }
    : { ...at, level: 'below minimum', litres: usable, limitLitres: cache.minimumLitres };
}

/** Short of the end target only: a cache below its minimum by then is named for that. */
function endShort(
  { place, dates, usable, minimumLitres }: CacheProjection,
  target: number,
): readonly Shortfall[] {
  const closing = usable.at(-1)!;
  if (closing >= target || closing < minimumLitres) return [];
  const day = dates.length;
  return [
    {
      place,
      date: dates.at(-1)!,
      day,
      level: 'short of the end target',
      litres: closing,
      limitLitres: litres(target),
    },
  ];
}
