import { storeCourse } from './levels.js';
import type { Plan, PlanCost } from './plan.js';
import type { Problem } from './problem.js';

/** What a plan costs, its tiers apart, in cents. */
export function costOf(problem: Problem, plan: Plan): PlanCost {
  const tiers = {
    travel: sum(plan.trips, (trip) => conditionsOf(problem, trip.route, trip.day).cost),
    packs: packsCost(problem, plan),
    changes: droppedVisits(problem, plan) * problem.changePrice,
    ...shortageCost(problem, plan),
  };
  return { ...tiers, total: sum(Object.values(tiers), (cents) => cents) };
}

/** Of a plan's cost, what is paid; the rest counts what is short or changed. */
export const moneyOf = ({ travel, packs }: PlanCost): number => travel + packs;

/** Stock units delivered to each store on each day, booked routes included. */
export function deliveriesOf(problem: Problem, plan: Plan): number[][] {
  const deliveries = problem.stores.map(() => new Array<number>(problem.days).fill(0));
  const deliver = (stops: readonly number[], drops: readonly number[], day: number) => {
    stops.forEach((stop, i) => {
      deliveries[stop][day] += drops[i] * problem.packSize;
    });
  };
  for (const { route, drops, day } of plan.trips) deliver(problem.routes[route].stops, drops, day);
  problem.booked.forEach((booked, b) => {
    deliver(booked.stops, plan.bookedDrops[b], booked.day);
  });
  return deliveries;
}

function conditionsOf(problem: Problem, route: number, day: number) {
  const { conditions, conditionByDay } = problem.routes[route];
  return conditions[conditionByDay[day]];
}

function packsCost(problem: Problem, plan: Plan): number {
  const each = (source: number) => problem.stores[source].supply?.packCost ?? 0;
  const packs = (drops: readonly number[]) => sum(drops, (one) => one);
  return (
    sum(plan.trips, (trip) => packs(trip.drops) * each(problem.routes[trip.route].source)) +
    sum(plan.bookedDrops, (drops, b) => packs(drops) * each(problem.booked[b].source))
  );
}

function droppedVisits(problem: Problem, plan: Plan): number {
  const flown = plan.trips.map((trip) => visitKey({ ...trip, stops: problem.routes[trip.route].stops }));
  return problem.standing.filter((visit) => {
    const at = flown.indexOf(visitKey(visit));
    if (at >= 0) flown.splice(at, 1);
    return at < 0;
  }).length;
}

const visitKey = (visit: { vehicle: number; day: number; stops: readonly number[] }) =>
  `${visit.vehicle} ${visit.day} ${visit.stops.join()}`;

function shortageCost(problem: Problem, plan: Plan) {
  const deliveries = deliveriesOf(problem, plan);
  const courses = problem.stores.map((store, s) => storeCourse(store, deliveries[s]));
  const below = (
    price: 'belowMinimum' | 'belowCritical' | 'belowCushion',
    mark: 'minimum' | 'critical' | 'cushion',
  ) =>
    sum(
      problem.stores,
      (store, s) => store.prices[price] * sum(courses[s].levels, (level) => short(store[mark], level)),
    );
  return {
    endShort: sum(
      problem.stores,
      (store, s) =>
        store.prices.belowEndTarget * short(store.endTarget, courses[s].levels.at(-1) ?? store.opening),
    ),
    belowCushion: below('belowCushion', 'cushion'),
    belowMinimum: below('belowMinimum', 'minimum'),
    belowCritical: below('belowCritical', 'critical'),
    unmet: sum(problem.stores, (store, s) => store.prices.unmet * sum(courses[s].unmet, (units) => units)),
  };
}

const short = (mark: number, level: number) => Math.max(0, mark - level);

function sum<T>(items: readonly T[], of: (item: T, index: number) => number): number {
  return items.reduce((total, item, index) => total + of(item, index), 0);
}
