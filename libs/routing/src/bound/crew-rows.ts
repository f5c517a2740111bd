import type { Crew, Problem } from '../problem.js';
import type { Draft } from './draft.js';
import { rollingRows } from './hour-rows.js';

/** Rows in which a route of one crew group counts its hours, by day. */
export interface CrewRows {
  readonly blockRows: readonly (readonly number[])[];
  readonly dutyRows: readonly (readonly number[])[];
}

/**
 * Hours of crews added up: of those who may serve a group, and of all together, less the booked routes. That one
 * person must go with a whole route is relaxed. Index: crew group. Empty where nobody is needed.
 */
export function crewRows(draft: Draft, problem: Problem): CrewRows[] {
  if (problem.crews.length === 0) return [];
  const groups = Math.max(-1, ...problem.routes.map(({ crewGroup }) => crewGroup)) + 1;
  const all = hourRows(draft, problem, () => true);
  return Array.from({ length: groups }, (_, group) => {
    const own = hourRows(draft, problem, (one) => one === group);
    return {
      blockRows: own.block.map((row, day) => [row, all.block[day]]),
      dutyRows: own.duty.map((row, day) => [row, all.duty[day]]),
    };
  });
}

function hourRows(draft: Draft, problem: Problem, counts: (group: number) => boolean) {
  const { crews, days } = problem;
  const booked = problem.booked.filter(({ crewGroup }) => crewGroup >= 0 && counts(crewGroup));
  const daily = (hours: 'blockHours' | 'dutyHours') =>
    Array.from({ length: days }, (_, day) => {
      const there = total(crews.map((crew) => (serves(crew, day, counts) ? crew[hours][day] : 0)));
      const taken = total(booked.map((route) => (route.day === day ? route[hours] : 0)));
      return Math.max(0, there - taken);
    });
  const rolling = crews.flatMap((crew) => crew.rolling ?? []);
  const inWindow = (crew: Crew, length: number, from: number) => {
    const hours = crew.blockHours.map((hours, day) => (serves(crew, day, counts) ? hours : 0));
    const within = total(hours.slice(Math.max(0, from), from + length));
    if (crew.rolling?.days !== length) return within;
    const before = Array.from({ length: -Math.min(0, from) }, (_, at) =>
      crew.rolling?.flownBefore.at(from + at),
    );
    return Math.min(within, Math.max(0, crew.rolling.blockHours - total(before.map((hours) => hours ?? 0))));
  };
  const bookedIn = (length: number, from: number) =>
    total(booked.map(({ day, blockHours }) => (day >= from && day < from + length ? blockHours : 0)));
  return {
    block: rollingRows(
      draft,
      daily('blockHours'),
      [...new Set(rolling.map(({ days: length }) => length))],
      (length, from) => total(crews.map((crew) => inWindow(crew, length, from))) - bookedIn(length, from),
      Math.max(0, ...rolling.map(({ days: length }) => length)),
    ),
    duty: daily('dutyHours').map((hours) => draft.row(Number.NEGATIVE_INFINITY, hours)),
  };
}

const total = (amounts: readonly number[]) => amounts.reduce((sum, amount) => sum + amount, 0);

const serves = (crew: Crew, day: number, counts: (group: number) => boolean) =>
  crew.groupsByDay[day].some(counts);
