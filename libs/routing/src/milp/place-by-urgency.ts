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
  const waiting = new Set(rounds.keys());
  for (let day = 0; day < problem.days; day++) {
    const urgency = new Map<number, Urgency>();
    const tried = new Set<number>();
    while (tried.size < waiting.size) {
      state.levels.refresh();
      const next = mostUrgent(state, rounds, { waiting, tried, urgency }, day);
      tried.add(next);
      if (!place(state, rounds[next], day)) continue;
      waiting.delete(next);
      tried.delete(next);
      // What a store has been brought makes the other rounds to it less urgent.
      const { stops } = problem.routes[rounds[next].route];
      for (const other of waiting)
        if (problem.routes[rounds[other].route].stops.some((stop) => stops.includes(stop)))
          urgency.delete(other);
    }
  }
  return state.toPlan();
}

interface Waiting {
  readonly waiting: ReadonlySet<number>;
  /** Rounds that cannot be placed today. */
  readonly tried: ReadonlySet<number>;
  /** Urgency of rounds as far as it is known. */
  readonly urgency: Map<number, Urgency>;
}

function mostUrgent(state: SearchState, rounds: readonly Round[], lists: Waiting, day: number): number {
  let best = -1;
  let first: Urgency = { deadline: Number.POSITIVE_INFINITY, loss: 0 };
  for (const at of lists.waiting) {
    if (lists.tried.has(at)) continue;
    const urgency = lists.urgency.get(at) ?? urgencyOf(state, rounds[at], day);
    lists.urgency.set(at, urgency);
    const earlier = urgency.deadline - first.deadline || first.loss - urgency.loss;
    if (best >= 0 && earlier >= 0) continue;
    best = at;
    first = urgency;
  }
  return best;
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

/** First day on which the drops would be worth less than today, and how much less (cents). */
interface Urgency {
  readonly deadline: number;
  readonly loss: number;
}

function urgencyOf(state: SearchState, round: Round, today: number): Urgency {
  const worth = worthOf(state, round, today);
  for (let day = today + 1; day < state.flat.days; day++) {
    const loss = worth - worthOf(state, round, day);
    if (loss > LATE) return { deadline: day, loss };
  }
  return { deadline: state.flat.days, loss: 0 };
}
