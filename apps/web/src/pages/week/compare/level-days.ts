import { inWords, type LevelScale, stockInWords } from '../../../ui/index.js';
import type { DayWords } from './difference-words.js';
import type { Differences } from './differences-read.js';

/** A cache day by day with either plan, in litres: what is there at the start, then each day's end. */
export type LevelDays = Differences['levels'][number] &
  Pick<Differences['lowest'][number], 'minimumLitres' | 'criticalLitres'>;

/** The caches whose level changes, the one that changes most, in litres and days, first. */
export const changedCaches = ({
  levels,
  lowest,
}: Pick<Differences, 'levels' | 'lowest'>): readonly LevelDays[] =>
  levels
    .flatMap((each) => {
      const limits = lowest.find(({ place }) => place === each.place);
      return limits === undefined ? [] : [{ ...limits, ...each }];
    })
    .filter((cache) => changeOf(cache) > 0)
    .toSorted((one, other) => changeOf(other) - changeOf(one) || one.place.localeCompare(other.place));

const changeOf = ({ before, after }: LevelDays): number =>
  before.reduce((sum, litres, day) => sum + Math.abs(litres - after[day]!), 0);

/** What the graph shows, for whoever hears it: the lowest of both plans with its day, and what it is held against. */
export const levelFinding = (cache: LevelDays, day: DayWords): string => {
  const lowest = (levels: readonly number[]) => {
    const ends = levels.slice(1);
    const litres = Math.min(...ends);
    return `${stockInWords(litres)} on ${day(cache.dates[ends.indexOf(litres)]!)}`;
  };
  return `${cache.place} at the end of a day: standing at its lowest ${lowest(cache.before)}, proposed ${lowest(cache.after)}; minimum ${inWords(cache.minimumLitres, 'L')}, critical ${inWords(cache.criticalLitres, 'L')}.`;
};

export interface LineEnd {
  readonly words: string;
  readonly y: number;
  readonly isProposed: boolean;
}

/** How far apart two lines of words stand, in pixels. */
const lineApart = 14;

/** The words at the right end of each line, moved down where they would stand in each other. */
export const lineEnds = (cache: LevelDays, { y, bottom }: LevelScale): readonly LineEnd[] => {
  const end = (words: string, litres: number, isProposed = false) => ({
    words: `${words} ${stockInWords(litres)}`,
    y: y(litres) + 4,
    isProposed,
  });
  const ends = [
    end('minimum', cache.minimumLitres),
    ...(cache.criticalLitres > 0 ? [end('critical', cache.criticalLitres)] : []),
    end('standing', cache.before.at(-1)!),
    end('proposed', cache.after.at(-1)!, true),
  ].toSorted((one, other) => one.y - other.y);
  const heights = ends.map((each) => each.y);
  for (let at = 1; at < ends.length; at++) heights[at] = Math.max(heights[at]!, heights[at - 1]! + lineApart);
  // What was pushed under the foot comes up again, and so do those above it.
  for (let at = ends.length - 1; at >= 0; at--)
    heights[at] = Math.min(heights[at]!, (heights[at + 1] ?? bottom + 4 + lineApart) - lineApart);
  return ends.map((each, at) => ({ ...each, y: heights[at]! }));
};
