import { inWords } from '../../../ui/qty.js';
import { printedRise } from '../compare/add-up.js';
import { changeWords, type DayWords, flightWords } from '../compare/difference-words.js';
import type { Differences } from '../compare/differences-read.js';

/** So many flights are named that come in the place of one. */
const mostNamed = 3;

/** What a plan that is not accepted yet does with a flight that stands, and what comes in its place; null: it leaves it. */
export const insteadWords = (
  { removed, moved, drumsChanged, added }: Pick<Differences, 'removed' | 'moved' | 'drumsChanged' | 'added'>,
  flight: string,
  day: DayWords,
): string | null => {
  const change = [...moved, ...drumsChanged].find(({ before }) => before.id === flight);
  if (change !== undefined)
    return `${changeWords(change, day)
      .map(({ text }) => text)
      .join('')}.`;
  const gone = removed.find(({ id }) => id === flight);
  if (gone === undefined) return null;
  const places = new Set(gone.stops.map(({ place }) => place));
  const instead = added.filter(({ stops }) => stops.some(({ place }) => places.has(place)));
  if (instead.length === 0) return 'it is removed, and none comes in its place.';
  const named = instead.slice(0, mostNamed).map((each) => flightWords(each, day));
  const more = instead.length > mostNamed ? `; and ${instead.length - mostNamed} more` : '';
  return `${named.join('; ')}${more}.`;
};

/** "+406 cr": by how much the whole plan rises. */
export const riseWords = ({ totals }: Pick<Differences, 'totals'>, currency: string): string =>
  inWords(printedRise(totals.before.cost, totals.after.cost).total, currency, 0, true);
