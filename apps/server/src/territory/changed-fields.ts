import { isDeepStrictEqual } from 'node:util';

type Facts = Readonly<Record<string, unknown>>;

/** What is another in a thing than before, in words: "offered days 7 to 5"; of what is more than a word or a figure only its name. */
export const changedFields = (before: unknown, after: unknown): readonly string[] => {
  const [old, now] = [factsOf(before), factsOf(after)];
  const names = [...new Set([...Object.keys(old), ...Object.keys(now)])];
  return names
    .filter((name) => !isDeepStrictEqual(old[name], now[name]))
    .map((name) => {
      const [from, to] = [shortWords(old[name]), shortWords(now[name])];
      return `${nameWords(name)}${from === null || to === null ? '' : ` ${from} to ${to}`}`;
    });
};

const factsOf = (of: unknown): Facts => (typeof of === 'object' && of !== null ? (of as Facts) : {});

const longest = 40;

const shortWords = (value: unknown): string | null => {
  if (value === undefined || value === null) return 'none';
  if (typeof value === 'object') return null;
  return String(value).length > longest ? null : String(value);
};

/** "offeredDays" as "offered days". */
const nameWords = (name: string): string => name.replace(/[A-Z]/g, (letter) => ` ${letter.toLowerCase()}`);
