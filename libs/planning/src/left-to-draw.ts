import type { Draw } from '@drumline/stock';
import { litres } from '@drumline/units';
import type { HelicopterTask, Scenario } from './scenario.js';

/**
 * The scenario with every helicopter task less what has been drawn for it (conventions, "Left to draw"). `drawn`: draws
 * that happened and that the stock of the scenario no longer holds, with the programme in `for`; a draw is taken off
 * the tasks of its own programme, place and day, in their order. What was drawn beyond them is taken off no other task,
 * and a task that is done stays, with 0 L. Litres.
 */
export function leftToDraw(scenario: Scenario, drawn: readonly Draw[]): Scenario {
  if (drawn.length === 0) return scenario;
  const open = new Map<string, number>();
  for (const draw of drawn) {
    const key = keyOf({ ...draw, programme: draw.for });
    open.set(key, (open.get(key) ?? 0) + draw.litres);
  }
  const helicopterTasks = scenario.helicopterTasks.map((task) => {
    const key = keyOf(task);
    const done = Math.min(task.litres, open.get(key) ?? 0);
    open.set(key, (open.get(key) ?? 0) - done);
    return done > 0 ? { ...task, litres: litres(task.litres - done) } : task;
  });
  return { ...scenario, helicopterTasks };
}

const keyOf = ({ date, place, programme }: Pick<HelicopterTask, 'date' | 'place' | 'programme'>): string =>
  JSON.stringify([date, place, programme]);
