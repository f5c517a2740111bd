import type { CacheProjection } from '@drumline/stock';
import type { IsoDate } from '@drumline/units';
import type { ShortLevel } from '../flight-plan.js';
import type { Compared } from './compared-levels.js';

/** The first day on which a cache falls to a level without a flight; litres. */
export interface Fall {
  readonly place: string;
  /** Day of the plan, from 1. */
  readonly day: number;
  readonly date: IsoDate;
  readonly level: ShortLevel;
  readonly litres: number;
  readonly withLitres: number;
  readonly limit: number;
  /** Asked for on that day, and not there to be drawn. */
  readonly askedLitres: number;
  readonly unmetLitres: number;
  /** The part that no routine draw goes into. */
  readonly reserve: number;
  /** It is below that level with the flight as well, only less so. */
  readonly already: boolean;
}

/** Levels, the worst first. */
export const harm: readonly ShortLevel[] = [
  'run out',
  'below critical',
  'below minimum',
  'short of the end target',
];

export const byDayThenHarm = (one: Fall, other: Fall): number =>
  one.day - other.day || harm.indexOf(one.level) - harm.indexOf(other.level);

export const byHarmThenDay = (one: Fall, other: Fall): number =>
  harm.indexOf(one.level) - harm.indexOf(other.level) || one.day - other.day;

/** The first day of each level to which the cache falls without the flight, or falls deeper. */
export function fallsOf(endTarget: number, compared: Compared): readonly Fall[] {
  const { criticalLitres, minimumLitres, usable } = compared.without;
  const below =
    (limit: number) =>
    ({ usable }: CacheProjection, day: number): boolean =>
      usable[day]! < limit;
  const last = usable.length - 1;
  return [
    ...firstFall(compared, 'run out', 0, 1, isOut),
    ...firstFall(compared, 'below critical', criticalLitres, 1, below(criticalLitres)),
    ...firstFall(compared, 'below minimum', minimumLitres, 1, below(minimumLitres)),
    ...firstFall(compared, 'short of the end target', endTarget, last, below(endTarget)),
  ];
}

/** A strip that need hold nothing may stand empty, as long as nobody asks there in vain. */
const isOut = ({ usable, unmet, criticalLitres }: CacheProjection, day: number): boolean =>
  unmet[day]! > 0 || usable[day]! < 0 || (criticalLitres > 0 && usable[day]! <= 0);

function firstFall(
  { withIt, without }: Compared,
  level: ShortLevel,
  limit: number,
  from: number,
  isShort: (cache: CacheProjection, day: number) => boolean,
): readonly Fall[] {
  if (level !== 'run out' && limit <= 0) return [];
  const days = [...without.usable.keys()].filter((day) => day >= from && isShort(without, day));
  const short = days.filter((day) => without.usable[day]! < withIt.usable[day]!);
  const day = short.find((each) => !isShort(withIt, each)) ?? short[0];
  if (day === undefined) return [];
  return [
    {
      place: without.place,
      day,
      date: without.dates[day - 1]!,
      level,
      litres: without.usable[day]!,
      withLitres: withIt.usable[day]!,
      limit,
      askedLitres: without.drawn[day]!,
      unmetLitres: without.unmet[day]!,
      reserve: without.reserveLitres,
      already: isShort(withIt, day),
    },
  ];
}
