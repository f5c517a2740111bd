import type { LowestBeside, PlanDifferencesAnswer } from '@drumline/contract';
import {
  checkFlights,
  comparePlans,
  type DescribedFlights,
  describeFlights,
  type FlightPlan,
  lowestLevel,
  notesOfPart,
  type OpenLine,
  openLines,
  type PlanDifference,
  type PlanNotes,
  projectScenario,
  riskOfFlights,
  type Scenario,
  type StandingFlight,
  withoutLines,
} from '@drumline/planning';
import type { CacheProjection } from '@drumline/stock';
import { addDays } from '@drumline/units';
import { Injectable } from '@nestjs/common';
import { DataSource } from 'typeorm';
import { Problem } from '../http/problem.js';
import { isIdea, lastOfferedDay } from './accepted-flights.js';
import { ideasOf } from './ideas-of.js';
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

  /** `without`: keys of lines left out; what is added up is then of what would be accepted. */
  async of(id: string, without: readonly string[]): Promise<PlanDifferencesAnswer> {
    const run = await this.plans.get(id);
    const compared = await this.compare(run);
    const { plan, before, difference } = compared;
    const left = namedLines(compared.open, without);
    const after = flightsAfter(run.scenario, compared, left);
    const levels = {
      before: projectScenario(run.scenario, run.scenario.flights),
      after: projectScenario(run.scenario, after.flights.filter(stands(plan))),
    };
    const { totals, lowest } = comparePlans(
      { flights: before.flights, caches: levels.before },
      { flights: after.flights, caches: levels.after },
    );
    return {
      ...difference,
      totals,
      lowest: lowest.map((row) => besideIdeas(row, before.caches, after.caches)),
      asOf: run.scenario.asOf,
      lastOfferedDay: lastOfferedDay(plan),
      lastDay: addDays(plan.firstDay, plan.days - 1),
      laterIdeas: {
        before: compared.ideas.length,
        after: after.flights.length - after.flights.filter(stands(plan)).length,
      },
      mayLeaveOut: compared.open.map(({ key }) => key),
      leftOut: left.map(({ key }) => key),
      faultsAfter: after.faults,
      cannotKeep: after.shortages.map(({ text, blockedBy }) => ({ text, blockedBy })),
      remarks: after.remarks,
      faults: checkFlights(run.scenario, [...run.scenario.flights, ...compared.ideas]).flatMap((fault) =>
        fault.flights.map((flight) => ({ flight, text: fault.what })),
      ),
      bases: { before: before.bases, after: after.bases },
      expectedDrums: {
        before: expectedDrums(run.scenario, before),
        after: expectedDrums(run.scenario, after),
      },
      levels: levelsOf(levels.before, levels.after),
    };
  }

  /** The lines with these keys; a plan has others: a fault. */
  async lines(run: PlanRun, keys: readonly string[]): Promise<readonly OpenLine[]> {
    return keys.length === 0 ? [] : namedLines((await this.compare(run)).open, keys);
  }

  private async compare(run: PlanRun): Promise<Compared> {
    const { scenario, outcome } = run;
    const plan = outcome !== null && 'plan' in outcome ? outcome.plan : null;
    if (plan === null) throw new Problem('conflict', 'This run has no plan to compare.');
    const ideas = ideasOf(await this.acceptedBefore(run), scenario);
    const before = describeFlights(scenario, [...scenario.flights, ...ideas], plan.endTarget);
    const difference = comparePlans(before, plan);
    const standing = new Set(scenario.flights.map(({ id }) => id));
    return { plan, ideas, before, difference, open: openLines(difference, standing, lastOfferedDay(plan)) };
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

interface Compared {
  readonly plan: FlightPlan;
  /** What the plan before had in mind for later days. */
  readonly ideas: readonly StandingFlight[];
  readonly before: DescribedFlights;
  readonly difference: PlanDifference;
  readonly open: readonly OpenLine[];
}

type After = Pick<DescribedFlights, 'flights' | 'caches' | 'bases'> &
  PlanNotes & { readonly faults: PlanDifferencesAnswer['faultsAfter'] };

/** The plan as it was found; with lines left out, described and checked anew. */
const flightsAfter = (scenario: Scenario, { plan }: Compared, left: readonly OpenLine[]): After => {
  if (left.length === 0) return { ...plan, faults: [] };
  const flights = withoutLines(plan.flights, scenario.flights, left);
  const settled = new Set(flights.filter(({ state }) => state !== 'offered').map(({ id }) => id));
  const described = describeFlights(scenario, flights, plan.endTarget);
  return {
    ...described,
    ...notesOfPart(scenario, plan, described, weather),
    faults: checkFlights(scenario, flights)
      .filter((fault) => fault.flights.length === 0 || !fault.flights.every((id) => settled.has(id)))
      .map((fault) => ({ flights: fault.flights, text: `${fault.what} ${fault.mend}` })),
  };
};

const namedLines = (open: readonly OpenLine[], keys: readonly string[]): readonly OpenLine[] => {
  const unknown = keys.filter((key) => open.every((line) => line.key !== key));
  if (unknown.length === 0) return open.filter(({ key }) => keys.includes(key));
  throw new Problem(
    'faults',
    'See faults.',
    unknown.map((key) => ({
      path: 'without',
      problem: `${key} is no line of this plan that can be left out.`,
      remedy: 'Read its differences again.',
    })),
  );
};

/** Offered, or settled before: what counts for a level. */
const stands = (plan: FlightPlan) => {
  const last = lastOfferedDay(plan);
  return (flight: DescribedFlights['flights'][number]): boolean => !isIdea(flight, last);
};

const expectedDrums = (scenario: Scenario, { flights, caches }: Pick<After, 'flights' | 'caches'>): number =>
  riskOfFlights(scenario, flights, caches, weather).expectedDrums;

const besideIdeas = (
  row: PlanDifference['lowest'][number],
  before: readonly CacheProjection[],
  after: readonly CacheProjection[],
): LowestBeside => {
  const lowestAt = (caches: readonly CacheProjection[]) =>
    lowestLevel(caches.find(({ place }) => place === row.place)!).litres;
  return { ...row, withIdeas: { beforeLitres: lowestAt(before), afterLitres: lowestAt(after) } };
};

const levelsOf = (before: readonly CacheProjection[], after: readonly CacheProjection[]) =>
  after.flatMap(({ place, dates, usable }) => {
    const earlier = before.find((cache) => cache.place === place);
    return earlier === undefined ? [] : [{ place, dates, before: earlier.usable, after: usable }];
  });
