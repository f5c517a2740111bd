import type { PlanDifferencesAnswer } from '@drumline/contract';
import {
  asStandingFlight,
  checkFlights,
  comparePlans,
  describeFlights,
  type FlightPlan,
  riskOfFlights,
  type Scenario,
  type StandingFlight,
} from '@drumline/planning';
import type { CacheProjection } from '@drumline/stock';
import { addDays, type IsoDate } from '@drumline/units';
import { Injectable } from '@nestjs/common';
import { DataSource } from 'typeorm';
import { Problem } from '../http/problem.js';
import type { PlanRun } from './plan-run.table.js';
import { PlansService } from './plans.service.js';
import { weather } from './weather.js';

/** A plan beside what stood when it was asked for. */
@Injectable()
export class PlanDifferencesService {
  constructor(
    private readonly database: DataSource,
    private readonly plans: PlansService,
  ) {}

  async of(id: string): Promise<PlanDifferencesAnswer> {
    const run = await this.plans.get(id);
    const { scenario, outcome } = run;
    const plan = outcome !== null && 'plan' in outcome ? outcome.plan : null;
    if (plan === null) throw new Problem('conflict', 'This run has no plan to compare.');
    const standing = [...scenario.flights, ...ideasOf(await this.acceptedBefore(run), scenario)];
    const before = describeFlights(scenario, standing, plan.endTarget);
    return {
      ...comparePlans(before, plan),
      asOf: scenario.asOf,
      lastOfferedDay: lastOfferedDay(plan),
      lastDay: addDays(plan.firstDay, plan.days - 1),
      faults: checkFlights(scenario, standing).flatMap((fault) =>
        fault.flights.map((flight) => ({ flight, text: fault.what })),
      ),
      bases: { before: before.bases, after: plan.bases },
      expectedDrums: {
        before: riskOfFlights(scenario, before.flights, before.caches, weather).expectedDrums,
        after: riskOfFlights(scenario, plan.flights, plan.caches, weather).expectedDrums,
      },
      levels: levelsOf(before.caches, plan.caches),
    };
  }

  /** The plan in force when the run was asked for; null: none was accepted by then. */
  private async acceptedBefore({ requestedAt }: PlanRun): Promise<FlightPlan | null> {
    const rows: readonly { readonly plan: FlightPlan }[] = await this.database.query(
      `select run.outcome->'plan' as plan
         from plan_acceptances acceptance join plan_runs run on run.id = acceptance.plan_id
        where acceptance.accepted_at < $1 order by acceptance.accepted_at desc limit 1`,
      [requestedAt],
    );
    return rows[0]?.plan ?? null;
  }
}

const lastOfferedDay = ({ firstDay, offeredDays }: FlightPlan): IsoDate => addDays(firstDay, offeredDays - 1);

/**
 * Flights that a plan had in mind for the days after those it offered. Without them a re-plan would seem to add the whole
 * second week.
 */
const ideasOf = (plan: FlightPlan | null, scenario: Scenario): readonly StandingFlight[] => {
  if (plan === null) return [];
  const tails = new Set(scenario.aircraft.map(({ tail }) => tail));
  const codes = new Set(scenario.places.map(({ code }) => code));
  const crews = new Set(scenario.pilots.map(({ id }) => id));
  const numbers = new Set(scenario.flights.map(({ id }) => id));
  return plan.flights
    .filter(
      ({ kind, state, date, drums }) =>
        kind === 'positioning' && state === 'offered' && drums > 0 && date > lastOfferedDay(plan),
    )
    .map(asStandingFlight)
    .filter(
      ({ id, aircraft, from, to, stops, pilot }) =>
        !numbers.has(id) &&
        tails.has(aircraft) &&
        [from, to, ...stops.map(({ place }) => place)].every((code) => codes.has(code)) &&
        (pilot === undefined || crews.has(pilot)),
    );
};

const levelsOf = (before: readonly CacheProjection[], after: readonly CacheProjection[]) =>
  after.flatMap(({ place, dates, usable }) => {
    const earlier = before.find((cache) => cache.place === place);
    return earlier === undefined ? [] : [{ place, dates, before: earlier.usable, after: usable }];
  });
