import type { Problem, RouteConditions, Store, Vehicle } from '../problem.js';

/** Hours that rounds of many lengths cannot quite fill. */
const HOURS_FILLED = 0.985;

/**
 * The problem with all its days as one: what is needed and what can be flown in the whole horizon, every route under
 * the conditions it meets most often. Days, crews, booked routes and the standing plan are left out. Its linear program is
 * small, and says in a few seconds what a pack is worth at each store and an hour of each kind of vehicle.
 */
export function wholeHorizon(problem: Problem): Problem {
  return {
    ...problem,
    days: 1,
    stores: problem.stores.map(inAll),
    vehicles: problem.vehicles.map((vehicle) => ({
      ...vehicle,
      blockHours: [HOURS_FILLED * sum(vehicle.blockHours)],
      dutyHours: [HOURS_FILLED * dutyInAll(vehicle, problem.days)],
      rolling: null,
    })),
    routes: problem.routes.map((route) => ({
      ...route,
      conditionByDay: [usualCondition(route)],
      crewGroup: -1,
    })),
    booked: [],
    crews: [],
    standing: [],
    changePrice: 0,
  };
}

function inAll(store: Store): Store {
  const { arrivals, losses, demand, prices, supply } = store;
  return {
    ...store,
    capacity: null,
    arrivals: [sum(arrivals)],
    losses: [sum(losses)],
    demand: [sum(demand)],
    floor: 0,
    packsPerDay: null,
    prices: { ...prices, belowCushion: 0 },
    supply: supply && {
      ...supply,
      packsByDay: supply.packsByDay.slice(-1),
      unitsByDay: supply.unitsByDay?.slice(-1) ?? null,
    },
  };
}

function dutyInAll({ dutyHours, rolling }: Vehicle, days: number): number {
  const daily = sum(dutyHours);
  return rolling ? Math.min(daily, rolling.dutyHours * Math.max(1, days / rolling.days)) : daily;
}

/** Index of the conditions that the route meets on most days; -1: it cannot be travelled at all. */
function usualCondition({ conditions, conditionByDay }: Problem['routes'][number]): number {
  const days = conditions.map((_, index) => conditionByDay.filter((one) => one === index).length);
  const most = Math.max(...days);
  return most > 0 ? days.indexOf(most) : -1;
}

/** The conditions of a route that can be travelled, in a problem with one day. */
export function conditionsOf({ routes }: Problem, route: number): RouteConditions {
  const { conditions, conditionByDay } = routes[route];
  return conditions[Math.max(0, conditionByDay[0])];
}

const sum = (amounts: readonly number[]) => amounts.reduce((total, amount) => total + amount, 0);
