import type { Problem } from '../problem.js';
import { type Fault, figure, GRACE } from './fault.js';
import type { Round } from './round.js';

/** Days and runs of days on which a vehicle is used beyond its hours. */
export function vehicleFaults(problem: Problem, vehicle: number, rounds: readonly Round[]): Fault[] {
  const { id, blockHours, dutyHours, rolling } = problem.vehicles[vehicle];
  const own = rounds.filter((round) => round.vehicle === vehicle);
  const block = hoursByDay(problem, own, (round) => round.blockHours);
  const duty = hoursByDay(problem, own, (round) => round.dutyHours);
  return [
    ...dailyFaults(`vehicle ${id}`, 'block', block, blockHours),
    ...dailyFaults(`vehicle ${id}`, 'duty', duty, dutyHours),
    ...(rolling ? rollingFaults(`vehicle ${id}`, 'duty', duty, rolling.days, rolling.dutyHours) : []),
  ];
}

/** Days and runs of days on which a crew works beyond its hours. */
export function crewFaults(problem: Problem, crew: number, rounds: readonly Round[]): Fault[] {
  const { id, blockHours, dutyHours, rolling } = problem.crews[crew];
  const own = rounds.filter((round) => round.crew === crew);
  const block = hoursByDay(problem, own, (round) => round.blockHours);
  const duty = hoursByDay(problem, own, (round) => round.dutyHours);
  const before = rolling?.flownBefore ?? [];
  return [
    ...dailyFaults(`crew ${id}`, 'block', block, blockHours),
    ...dailyFaults(`crew ${id}`, 'duty', duty, dutyHours),
    ...(rolling
      ? rollingFaults(
          `crew ${id}`,
          'block',
          [...before, ...block],
          rolling.days,
          rolling.blockHours,
          before.length,
        )
      : []),
  ];
}

/** Rounds without the crew that they need, or with one that may not serve them. */
export function crewFitFaults(problem: Problem, rounds: readonly Round[]): Fault[] {
  if (problem.crews.length === 0) return [];
  return rounds.flatMap(({ where, day, crew, crewGroup }) => {
    if (crewGroup < 0 && crew < 0) return [];
    const person = problem.crews[crew];
    if (!person) return [{ where, what: 'nobody goes with it', mend: `assign a crew of group ${crewGroup}` }];
    if (crewGroup < 0 || person.groupsByDay[day].includes(crewGroup)) return [];
    const what = `crew ${person.id} may not serve group ${crewGroup} on day ${day}`;
    return [{ where, what, mend: `assign a crew of group ${crewGroup}` }];
  });
}

function hoursByDay(problem: Problem, rounds: readonly Round[], hours: (round: Round) => number): number[] {
  const byDay = new Array<number>(problem.days).fill(0);
  for (const round of rounds) byDay[round.day] += hours(round);
  return byDay;
}

function dailyFaults(who: string, kind: string, used: readonly number[], limits: readonly number[]): Fault[] {
  return used.flatMap((hours, day) => {
    if (hours <= limits[day] + GRACE) return [];
    const what = `${figure(hours)} ${kind} hours, ${figure(limits[day])} available`;
    return [
      { where: `${who}, day ${day}`, what, mend: `take ${figure(hours - limits[day])} hours off that day` },
    ];
  });
}

/** `hours` may begin `before` days ahead of day 0; runs wholly before it are past. */
function rollingFaults(
  who: string,
  kind: string,
  hours: readonly number[],
  length: number,
  limit: number,
  before = 0,
): Fault[] {
  return hours.flatMap((_, last) => {
    if (last < before) return [];
    const first = Math.max(0, last - length + 1);
    const total = hours.slice(first, last + 1).reduce((sum, one) => sum + one, 0);
    if (total <= limit + GRACE) return [];
    const where = `${who}, days ${first - before} to ${last - before}`;
    const what = `${figure(total)} ${kind} hours in ${length} days, at most ${figure(limit)}`;
    return [{ where, what, mend: `take ${figure(total - limit)} hours off these days` }];
  });
}
