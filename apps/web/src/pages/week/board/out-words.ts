import type { Week } from '../week-read.js';

/** Letters of the longest word that a day takes on one line where days are narrow. */
const narrowDay = 10;

type Absences = Pick<Week, 'aircraft' | 'days'>;

/** Some reason has a word that a narrow day would have to break: the key says it instead. */
export const hasLongReason = (week: Absences): boolean =>
  absencesOf(week).some(({ reason }) => reason.split(/[\s-]+/).some(({ length }) => length > narrowDay));

/** "A2 scheduled inspection": why each aircraft is out, for the key; with its first day where one is out for several reasons. */
export const outKey = (week: Absences, day: (date: string) => string): readonly string[] => {
  const all = absencesOf(week);
  return all.map(({ tail, from, reason }) => {
    const isOnly = all.filter((each) => each.tail === tail).length === 1;
    return isOnly ? `${tail} ${reason}` : `${tail} ${day(from)} ${reason}`;
  });
};

/** Those of these days, each with the first of these days on which it counts. */
const absencesOf = ({ aircraft, days }: Absences) =>
  aircraft.flatMap(({ tail, absences }) =>
    absences.flatMap(({ from, until, reason }) => {
      const first = days.find(({ date }) => from <= date && date <= until);
      return first === undefined ? [] : [{ tail, from: first.date, reason }];
    }),
  );
