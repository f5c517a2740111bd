import type { ProjectionChange } from '@drumline/contract';
import type { Scenario } from '@drumline/planning';
import { addDays, type IsoDate } from '@drumline/units';

interface Kept {
  readonly id: string;
  readonly data: unknown;
}

const lists = { caches: 'caches', 'helicopter-tasks': 'helicopterTasks', slings: 'slings' } as const;

/** The scenario as it would be after one change. `kept`: every thing of that kind, in the order of the document. */
export const changedScenario = (
  scenario: Scenario,
  { kind, id, data }: ProjectionChange,
  kept: readonly Kept[],
): Scenario => {
  const isNew = kept.every((thing) => thing.id !== id);
  const changed = kept.map((thing) => (thing.id === id ? data : thing.data));
  const lines = [...changed, ...(isNew ? [data] : [])].filter((line) => line !== null);
  return { ...scenario, [lists[kind]]: lines.filter((line) => isAhead(line as Dated, scenario)) };
};

interface Dated {
  readonly date?: IsoDate;
}

/** A cache has no date, and is always there. */
const isAhead = ({ date }: Dated, { firstDay, days }: Scenario): boolean =>
  date === undefined || (date >= firstDay && date <= addDays(firstDay, days - 1));
