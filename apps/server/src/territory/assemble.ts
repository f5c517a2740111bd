import type { Settings } from '@drumline/contract';
import type { Scenario } from '@drumline/planning';
import { type IsoDate, localDate } from '@drumline/units';
import { kinds } from './kinds.js';

export interface Thing {
  readonly kind: string;
  readonly id: string;
  readonly data: unknown;
}

/** Lists that a document leaves out where there is nothing in them. */
const leftOutEmpty: readonly string[] = ['approvals', 'tieDown'];

const isWritten = ([list, lines]: readonly [string, readonly unknown[]]): boolean =>
  !leftOutEmpty.includes(list) || lines.length > 0;

/** The part of a scenario that people keep, as one document. Reports, stock and flights are left empty. */
export const assemble = (things: readonly Thing[], now: Date): Scenario => {
  const dataOf = (kind: string): unknown[] =>
    things.filter((thing) => thing.kind === kind).map(({ data }) => data);
  const { clockStartsAt: _, ...settings } = (dataOf('settings')[0] ?? {}) as Partial<Settings>;
  const [dangerousGoods] = dataOf('dangerous-goods');
  const asOf = `${now.toISOString().slice(0, 16)}Z`;
  const kept = Object.fromEntries(
    kinds
      .flatMap(({ name, list }) => (list === null ? [] : [[list, dataOf(name)] as const]))
      .filter(isWritten),
  );
  // Not yet a scenario where the operator has not filled in the settings or the policy: parseScenario says so.
  return {
    format: 'drumline-scenario/1',
    ...settings,
    asOf,
    firstDay: localDate(asOf, settings.timeZone ?? 'UTC'),
    policy: dataOf('policy')[0],
    ...(dangerousGoods === undefined ? {} : { dangerousGoods }),
    surfaceReports: [],
    drums: [],
    counts: [],
    flights: [],
    ...kept,
  } as unknown as Scenario;
};

const datedLists = ['helicopterTasks', 'slings', 'plannedUplifts', 'bookedFlights', 'handPlan'] as const;

/** Without the lines of days that are over, or not looked ahead to yet. */
export const withinHorizon = (scenario: Scenario): Scenario => {
  const last = dayAfter(scenario.firstDay, scenario.days - 1);
  const isAhead = ({ date }: { readonly date: IsoDate }) => date >= scenario.firstDay && date <= last;
  const trimmed = datedLists.map((list) => [
    list,
    (scenario[list] as readonly { date: IsoDate }[]).filter(isAhead),
  ]);
  return { ...scenario, ...Object.fromEntries(trimmed) };
};

/** With the horizon so wide that no line is outside of it: the other rules are then asked of every line. */
export const withEveryDay = (scenario: Scenario): Scenario => {
  const dates = datedLists.flatMap((list) => scenario[list].map(({ date }) => date));
  const ahead = [scenario.firstDay, dayAfter(scenario.firstDay, (scenario.days ?? 1) - 1)];
  const [first, last] = firstAndLast([...ahead, ...dates]);
  return { ...scenario, firstDay: first, days: (Date.parse(last) - Date.parse(first)) / dayMs + 1 };
};

const firstAndLast = (days: readonly IsoDate[]): readonly [IsoDate, IsoDate] => {
  const inOrder = [...days].sort();
  return [inOrder.at(0)!, inOrder.at(-1)!];
};

const dayMs = 86_400_000;
const dayAfter = (day: IsoDate, days: number): IsoDate =>
  new Date(Date.parse(day) + days * dayMs).toISOString().slice(0, 10);
