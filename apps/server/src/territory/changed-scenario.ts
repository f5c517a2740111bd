import type { FlightsChange, ProjectionChange } from '@drumline/contract';
import type { Scenario } from '@drumline/planning';
import { addDays, type IsoDate } from '@drumline/units';
import { kindNamed } from './kinds.js';

/** A change of the territory that is asked about before it is made. */
export type AskedChange = FlightsChange | ProjectionChange;

interface Kept {
  readonly id: string;
  readonly data: unknown;
}

/** The scenario as it would be after one change. `kept`: every thing of that kind, in the order of the document. */
export const changedScenario = (scenario: Scenario, change: AskedChange, kept: readonly Kept[]): Scenario => {
  if (change.kind === 'settings') return { ...scenario, noFlyingDays: change.data.noFlyingDays };
  const { kind, id, data } = change;
  const isNew = kept.every((thing) => thing.id !== id);
  const changed = kept.map((thing) => (thing.id === id ? data : thing.data));
  const lines = [...changed, ...(isNew ? [data] : [])].filter((line) => line !== null);
  return { ...scenario, [kindNamed(kind).list!]: lines.filter((line) => isAhead(line as Dated, scenario)) };
};

interface Dated {
  readonly date?: IsoDate;
}

/** A cache has no date, and is always there. */
const isAhead = ({ date }: Dated, { firstDay, days }: Scenario): boolean =>
  date === undefined || (date >= firstDay && date <= addDays(firstDay, days - 1));
