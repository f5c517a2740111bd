import { addDays, epochMinutes, type IsoDate, type IsoInstant, instantOf, localDate } from '@drumline/units';
import { LineFault, type Sheet, type Told } from './sheet.js';

/** A line without its words of time, author and means, which may stand anywhere in it. */
export interface Parted {
  readonly rest: readonly string[];
  readonly at: IsoInstant | null;
  readonly writtenAt: IsoInstant | null;
  readonly by: string | null;
  /** The second person of a signature. */
  readonly second: string | null;
  readonly means: 'paper' | 'radio';
  /** What stands behind "because"; null: nothing. */
  readonly because: string | null;
}

/** "at 0805" or 08:05, "written 0810", "on Tue", "by K. Aske", "with S. Keeper", "radio", "because ...". */
export const partLine = (line: string, sheet: Sheet): Parted => {
  const [front = '', because] = line.split(/\sbecause\s+/i);
  const words = front.split(/[\s,;]+/).filter((word) => word !== '');
  const found: Found = {
    rest: [],
    day: sheet.day,
    at: null,
    written: null,
    by: null,
    second: null,
    means: sheet.means,
  };
  for (let next = 0; next < words.length; ) next += take(words, next, found, sheet);
  const instant = (clock: string | null): IsoInstant | null =>
    clock === null ? null : inThePast(found.day, clock, sheet);
  return {
    rest: found.rest,
    at: instant(found.at),
    writtenAt: instant(found.written),
    by: found.by,
    second: found.second,
    means: found.means,
    because: because?.trim() || null,
  };
};

/** `crew`: who is taken to have written it where nobody is named. */
export const toldBy = ({ at, writtenAt, by, means }: Parted, sheet: Sheet, crew: string | null): Told => {
  const author = by ?? (sheet.by.trim() || crew);
  if (at === null) throw new LineFault('When? Write the time with a colon, 08:05, or as at 0805.');
  if (author === null) throw new LineFault('Who wrote or said it? Write by RW1, or fill in the field above.');
  if (writtenAt !== null && epochMinutes(writtenAt) < epochMinutes(at))
    throw new LineFault('It was written before it happened: look at both times again.');
  return { happenedAt: at, writtenAt: writtenAt ?? at, means, by: author };
};

interface Found {
  readonly rest: string[];
  day: IsoDate;
  at: string | null;
  written: string | null;
  by: string | null;
  second: string | null;
  means: 'paper' | 'radio';
}

const joins = ['at', 'written', 'on', 'by', 'with', 'radio', 'paper', 'from', 'until', 'because'];

/** Takes what begins at a word; gives how many words that was. */
const take = (words: readonly string[], at: number, found: Found, sheet: Sheet): number => {
  const word = words[at]!.toLowerCase();
  const next = words[at + 1] ?? '';
  if (word === 'radio' || word === 'paper') {
    found.means = word;
    return 1;
  }
  if ((word === 'by' || word === 'from') && ['radio', 'paper'].includes(next.toLowerCase())) return 1;
  if (word === 'by' || word === 'with') {
    const end = words.findIndex(
      (each, index) => index > at && (joins.includes(each.toLowerCase()) || isClock(each)),
    );
    const name = words.slice(at + 1, end < 0 ? undefined : end);
    found[word === 'by' ? 'by' : 'second'] = name.length === 0 ? null : name.join(' ');
    return 1 + name.length;
  }
  if (word === 'on') {
    found.day = dayBefore(next, localDate(sheet.now, sheet.timeZone));
    return 2;
  }
  if (word === 'written') {
    found.written = clockOf(next);
    return 2;
  }
  if (word === 'at') {
    found.at = onlyTime(next, found);
    return 2;
  }
  if (word === 'until') {
    const end = at + (isClock(words[at + 2] ?? '') ? 3 : 2);
    found.rest.push(...words.slice(at, end));
    return end - at;
  }
  if (isClock(word)) found.at = onlyTime(word, found);
  else found.rest.push(words[at]!);
  return 1;
};

const onlyTime = (typed: string, { at }: Found): string => {
  const clock = clockOf(typed);
  if (at === null || at === clock) return clock;
  throw new LineFault(
    `Two times, ${at} and ${clock}: when was it? If ${clock} is when it was written, put written before it.`,
  );
};

const isClock = (word: string): boolean => /^\d{1,2}:\d\d$/.test(word);

const clockOf = (typed: string): string => {
  const digits = typed.replace(':', '').padStart(4, '0');
  const clock = `${digits.slice(0, 2)}:${digits.slice(2)}`;
  if (typed !== '' && /^([01]\d|2[0-3]):[0-5]\d$/.test(clock)) return clock;
  throw new LineFault(typed === '' ? 'at what time? Write 0805.' : `${typed} is no time of day: write 0805.`);
};

const inThePast = (day: IsoDate, clock: string, { now, timeZone }: Sheet): IsoInstant => {
  const instant = instantOf(day, clock, timeZone);
  if (epochMinutes(instant) <= epochMinutes(now) + 1) return `${instant.slice(0, 16)}Z`;
  throw new LineFault(
    `${clock} of ${day} is still to come: put the day of the sheet right, or write on Tue.`,
  );
};

/** "Tue" or "15": today or one of the 13 days before it. */
const dayBefore = (word: string, today: IsoDate): IsoDate => {
  const said = word.toLowerCase();
  const days = Array.from({ length: 14 }, (_, back) => addDays(today, -back));
  const day = days.find((each) =>
    /^\d{1,2}$/.test(said)
      ? Number(each.slice(8)) === Number(said)
      : said.length > 2 && weekday(each).startsWith(said),
  );
  if (day !== undefined) return day;
  throw new LineFault(`"on ${word}" names none of the last 14 days: write on Tue, or on 15.`);
};

const weekday = (day: IsoDate): string =>
  new Intl.DateTimeFormat('en-GB', { weekday: 'long', timeZone: 'UTC' }).format(new Date(day)).toLowerCase();
