import type { BookedRoute, Problem } from '../problem.js';
import { CrewHours, type Duty } from './crew-hours.js';

/** What a booked route asks of its crew. */
export const dutyOfBooked = (booked: BookedRoute): Duty => ({ ...booked, group: booked.crewGroup });

/**
 * A crew for every booked route, day by day; -1 where nobody is needed. Or the days on which the booked
 * routes cannot all be crewed.
 */
export function bookCrews(problem: Problem): { crews: number[] } | { shortDays: number[] } {
  const crews = problem.booked.map(() => -1);
  if (problem.crews.length === 0) return { crews };
  const hours = new CrewHours(problem);
  const shortDays: number[] = [];
  for (let day = 0; day < problem.days; day++) {
    const today = [...problem.booked.keys()].filter(
      (b) => problem.booked[b].day === day && problem.booked[b].crewGroup >= 0,
    );
    const matched = hours.match(today.map((b) => dutyOfBooked(problem.booked[b])));
    if (!matched) {
      shortDays.push(day);
      continue;
    }
    today.forEach((b, i) => {
      crews[b] = matched[i];
      hours.work(matched[i], dutyOfBooked(problem.booked[b]), 1);
    });
  }
  return shortDays.length === 0 ? { crews } : { shortDays };
}
