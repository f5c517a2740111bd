import { type Missing, missingForPlan, parseScenario, scenarioSchema } from '@drumline/contract';
import { localDate } from '@drumline/units';
import { capital } from '../../../ui/index.js';
import { isTheOne, nameIn, type Section } from '../sections.js';

/** A territory that is being made on this page, before any of it is brought in: by field of the scenario document. */
export type Draft = Readonly<Record<string, unknown>>;

const lists = Object.entries(scenarioSchema.shape).flatMap(([field, schema]) =>
  schema.def.type === 'array' ? [field] : [],
);

/** The whole document as it would be brought in now. */
export const scenarioOf = ({ settings, ...rest }: Draft, now: Date): Readonly<Record<string, unknown>> => {
  const asOf = `${now.toISOString().slice(0, 16)}Z`;
  const { clockStartsAt: _, ...said } = (settings ?? {}) as Record<string, unknown>;
  return {
    format: 'drumline-scenario/1',
    ...Object.fromEntries(lists.map((list) => [list, []])),
    ...said,
    asOf,
    firstDay: localDate(asOf, zoneOf(said.timeZone)),
    ...rest,
  };
};

/** A zone that does not exist is a fault of its own field, not of the day. */
const zoneOf = (zone: unknown): string => {
  try {
    return new Intl.DateTimeFormat('en-GB', { timeZone: String(zone) }).resolvedOptions().timeZone;
  } catch {
    return 'UTC';
  }
};

export const missingIn = (draft: Draft, now: Date): readonly Missing[] =>
  missingForPlan(scenarioOf(draft, now));

/** What looks wrong and keeps nothing out. */
export const doubtsIn = (draft: Draft, now: Date): readonly string[] =>
  parseScenario(scenarioOf(draft, now)).doubts.map(({ problem, remedy }) => `${capital(problem)} ${remedy}`);

export const linesIn = (draft: Draft, section: Section): readonly unknown[] => {
  const kept = draft[section.list];
  if (isTheOne(section)) return kept === undefined ? [] : [kept];
  return (kept ?? []) as readonly unknown[];
};

/** With one thing put in the place of another, added, or (null) taken out. */
export const withLine = (
  draft: Draft,
  section: Section,
  { at, data }: { at: number; data: unknown },
): Draft => {
  if (isTheOne(section)) return { ...draft, [section.list]: data };
  const lines = linesIn(draft, section);
  const others = lines.flatMap((line, index) => (index !== at ? [line] : data === null ? [] : [data]));
  return { ...draft, [section.list]: at < 0 ? [...others, data] : others };
};

/** What the invented territory has of a kind, as a beginning for one's own: without what belongs to its own days. */
export const exampleLines = (example: Readonly<Record<string, unknown>>, section: Section) => {
  if (section.list === 'settings') return [{ id: 'current', data: settingsOf(example) }];
  const kept = example[section.list];
  const lines = (Array.isArray(kept) ? kept : [kept]) as readonly Readonly<Record<string, unknown>>[];
  return lines.flatMap((data) => {
    const id = nameIn(section, data);
    return id === null ? [] : [{ id, data: withoutDays(data) }];
  });
};

const settingsOf = ({ timeZone, days, offeredDays, currency }: Readonly<Record<string, unknown>>) => ({
  timeZone,
  days,
  offeredDays,
  currency,
  noFlyingDays: [],
});

const dated = ['absences', 'lastLandings', 'daysOff', 'flown', 'resupplies'];

const withoutDays = (data: Readonly<Record<string, unknown>>) =>
  Object.fromEntries(
    Object.entries(data).map(([field, value]) => [field, dated.includes(field) ? [] : value]),
  );
