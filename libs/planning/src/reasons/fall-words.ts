import type { ShortLevel } from '../flight-plan.js';
import { dayWords, litreWords, stockWords, unmetWords } from '../wording.js';
import { byDayThenHarm, byHarmThenDay, type Fall, harm } from './falls.js';

/**
 * What a cache suffers, without its name: "falls below minimum on Tue 4 Mar and below critical on Thu 6 Mar: 150 L of
 * 200 L". The worst fall with its figures, and the first one where that is earlier. A cache that is as short with the
 * flight is told to be so anyway.
 */
export function fallsWords(falls: readonly Fall[]): string {
  const caused = falls.filter(({ already }) => !already);
  const [worst] = (caused.length > 0 ? caused : falls).toSorted(byHarmThenDay);
  if (worst!.already) return anywayWords(worst!);
  const [first] = caused.toSorted(byDayThenHarm);
  if (first!.day >= worst!.day || worst!.level === 'short of the end target')
    return `${verbs[worst!.level]} on ${dayWords(worst!.date)}: ${figures(worst!)}`;
  const then = worst!.level === 'run out' ? 'runs out' : worst!.level;
  return `${verbs[first!.level]} on ${dayWords(first!.date)} and ${then} on ${dayWords(worst!.date)}: ${figures(worst!)}`;
}

/** Falls by cache, the cache that suffers worst first; those that only fall deeper last. */
export function byCache(falls: readonly Fall[]): readonly (readonly Fall[])[] {
  const worst = (of: readonly Fall[]): number =>
    Math.min(...of.map(({ level, already }) => harm.indexOf(level) + (already ? harm.length : 0)));
  const places = [...new Set(falls.toSorted(byHarmThenDay).map(({ place }) => place))];
  return places
    .map((place) => falls.filter((fall) => fall.place === place))
    .toSorted((one, other) => worst(one) - worst(other));
}

const verbs: Readonly<Record<ShortLevel, string>> = {
  'run out': 'runs out',
  'below critical': 'falls below critical',
  'below minimum': 'falls below minimum',
  'short of the end target': 'ends short of its target',
};

function figures({ level, litres, limit, askedLitres, unmetLitres, reserve }: Fall): string {
  if (level !== 'run out') return `${stockWords(litres)} of ${litreWords(limit)}`;
  return unmetLitres > 0 ? unmetWords(unmetLitres, askedLitres, reserve) : 'nothing usable is left';
}

function anywayWords({ level, date, litres, withLitres, limit }: Fall): string {
  const day = dayWords(date);
  if (level === 'run out') return `runs out by ${day} anyway, and more is missing`;
  const state = level === 'short of the end target' ? 'is short of its target' : `is ${level}`;
  return `${state} on ${day} anyway: ${stockWords(litres)} instead of ${stockWords(withLitres)}, of ${litreWords(limit)}`;
}
