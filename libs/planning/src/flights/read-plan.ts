import type { Plan } from '@drumline/routing';
import type { BuiltProblem } from '../problem/problem-map.js';
import { type DescribedFlights, describeFlights } from './describe-flights.js';
import { plannedTrips } from './planned-trips.js';

/** A routing plan as flights that people read, with the stock, base use and money that result. */
export function readPlan(built: BuiltProblem, plan: Plan): DescribedFlights {
  return describeFlights(built.scenario, plannedTrips(built, plan), built.endTarget);
}
