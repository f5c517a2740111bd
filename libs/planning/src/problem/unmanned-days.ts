import { CrewHours } from '@drumline/routing';
import { dayWords, listWords } from '../wording.js';
import type { BuiltProblem } from './problem-map.js';

/** Days on which the flights that fly anyway cannot all have a pilot who is fit and has the hours, a sentence each. */
export function unmannedDays({ problem, map }: BuiltProblem): readonly string[] {
  const hours = new CrewHours(problem);
  return map.dates.flatMap((date, day) => {
    const today = problem.booked.filter((route) => route.day === day && route.crewGroup >= 0);
    const duties = today.map((route) => ({ ...route, group: route.crewGroup }));
    const pilots = hours.match(duties);
    pilots?.forEach((pilot, i) => {
      hours.work(pilot, duties[i]!, 1);
    });
    if (pilots !== null) return [];
    const flights = listWords(today.map(({ id }) => id));
    return [`${dayWords(date)}: no pilots with the hours for ${flights}: free a pilot, or move a flight.`];
  });
}
