import type { CacheProjection } from '@drumline/stock';
import type { IsoDate, Litres } from '@drumline/units';
import { litres } from '@drumline/units';
import type { ShortLevel } from '../flight-plan.js';
import { dayWords, litreWords, stockWords, unmetWords } from '../wording.js';

/** A cache that falls to a level, on the first day it does so; a later recovery and fall is a shortage of its own. */
export interface Shortfall {
  readonly place: string;
  readonly date: IsoDate;
  /** Day of the plan, from 1; 0: already at the opening. */
  readonly day: number;
  readonly level: ShortLevel;
  /** Usable on that day, and what it should have been; for "run out" the litres that cannot be drawn, and asked for. */
  readonly litres: Litres;
  readonly limitLitres: Litres;
  /** The same as a sentence. */
  readonly text: string;
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

/** A day opens a shortage where it is worse than the day before. */
function fallsOf(cache: CacheProjection): readonly Shortfall[] {
  const severity = cache.usable.map((_, day) => severityOf(cache, day));
  return severity.flatMap((now, day) => {
    if (now <= (severity[day - 1] ?? 0)) return [];
    const fall = fallOn(cache, day, now);
    return [{ ...fall, text: `${fall.text}${staysWords(cache, severity, day)}` }];
  });
}

/** " It stays below minimum to Tue 15 Jun.": of a shortage that grows less and is not over; empty: it does not. */
function staysWords({ dates }: CacheProjection, severity: readonly number[], day: number): string {
  let last = day;
  while (severity[last + 1]! > 0 && severity[last + 1]! <= severity[last]!) last++;
  if (severity[last] === severity[day]) return '';
  return ` It stays below ${severity[last] === 1 ? 'minimum' : 'critical'} to ${dayWords(dates[last - 1]!)}.`;
}

/** How bad a day is: 3 run out, 2 below critical, 1 below minimum, 0 none of these. */
export function severityOf(
  { usable, unmet, minimumLitres, criticalLitres }: CacheProjection,
  day: number,
): number {
  if (unmet[day]! > 0) return 3;
  if (usable[day]! < criticalLitres) return 2;
  return usable[day]! < minimumLitres ? 1 : 0;
}

/** How short some caches are together, so that the worse weighs more; a figure to compare with its like. */
export function shortageOf(caches: readonly CacheProjection[]): number {
  const below = (limit: number, level: number): number => Math.max(0, limit - level);
  return caches
    .flatMap(({ usable, unmet, minimumLitres, criticalLitres }) =>
      usable.map(
        (level, day) =>
          unmet[day]! * 10_000 + below(criticalLitres, level) * 100 + below(minimumLitres, level),
      ),
    )
    .reduce((sum, litreDays) => sum + litreDays, 0);
}

function fallOn(cache: CacheProjection, day: number, severity: number): Shortfall {
  const at = { place: cache.place, date: cache.dates[Math.max(0, day - 1)]!, day };
  const usable = cache.usable[day]!;
  const fall: Fall =
    severity === 3
      ? { ...at, level: 'run out', litres: cache.unmet[day]!, limitLitres: cache.drawn[day]! }
      : severity === 2
        ? { ...at, level: 'below critical', litres: usable, limitLitres: cache.criticalLitres }
        : { ...at, level: 'below minimum', litres: usable, limitLitres: cache.minimumLitres };
  return { ...fall, text: fallWords(fall, cache.reserveLitres) };
}

type Fall = Omit<Shortfall, 'text'>;

function fallWords({ place, date, day, level, litres, limitLitres }: Fall, reserve: Litres): string {
  const figures = `${stockWords(litres)} of ${litreWords(limitLitres)}`;
  if (level === 'run out')
    return `${place} runs out on ${dayWords(date)}: ${unmetWords(litres, limitLitres, reserve)}.`;
  if (level === 'short of the end target')
    return `${place} ends short of its target on ${dayWords(date)}: ${figures}.`;
  return day === 0
    ? `${place} is ${level} at the opening: ${figures}.`
    : `${place} falls ${level} on ${dayWords(date)}: ${figures}.`;
}

/** Short of the end target only: a cache below its minimum by then is named for that. */
function endShort(
  { place, dates, usable, minimumLitres, reserveLitres }: CacheProjection,
  target: number,
): readonly Shortfall[] {
  const closing = usable.at(-1)!;
  if (closing >= target || closing < minimumLitres) return [];
  const fall: Fall = {
    place,
    date: dates.at(-1)!,
    day: dates.length,
    level: 'short of the end target',
    litres: closing,
    limitLitres: litres(target),
  };
  return [{ ...fall, text: fallWords(fall, reserveLitres) }];
}
