import { isDeepStrictEqual } from 'node:util';
import { dayWords, momentWords, type Scenario } from '@drumline/planning';

type Named = readonly (readonly [name: string, line: unknown])[];

/** Lists of a scenario in which a change matters to a plan, with what a line is called. */
const lists: readonly (readonly [what: string, linesOf: (scenario: Scenario) => Named])[] = [
  [
    'surface report',
    ({ surfaceReports, timeZone }) =>
      surfaceReports.map((line) => [`${line.place} ${line.state}, ${momentWords(line.at, timeZone)}`, line]),
  ],
  ['hazard notice', ({ notices }) => notices.map((line) => [line.id, line])],
  [
    'count',
    ({ counts, timeZone }) =>
      counts.map((line) => [`${line.place}, ${momentWords(line.at, timeZone)}`, line]),
  ],
  ['drum', ({ drums }) => drums.map((line) => [line.number, line])],
  ['batch', ({ batches }) => batches.map((line) => [line.id, line])],
  ['aircraft', ({ aircraft }) => aircraft.map((line) => [line.tail, line])],
  ['pilot', ({ pilots }) => pilots.map((line) => [line.id, line])],
  ['strip limit', ({ stripLimits }) => stripLimits.map((line) => [`${line.place} ${line.type}`, line])],
  ['cache', ({ caches }) => caches.map((line) => [line.place, line])],
  ['base', ({ bases }) => bases.map((line) => [line.place, line])],
  [
    'helicopter task',
    ({ helicopterTasks }) =>
      helicopterTasks.map((line) => [
        `${line.helicopter} at ${line.place}, ${dayWords(line.date)}, ${line.programme}`,
        line,
      ]),
  ],
  ['sling', ({ slings }) => slings.map((line) => [`${line.from}-${line.to}, ${dayWords(line.date)}`, line])],
  [
    'planned uplift',
    ({ plannedUplifts }) => plannedUplifts.map((line) => [`${line.place}, ${dayWords(line.date)}`, line]),
  ],
  ['booked flight', ({ bookedFlights }) => bookedFlights.map((line) => [line.id, line])],
  ['flight', ({ flights }) => flights.map((line) => [line.id, line])],
  ['policy', ({ policy }) => [['operator', policy]]],
];

/** Names are many where a batch is held: the first few, and how many more. */
const shownNames = 8;

/**
 * What is other today than in the scenario that a plan was made from, one sentence for each kind of thing. Lines of
 * days that are over by today are no change.
 */
export const whatChanged = (then: Scenario, now: Scenario): readonly string[] =>
  lists.flatMap(([what, linesOf]) => {
    const before = byName(linesOf(then).filter(([, line]) => !isOver(line, now)));
    const after = byName(linesOf(now));
    const added = [...after.keys()].filter((name) => !before.has(name));
    const removed = [...before.keys()].filter((name) => !after.has(name));
    const other = [...after.keys()].filter(
      (name) => before.has(name) && !isDeepStrictEqual(before.get(name), after.get(name)),
    );
    return [
      ...sentence(what, 'new', added),
      ...sentence(what, 'no longer there', removed),
      ...sentence(what, 'changed', other),
    ];
  });

/** Several lines may have one name: two tasks of a day at one place. */
const byName = (lines: Named): ReadonlyMap<string, readonly unknown[]> => {
  const map = new Map<string, unknown[]>();
  for (const [name, line] of lines) map.set(name, [...(map.get(name) ?? []), line]);
  return map;
};

const isOver = (line: unknown, { firstDay }: Scenario): boolean => {
  const date = (line as { readonly date?: unknown }).date;
  return typeof date === 'string' && date < firstDay;
};

const sentence = (what: string, how: string, names: readonly string[]): readonly string[] => {
  if (names.length === 0) return [];
  const more = names.length > shownNames ? ` and ${names.length - shownNames} more` : '';
  return [`${what}, ${how}: ${names.slice(0, shownNames).join('; ')}${more}.`];
};
