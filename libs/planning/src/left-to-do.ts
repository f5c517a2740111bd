import { type Draw, type DrumMove, drawsLeft, slingsLeft } from '@drumline/stock';
import type { Scenario } from './scenario.js';

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
