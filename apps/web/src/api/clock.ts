import type { ClockAnswer } from '@drumline/contract/answers';
import { useEffect, useState } from 'react';
import { z } from 'zod';
import { partOf } from './part-of.js';
import { type Read, useRead } from './read.js';
import { serverAhead } from './send.js';
import { isOfTheOperator, useSession } from './session.js';

const settingsSchema = z.object({
  version: z.number(),
  data: z
    .object({
      title: z.string(),
      timeZone: z.string(),
      days: z.number(),
      offeredDays: z.number(),
      currency: z.string(),
    })
    .loose(),
});

export type Settings = z.output<typeof settingsSchema>;

/** What the territory says of itself: title, time zone, days, currency. */
export const useSettings = (): Read<Settings> => useRead('/api/settings/current', settingsSchema);

const clockSchema = partOf<ClockAnswer>()(
  z.object({
    settings: z.array(z.object({ setAt: z.string(), startsAt: z.string().nullable() })),
    timeZone: z.string(),
  }),
);
type ClockSetting = z.output<typeof clockSchema>['settings'][number];

/** A customer's people are not told of it: what they see are days, and no hours. */
const useIsToldTheClock = (): boolean => {
  const now = useSession();
  return 'me' in now && isOfTheOperator(now.me);
};

const useClock = () => useRead(useIsToldTheClock() ? '/api/clock' : null, clockSchema);

const useClockSettings = (): readonly ClockSetting[] => useClock().value?.settings ?? [];

/** The clock of the territory is still on its way: this machine's own would be another day in a demo. */
export const useIsClockAwaited = (): boolean => {
  const isTold = useIsToldTheClock();
  const { value, problem } = useClock();
  return isTold && value === undefined && problem === undefined;
};

/** The time of the territory, which in a demo is another day than on the wall; goes on by the half minute. */
export const useNow = (): Date => {
  const last = useClockSettings().at(-1);
  const [wall, setWall] = useState(() => Date.now());
  useEffect(() => {
    const timer = setInterval(() => setWall(Date.now()), 30_000);
    return () => clearInterval(timer);
  }, []);
  return saidAfter(last, wall + serverAhead.get());
};

/** What the territory's clock read at an instant of the server's own clock, which stamps what people write. */
export const useTerritoryTime = (): ((stampedAt: string) => Date) => {
  const settings = useClockSettings();
  return (stampedAt) => territoryTime(settings, stampedAt);
};

/** By the setting of that moment, however the clock has been set since. */
export const territoryTime = (settings: readonly ClockSetting[], stampedAt: string): Date => {
  const at = Date.parse(stampedAt);
  return saidAfter(
    settings.findLast(({ setAt }) => Date.parse(setAt) <= at),
    at,
  );
};

/** The clock of this machine may run a little behind the server's: nothing is before the setting. */
const saidAfter = (setting: ClockSetting | undefined, server: number): Date => {
  if (setting === undefined || setting.startsAt === null) return new Date(server);
  return new Date(Date.parse(setting.startsAt) + Math.max(0, server - Date.parse(setting.setAt)));
};

export interface Calendar {
  readonly now: Date;
  /** Today at the territory, YYYY-MM-DD. */
  readonly today: string;
  /** The same, "Tue 15 June 2027"; empty until the clock of the territory is known. */
  readonly operatingDate: string;
  /** "06:55" of an instant, in the territory's time. */
  readonly time: (at: Date | string) => string;
  /** "Tue 15" of an instant or a day. */
  readonly day: (at: Date | string) => string;
  /** "Tue 15 June 2027". */
  readonly date: (at: Date | string) => string;
  /** "Mon 14 to 27 June 2027", and with both months where there are two: "Mon 30 November to 6 December 2026". */
  readonly span: (first: string, last: string) => string;
  /** "06:52", and "Mon 06:52" when it was not today. */
  readonly when: (at: Date | string) => string;
  /** YYYY-MM-DD of an instant. */
  readonly isoDay: (at: Date | string) => string;
}

/** Times and days as they are read at the territory. */
export const useCalendar = (): Calendar => {
  const now = useNow();
  const clock = useClock().value;
  const calendar = calendarOf(now, clock?.timeZone ?? 'UTC');
  return clock === undefined ? { ...calendar, operatingDate: '' } : calendar;
};

/** The same outside of a component. */
export const calendarOf = (now: Date, timeZone: string): Calendar => {
  const as = (at: Date | string, options: Intl.DateTimeFormatOptions) => {
    // A day without a time is the day itself, wherever it is read.
    const isDay = typeof at === 'string' && /^\d{4}-\d\d-\d\d$/.test(at);
    const zone = isDay ? 'UTC' : timeZone;
    return new Intl.DateTimeFormat('en-GB', { ...options, timeZone: zone })
      .format(new Date(at))
      .replaceAll(',', '');
  };
  const time = (at: Date | string) => as(at, { hour: '2-digit', minute: '2-digit', hourCycle: 'h23' });
  const isoDay = (at: Date | string) =>
    new Intl.DateTimeFormat('sv-SE', { timeZone, dateStyle: 'short' }).format(new Date(at));
  const today = isoDay(now);
  const date = (at: Date | string) =>
    as(at, { weekday: 'short', day: 'numeric', month: 'long', year: 'numeric' });
  return {
    now,
    today,
    time,
    isoDay,
    day: (at) => as(at, { weekday: 'short', day: 'numeric' }),
    date,
    operatingDate: date(today),
    span: (first, last) => {
      const ending = as(last, { day: 'numeric', month: 'long', year: 'numeric' });
      const isOneMonth = first.slice(0, 7) === last.slice(0, 7);
      const beginning = as(first, {
        weekday: 'short',
        day: 'numeric',
        ...(isOneMonth ? {} : { month: 'long' }),
      });
      return `${beginning} to ${ending}`;
    },
    when: (at) => (isoDay(at) === today ? time(at) : `${as(at, { weekday: 'short' })} ${time(at)}`),
  };
};
