import { isDeepStrictEqual } from 'node:util';
import type { Fault, FlightPlan } from '@drumline/planning';
import { addDays } from '@drumline/units';
import { Injectable } from '@nestjs/common';
import { AuditService } from '../audit/audit.service.js';
import { BoardService } from '../flights/board/board.service.js';
import { RecheckFlightsService } from '../flights/marks/recheck-flights.service.js';
import { OfferFlightsService } from '../flights/offered/offer-flights.service.js';
import { Problem } from '../http/problem.js';
import type { Account } from '../people/account.table.js';
import { refuseUnlessMay } from '../people/permission.js';
import { lastOfferedDay } from './accepted-flights.js';
import { PlanDifferencesService } from './plan-differences.service.js';
import { type PlanAcceptance, type PlanRun, planAcceptanceTable } from './plan-run.table.js';
import { PlansService } from './plans.service.js';
import { whatChanged } from './what-changed.js';

const daysOfAWeek = 7;

/** A plan becomes flights: checked against today's facts, written in one transaction or not at all. */
@Injectable()
export class AcceptPlanService {
  constructor(
    private readonly plans: PlansService,
    private readonly differences: PlanDifferencesService,
    private readonly board: BoardService,
    private readonly flights: OfferFlightsService,
    private readonly rechecks: RecheckFlightsService,
    private readonly audit: AuditService,
  ) {}

  /** Accepted once: asked again it is the same acceptance. `without`: keys of lines that are left out. */
  async accept(id: string, without: readonly string[], by: Account): Promise<PlanAcceptance> {
    const run = await this.plans.get(id);
    const plan = planOf(run);
    const left = await this.differences.lines(run, without);
    const stay = left.flatMap(({ standing }) => standing ?? []);
    const gone = new Set(left.map(({ planned }) => planned));
    const taken = { ...plan, flights: plan.flights.filter((flight) => !gone.has(flight.id)) };
    refuseUnlessMay(by, 'accept plan', { to: 'decide', ...(isInsideTheWeek(taken) ? inside : {}) });
    const accepted = await this.board.change(async (board, transaction) => {
      const there = await transaction.findOneBy(planAcceptanceTable, { planId: id });
      if (there !== null) return sameLines(there, without);
      const { flightRevisions, request } = run;
      const offered = { id, plan: taken, flightRevisions, frozen: [...request.frozen, ...stay] };
      const changed = whatChanged(run.scenario, board.scenario);
      const answer = await this.flights.offer(board, transaction, offered, by);
      if (answer.kind === 'refused') throw refused(answer.faults, changed);
      const { flights, calledOff } = answer;
      const came = { flights: [...flights], calledOff: [...calledOff], leftOut: [...without] };
      const who = { acceptedBy: by.id, acceptedByName: by.fullName };
      await transaction.insert(planAcceptanceTable, { planId: id, ...who, ...came, changed: [...changed] });
      await this.audit.record(transaction, by, 'accepted', `plan ${id}`, {
        ...came,
        flights: flights.map(({ flight }) => flight),
      });
      return transaction.findOneByOrFail(planAcceptanceTable, { planId: id });
    });
    await this.rechecks.recheck();
    return accepted;
  }
}

const planOf = ({ id, state, outcome }: PlanRun): FlightPlan => {
  if (outcome !== null && 'plan' in outcome && outcome.plan !== null) return outcome.plan;
  throw new Problem('conflict', `This run is ${state} and has no plan to accept. See GET /api/plans/${id}.`);
};

/** Another choice of lines is another acceptance. */
const sameLines = (there: PlanAcceptance, without: readonly string[]): PlanAcceptance => {
  if (isDeepStrictEqual([...there.leftOut].sort(), [...without].sort())) return there;
  const lines = there.leftOut.length === 0 ? 'with all its lines' : `without ${there.leftOut.join(', ')}`;
  throw new Problem('conflict', `${there.acceptedByName} has accepted this plan already, ${lines}.`);
};

const refused = (faults: readonly Fault[], changed: readonly string[]): Problem => {
  const since = changed.length === 0 ? '' : ` Changed since: ${changed.join(' ')}`;
  return new Problem(
    'faults',
    `By today's facts the plan breaks limits, see faults. Plan again from now.${since}`,
    faults.map(({ where, what, mend }) => ({ path: where, problem: what, remedy: mend })),
  );
};

const inside = { within: ['inside the week'] } as const;

const isInsideTheWeek = (plan: FlightPlan): boolean => {
  const week = addDays(plan.firstDay, daysOfAWeek - 1);
  const last = lastOfferedDay(plan);
  return plan.flights.every(({ date, state }) => state !== 'offered' || date > last || date <= week);
};
