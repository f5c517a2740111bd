import type { SurfaceState } from '@drumline/network';
import { addDays, epochMinutes, type IsoDate, type IsoInstant, instantOf, localDate } from '@drumline/units';
import { placesMeant } from './places-meant.js';
import { speakerWords, states, whoSpoke } from './who-spoke.js';

/** By what a line is read: the places of the territory, and the time there. */
export interface LineSetting {
  readonly places: readonly { readonly code: string; readonly name: string }[];
  readonly now: IsoInstant;
  readonly timeZone: string;
  /** Who speaks where the line does not say; empty: nobody has been named. */
  readonly speaker: string;
}

export interface SaidSurface {
  readonly place: string;
  readonly state: SurfaceState;
  readonly at: IsoInstant;
  readonly by: string;
  readonly untilDate?: IsoDate;
}

/** One report of a line: what was understood, what is asked about it, or what stands in the way. */
export type Said =
  | {
      readonly kind: 'surface';
      readonly report: SaidSurface;
      /** Named by the line itself; null: it names nobody. */
      readonly who: string | null;
      readonly doubts: readonly string[];
    }
  | { readonly kind: 'fault'; readonly words: string };

/** "LOR soft 0652 helper until Wed, HAS soft 0640": each report by itself. */
export const readLine = (line: string, setting: LineSetting): readonly Said[] =>
  line
    .split(/[,;]/)
    .map((part) => part.trim())
    .filter((part) => part !== '')
    .map((part) => readReport(part, setting));

const readReport = (text: string, setting: LineSetting): Said => {
  const [first, second, ...rest] = text.split(/\s+/);
  const place = placeOf(first!, setting);
  if ('fault' in place) return { kind: 'fault', words: place.fault };
  const state = states.find((each) => each === second?.toLowerCase());
  if (state === undefined) return { kind: 'fault', words: notAState(place.code, second) };
  const until = takeUntil(rest, setting);
  if ('fault' in until) return { kind: 'fault', words: until.fault };
  const time = takeTime(until.rest, setting);
  if ('fault' in time) return { kind: 'fault', words: time.fault };
  const spoke = whoSpoke(time.rest, place.code);
  if ('fault' in spoke) return { kind: 'fault', words: spoke.fault };
  return {
    kind: 'surface',
    report: {
      place: place.code,
      state,
      at: time.at,
      by: `${spoke.who ?? speakerWords(setting.speaker)}, by radio`,
      ...(until.date === undefined ? {} : { untilDate: until.date }),
    },
    who: spoke.who,
    doubts: time.doubts,
  };
};

const notAState = (code: string, word: string | undefined): string =>
  word === undefined
    ? `${code}: say how the surface is, dry, damp, soft or closed.`
    : `"${word}" is no surface. It is dry, damp, soft or closed.`;

const placeOf = (word: string, { places }: LineSetting): { code: string } | { fault: string } => {
  const meant = placesMeant(word, places);
  const [only] = meant;
  if (only !== undefined && meant.length === 1) return { code: only };
  const said = word.toUpperCase();
  if (meant.length > 1) return { fault: `${said} may be ${meant.join(' or ')}: write the whole code.` };
  return { fault: `${said} is no strip, pad or base. The line begins with one: LOR soft 0652 helper.` };
};

type Rest = { readonly rest: readonly string[] };
type Fault = { readonly fault: string };

const takeUntil = (words: readonly string[], setting: LineSetting): (Rest & { date?: IsoDate }) | Fault => {
  const at = words.findIndex((word) => word.toLowerCase() === 'until');
  if (at < 0) return { rest: words };
  const day = words[at + 1] ?? '';
  const date = dayAhead(day, localDate(setting.now, setting.timeZone));
  if (date === undefined) return { fault: `"until ${day}" names no day of the next week: write Wed, or 17.` };
  const behind = words[at + 2] ?? '';
  if (isClock(behind))
    return {
      fault: `"until ${day} ${behind}": a report holds to the end of a day. Write until ${day}; the time it was said stands before until.`,
    };
  return { rest: [...words.slice(0, at), ...words.slice(at + 2)], date };
};

/** "Wed", "17" or "tomorrow", of today and the 27 days after it; a weekday is the next one. */
const dayAhead = (word: string, today: IsoDate): IsoDate | undefined => {
  const said = word.toLowerCase();
  const days = Array.from({ length: 28 }, (_, ahead) => addDays(today, ahead));
  if (said === 'today') return today;
  if (said === 'tomorrow') return addDays(today, 1);
  if (/^\d{1,2}$/.test(said)) return days.find((day) => Number(day.slice(8)) === Number(said));
  return said.length < 3 ? undefined : days.find((day) => weekday(day).startsWith(said));
};

const weekday = (day: IsoDate): string =>
  new Intl.DateTimeFormat('en-GB', { weekday: 'long', timeZone: 'UTC' }).format(new Date(day)).toLowerCase();

const isClock = (word: string): boolean => /^\d{1,2}:?\d\d$/.test(word);

const takeTime = (
  words: readonly string[],
  setting: LineSetting,
): (Rest & { at: IsoInstant; doubts: readonly string[] }) | Fault => {
  const at = words.findIndex(isClock);
  if (at < 0) return { rest: words, at: toTheMinute(setting.now), doubts: [] };
  const rest = words.filter((_, each) => each !== at);
  const digits = words[at]!.replace(':', '').padStart(4, '0');
  const clock = `${digits.slice(0, 2)}:${digits.slice(2)}`;
  if (!/^([01]\d|2[0-3]):[0-5]\d$/.test(clock))
    return { fault: `${words[at]} is no time of day: write 0652.` };
  const today = localDate(setting.now, setting.timeZone);
  const said = instantOf(today, clock, setting.timeZone);
  if (epochMinutes(said) <= epochMinutes(setting.now) + 1) return { rest, at: toTheMinute(said), doubts: [] };
  const before = instantOf(addDays(today, -1), clock, setting.timeZone);
  return {
    rest,
    at: toTheMinute(before),
    doubts: [`${clock} is still to come today: it is kept as ${clock} yesterday.`],
  };
};

const toTheMinute = (at: IsoInstant): IsoInstant => `${at.slice(0, 16)}Z`;
