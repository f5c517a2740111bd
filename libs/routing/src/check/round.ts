import type { Plan } from '../plan.js';
import type { Problem } from '../problem.js';
import { type Fault, figure } from './fault.js';

/** A trip or a booked route of a plan, with what it carries and costs, read from the problem for the check. */
export interface Round {
  readonly where: string;
  readonly day: number;
  readonly source: number;
  readonly stops: readonly number[];
  readonly drops: readonly number[];
  readonly legPacks: readonly number[];
  readonly blockHours: number;
  readonly dutyHours: number;
  readonly ownUse: number;
  readonly cost: number;
  /** -1 for a booked route. */
  readonly vehicle: number;
  readonly crewGroup: number;
  readonly crew: number;
}

/** The rounds that can be made at all, and a fault for each that cannot. */
export function readRounds(problem: Problem, plan: Plan): { rounds: Round[]; faults: Fault[] } {
  const faults: Fault[] = [];
  const rounds: Round[] = [];
  plan.trips.forEach((trip, t) => {
    const found = readTrip(problem, trip, `trip ${t}`);
    if ('what' in found) faults.push(found);
    else rounds.push(found);
  });
  problem.booked.forEach((booked, b) => {
    const where = `booked route ${booked.id}`;
    const drops = plan.bookedDrops[b] ?? [];
    const crew = plan.bookedCrews[b] ?? -1;
    rounds.push({ ...booked, where, drops, crew, ownUse: 0, cost: 0, vehicle: -1 });
  });
  return { rounds, faults: [...faults, ...rounds.flatMap(dropFaults)] };
}

function readTrip(problem: Problem, trip: Plan['trips'][number], name: string): Round | Fault {
  const route = problem.routes[trip.route];
  const vehicle = problem.vehicles[trip.vehicle];
  const unknown = (what: string): Fault => ({ where: name, what, mend: 'remove the trip' });
  if (!route) return unknown(`route ${trip.route} does not exist`);
  if (!vehicle) return unknown(`vehicle ${trip.vehicle} does not exist`);
  const where = `${name} (vehicle ${vehicle.id}, day ${trip.day}, route ${trip.route})`;
  if (vehicle.kind !== route.kind)
    return {
      where,
      what: `the route is for kind ${route.kind}, the vehicle is a ${vehicle.kind}`,
      mend: `take a ${route.kind}`,
    };
  if (vehicle.home !== route.source || vehicle.home !== route.end)
    return {
      where,
      what: "the route does not leave from and end at the vehicle's home",
      mend: 'take a vehicle of that base',
    };
  const conditions = route.conditions[route.conditionByDay[trip.day] ?? -1];
  if (!conditions)
    return { where, what: 'the route cannot be travelled that day', mend: 'choose another day or route' };
  const { source, stops, crewGroup } = route;
  return {
    where,
    day: trip.day,
    source,
    stops,
    drops: trip.drops,
    vehicle: trip.vehicle,
    crewGroup,
    crew: trip.crew,
    ...conditions,
  };
}

function dropFaults({ where, stops, drops, legPacks }: Round): Fault[] {
  if (drops.length !== stops.length)
    return [
      { where, what: `${drops.length} drops for ${stops.length} stops`, mend: 'give one figure a stop' },
    ];
  const faults: Fault[] = [];
  let aboard = 0;
  for (let leg = stops.length - 1; leg >= 0; leg--) {
    const drop = drops[leg];
    if (!Number.isInteger(drop) || drop < 0)
      faults.push({
        where,
        what: `drop of ${drop} packs at stop ${leg}`,
        mend: 'set down a whole number, zero or more',
      });
    aboard += drop;
    if (aboard > legPacks[leg]) {
      const what = `${aboard} packs aboard on leg ${leg}, which takes ${legPacks[leg]}`;
      faults.push({ where, what, mend: `take off ${figure(aboard - legPacks[leg])}` });
    }
  }
  return faults;
}
