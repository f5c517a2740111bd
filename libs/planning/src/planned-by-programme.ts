import { type Hours, hours, type Litres, litres } from '@drumline/units';
import type { Scenario } from './scenario.js';

/** What the helicopters are to do for a programme in the days looked ahead. */
export interface PlannedForProgramme {
  readonly programme: string;
  readonly name: string;
  readonly hours: Hours;
  readonly litres: Litres;
}

/** Flight hours and litres of the helicopter tasks, added up by programme in the order of the scenario. */
export function plannedByProgramme({
  programmes,
  helicopterTasks,
}: Pick<Scenario, 'programmes' | 'helicopterTasks'>): readonly PlannedForProgramme[] {
  return programmes.map(({ code, name }) => {
    const own = helicopterTasks.filter(({ programme }) => programme === code);
    return {
      programme: code,
      name,
      hours: hours(own.reduce((sum, task) => sum + task.hours, 0)),
      litres: litres(own.reduce((sum, task) => sum + task.litres, 0)),
    };
  });
}
