import { type Draw, type DrumMove, drawsLeft, slingsLeft } from '@drumline/stock';
import type { IsoDate } from '@drumline/units';
import type { HelicopterTask, Scenario } from './scenario.js';

/** What has been done of the programme; the stock of a scenario has it in it already. */
export interface Done {
  /** Routine draws of today, with the programme in `for`. */
  readonly drawn: readonly Draw[];
  /** Drums set down from under a helicopter, of the days before as well: a sling may be flown early. */
  readonly slung: readonly DrumMove[];
  /** Slings whose day is over and that the scenario has no more: what was flown for them is not taken off those ahead. */
  readonly earlierSlings: readonly DrumMove[];
}

/**
 * The scenario with its programme less what has been done of it (conventions, "Left to do"): every helicopter task less
 * what has been drawn for it, every sling less the drums that have been set down for it; a sling that is done is left
 * out. Litres, drums.
 */
export function leftToDo(scenario: Scenario, { drawn, slung, earlierSlings }: Done): Scenario {
  if (drawn.length === 0 && slung.length === 0) return scenario;
  const tasks = scenario.helicopterTasks.map((task) => ({ ...task, for: task.programme }));
  const helicopterTasks = drawsLeft(tasks, drawn).map(({ for: _, ...task }) => task);
  const slings = slingsLeft<DrumMove>([...earlierSlings, ...scenario.slings], slung)
    .slice(earlierSlings.length)
    .flatMap(({ drums }, index) => (drums > 0 ? [{ ...scenario.slings[index]!, drums }] : []));
  return { ...scenario, helicopterTasks, slings };
}

/** A helicopter task of a day that is over, with the litres that nobody has reported as drawn. */
export type DrawNotReported = Pick<HelicopterTask, 'date' | 'place' | 'helicopter' | 'programme' | 'litres'>;

/** What is held against the tasks of days that are over. */
export interface Reported {
  /** Routine draws of those days, with the programme in `for`. */
  readonly drawn: readonly Draw[];
  /** The local day of the last count of each place. */
  readonly countedOn: ReadonlyMap<string, IsoDate>;
}

/**
 * Of tasks whose day is over, those with litres that no draw was reported for: the level of their place still has them in
 * it. A count on a later day has seen what is left, so that nothing is missing before it. By date.
 */
export function drawsNotReported(
  tasks: readonly HelicopterTask[],
  { drawn, countedOn }: Reported,
): readonly DrawNotReported[] {
  return drawsLeft(
    tasks.map((task) => ({ ...task, for: task.programme })),
    drawn,
  )
    .filter(({ date, place, litres }) => litres > 0 && (countedOn.get(place) ?? '') <= date)
    .map(({ date, place, helicopter, programme, litres }) => ({ date, place, helicopter, programme, litres }))
    .toSorted((one, other) => (one.date < other.date ? -1 : one.date > other.date ? 1 : 0));
}
