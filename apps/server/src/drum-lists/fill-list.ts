import type { FillListAnswer } from '@drumline/contract';
import { dayWords } from '@drumline/planning';
import type { BaseStock, Batch } from '@drumline/stock';
import { addDays, type IsoDate, type Litres, litres } from '@drumline/units';

type FillLine = FillListAnswer['lines'][number];

/** Where drums are filled, and what for. */
interface FillWork {
  readonly base: BaseStock;
  readonly lines: readonly FillLine[];
  readonly batches: readonly Batch[];
  readonly fillLitres: Litres;
  readonly today: IsoDate;
}

/** What a base has to fill, with what it has for it and what falls short. */
export const fillList = ({ base, lines, batches, fillLitres, today }: FillWork): FillListAnswer => {
  const { place, bulkLitres, emptiesFitForUse, fillDrumsPerDay } = base;
  const drums = drumsOf(lines);
  return {
    place,
    drums,
    litres: litres(drums * fillLitres),
    bulkLitres,
    emptiesFitForUse,
    fillDrumsPerDay,
    batches: fitThroughout(place, lines, batches),
    lines,
    short: [
      ...tooMany(drums, emptiesFitForUse, 'empties fit for use'),
      ...tooMany(drums, Math.floor(bulkLitres / fillLitres), 'drums in the bulk of today'),
      ...tooLate(lines, fillDrumsPerDay, today),
    ],
  };
};

const drumsOf = (lines: readonly FillLine[]): number => lines.reduce((sum, { drums }) => sum + drums, 0);

const fitThroughout = (
  place: string,
  lines: readonly FillLine[],
  batches: readonly Batch[],
): FillListAnswer['batches'] => {
  const lastUse =
    lines
      .map(({ plannedUse }) => plannedUse)
      .sort()
      .at(-1) ?? '';
  return batches
    .filter(({ filledAt, held, retestDue }) => filledAt.includes(place) && !held && retestDue >= lastUse)
    .sort((one, other) => other.filledOn.localeCompare(one.filledOn))
    .map(({ id, filledOn, retestDue }) => ({ id, filledOn, retestDue }));
};

const inWords = (drums: number): string => (drums === 1 ? '1 drum' : `${drums} drums`);

const tooMany = (drums: number, most: number, what: string): readonly string[] =>
  drums > most ? [`${inWords(drums)} to fill, and ${most} ${what}.`] : [];

/** A drum filled on a day flies from the next (conventions, "Drums ready at a base"); today counts as a day to fill. */
const tooLate = (lines: readonly FillLine[], perDay: number, today: IsoDate): readonly string[] => {
  const days = [...new Set(lines.map(({ fillBy }) => fillBy))].sort();
  return days.flatMap((day) => {
    const due = drumsOf(lines.filter(({ fillBy }) => fillBy <= day));
    const most = fillingDays(today, day) * perDay;
    return due > most
      ? [
          `${inWords(due)} to fill by ${dayWords(day)}, and ${most} can be filled by then, at ${perDay} a day.`,
        ]
      : [];
  });
};

const fillingDays = (from: IsoDate, until: IsoDate): number => {
  let days = 0;
  for (let day = from; day <= until; day = addDays(day, 1)) days += 1;
  return days;
};
