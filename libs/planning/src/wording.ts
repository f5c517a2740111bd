import {
  daysBetween,
  type IsoDate,
  type IsoInstant,
  litres,
  localDate,
  localTime,
  pounds,
  print,
} from '@drumline/units';

const weekdays = ['Sun', 'Mon', 'Tue', 'Wed', 'Thu', 'Fri', 'Sat'];
const months = ['Jan', 'Feb', 'Mar', 'Apr', 'May', 'Jun', 'Jul', 'Aug', 'Sep', 'Oct', 'Nov', 'Dec'];

/** A day as people say it: "Tue 15 Jun". */
export const dayWords = (date: IsoDate): string => {
  const day = new Date(`${date}T00:00:00Z`);
  return `${weekdays[day.getUTCDay()]} ${day.getUTCDate()} ${months[day.getUTCMonth()]}`;
};

/** Whole litres, rounded once: "1,200 L". */
export const litreWords = (amount: number): string => print(litres(amount), 'L');

/** Whole pounds, rounded once: "6,261 lb". */
export const poundWords = (weight: number): string => print(pounds(weight), 'lb');

/** "1 drum", "4 drums". */
export const drumWords = (drums: number): string => `${drums} ${drums === 1 ? 'drum' : 'drums'}`;

/** "A1", "A1 and A2", "A1, A2 and B1". */
export const listWords = (names: readonly string[]): string =>
  names.length < 2 ? names.join('') : `${names.slice(0, -1).join(', ')} and ${names.at(-1)}`;

/** "1 day", "3 days". */
export const countWords = (count: number, one: string): string => `${count} ${count === 1 ? one : `${one}s`}`;

/** A stock as people say it, which is never below nothing: "150 L", "nothing". */
export const stockWords = (level: number): string => (level > 0 ? litreWords(level) : 'nothing');

/** Days in order, runs of three and more by their ends: "Mon 11 Oct, Thu 14 Oct to Sun 17 Oct". */
export function runWords(dates: readonly IsoDate[]): string {
  const runs: IsoDate[][] = [];
  for (const date of dates.toSorted()) {
    const run = runs.at(-1);
    if (run && daysBetween(run.at(-1)!, date) === 1) run.push(date);
    else runs.push([date]);
  }
  return listWords(
    runs.flatMap((run) =>
      run.length < 3 ? run.map(dayWords) : [`${dayWords(run[0]!)} to ${dayWords(run.at(-1)!)}`],
    ),
  );
}

/** "Thu 14 Oct 01:00", on the clocks of the place. */
export const momentWords = (at: IsoInstant, timeZone: string): string =>
  `${dayWords(localDate(at, timeZone))} ${localTime(at, timeZone)}`;

/** "entered for Thu 14 Oct 07:30, still to come at Thu 14 Oct 06:02, and was not used": `now` is the clock of the plan. */
export const stillToComeWords = (at: IsoInstant, now: IsoInstant, timeZone: string): string =>
  `entered for ${momentWords(at, timeZone)}, still to come at ${momentWords(now, timeZone)}, and was not used`;

/** "25 L of the 375 L asked for cannot be drawn", "none of the 375 L asked for can be drawn without going into the reserve". */
export function unmetWords(unmet: number, asked: number, reserve: number): string {
  const spared = reserve > 0 ? ' without going into the reserve' : '';
  return unmet >= asked
    ? `none of the ${litreWords(asked)} asked for can be drawn${spared}`
    : `${litreWords(unmet)} of the ${litreWords(asked)} asked for cannot be drawn${spared}`;
}
