import type { Plan } from '../plan.js';
import type { Problem } from '../problem.js';
import { emptyPlan } from '../solvers/empty-plan.js';
import { flatten } from '../solvers/search/flat-problem.js';
import { placeTrip } from '../solvers/search/place-trip.js';
import { SearchState } from '../solvers/search/search-state.js';
import type { Round } from './horizon-program.js';

/** Cents by which a delivery may be worth less before it counts as late. */
const LATE = 100;

/**
 * A plan that makes the rounds, each on the first day with hours and room for it; the one that can wait least goes
 * first. Rounds for which no day is left are not made: the search sees to what is missing.
 */
export function placeByUrgency(problem: Problem, rounds: readonly Round[]): Plan {
  const state = new SearchState(flatten(problem), emptyPlan(problem));
  let waiting = [...rounds];
  for (let day = 0; day < problem.days && waiting.length > 0; day++) {
    state.levels.refresh();
    const urgent = waiting
      .map((round) => ({ round, ...urgencyOf(state, round, day) }))
      .sort((a, b) => a.deadline - b.deadline || b.loss - a.loss);
    waiting = urgent.filter(({ round }) => !place(state, round, day)).map(({ round }) => round);
  }
  return state.toPlan();
}

function place(state: SearchState, { route, drops }: Round, day: number): boolean {
  const { flat, levels, supply } = state;
  const condition = flat.conditionAt[route * flat.days + day];
  if (condition < 0) return false;
  levels.refresh();
  if (!fitsLegs(state, condition, drops) || worthOf(state, { route, drops }, day) <= 0) return false;
  const packs = drops.reduce((sum, drop) => sum + drop, 0);
  if (packs > supply.packsFor(flat.source[route], day, flat.ownUse[condition])) return false;
  return placeTrip(state, route, day, drops) >= 0;
}

function fitsLegs({ flat }: SearchState, condition: number, drops: readonly number[]): boolean {
  let aboard = 0;
  for (let at = drops.length - 1; at >= 0; at--) {
    aboard += drops[at];
    if (aboard > flat.legPacks[flat.legsAt[condition] + at]) return false;
  }
  return true;
}

/** What the drops save on the day (cents); -Infinity: they do not fit the stores. */
function worthOf({ flat, levels }: SearchState, { route, drops }: Round, day: number): number {
  const row = flat.maxPacks + 1;
  return drops.reduce((sum, drop, at) => {
    const stop = flat.stops[flat.stopsAt[route] + at];
    return sum + levels.gains[(stop * flat.days + day) * row + drop];
  }, 0);
}

/** First day on which the drops would be worth less than today, and how much less. */
function urgencyOf(state: SearchState, round: Round, today: number): { deadline: number; loss: number } {
  const worth = worthOf(state, round, today);
  for (let day = today + 1; day < state.flat.days; day++) {
    const loss = worth - worthOf(state, round, day);
    if (loss > LATE) return { deadline: day, loss };
  }
  return { deadline: state.flat.days, loss: 0 };
}
