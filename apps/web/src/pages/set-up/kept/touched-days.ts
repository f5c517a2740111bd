import { figure } from '../../../ui/index.js';

interface Side {
  readonly minimumLitres: number;
  readonly criticalLitres: number;
  readonly levels: { readonly usableLitres: readonly number[] };
}

interface Consequence {
  readonly dates: readonly string[];
  readonly items: readonly { readonly place: string; readonly before: Side; readonly after: Side }[];
}

/** A cache that a change touches: on the first day that differs, and on the day on which it is left lowest. */
export interface TouchedCache {
  readonly place: string;
  readonly date: string;
  readonly before: number;
  readonly after: number;
  readonly words: string;
}

/** `usableLitres` begins with the level now: the figure of a day is one further on. */
export const touchedDays = ({ dates, items }: Consequence): readonly TouchedCache[] =>
  items.flatMap(({ place, before, after }) => {
    const [was, is] = [before.levels.usableLitres, after.levels.usableLitres];
    const ahead = is.length - dates.length;
    const differing = dates.map((_, at) => at + ahead).filter((at) => is[at] !== was[at]);
    if (differing.length === 0) return [];
    const lowest = differing.reduce((low, at) => (is[at]! < is[low]! ? at : low));
    return [...new Set([differing[0]!, lowest])].map((day) => ({
      place,
      date: dates[day - ahead]!,
      before: was[day]!,
      after: is[day]!,
      words: finding(was[day]!, is[day]!, after),
    }));
  });

const finding = (was: number, is: number, { minimumLitres, criticalLitres }: Side): string => {
  const level = (litres: number) =>
    litres < criticalLitres
      ? `below critical ${figure(criticalLitres)} L`
      : litres < minimumLitres
        ? `below minimum ${figure(minimumLitres)} L`
        : 'above minimum';
  return level(was) === level(is) ? `${level(is)}, as before` : `${level(is)}; before: ${level(was)}`;
};
