import { type Draw, drawsLeft } from '@drumline/stock';
import type { Scenario } from './scenario.js';

/**
 * The scenario with every helicopter task less what has been drawn for it (conventions, "Left to draw"). `drawn`: draws
 * that happened and that the stock of the scenario no longer holds, with the programme in `for`. Litres.
 */
export function leftToDraw(scenario: Scenario, drawn: readonly Draw[]): Scenario {
  if (drawn.length === 0) return scenario;
  const tasks = scenario.helicopterTasks.map((task) => ({ ...task, for: task.programme }));
  const helicopterTasks = drawsLeft(tasks, drawn).map(({ for: _, ...task }) => task);
  return { ...scenario, helicopterTasks };
}
