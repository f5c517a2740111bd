import type { FlightPlan } from '@drumline/planning';
import { addDays } from '@drumline/units';
import { Injectable } from '@nestjs/common';
import { AuditService } from '../audit/audit.service.js';
import { BoardService } from '../flights/board.service.js';
import { OfferFlightsService } from '../flights/offer-flights.service.js';
import { RecheckFlightsService } from '../flights/recheck-flights.service.js';
import { Problem } from '../http/problem.js';
import type { Account } from '../people/account.table.js';
import { refuseUnlessMay } from '../people/permission.js';
import { type PlanAcceptance, planAcceptanceTable } from './plan-run.table.js';
import { PlansService } from './plans.service.js';
import { whatChanged } from './what-changed.js';

const daysOfAWeek = 7;

/** A plan becomes flights: checked against today's facts, written in one transaction or not at all. */
@Injectable()
export class AcceptPlanService {
  constructor(
    private readonly plans: PlansService,
    private readonly board: BoardService,
    private readonly flights: OfferFlightsService,
    private readonly rechecks: RecheckFlightsService,
    private readonly audit: AuditService,
  ) {}

  /** Accepted once: asked again it is the same acceptance. */
  async accept(id: string, by: Account): Promise<PlanAcceptance> {
    const run = await this.plans.get(id);
    const plan = run.outcome !== null && 'plan' in run.outcome ? run.outcome.plan : null;
    if (plan === null)
      throw new Problem(
        'conflict',
        `This run is ${run.state} and has no plan to accept. See GET /api/plans/${id}.`,
      );
    refuseUnlessMay(by, 'accept plan', { to: 'decide', ...(isInsideTheWeek(plan) ? inside : {}) });
    const accepted = await this.board.change(async (board, transaction) => {
      const there = await transaction.findOneBy(planAcceptanceTable, { planId: id });
      if (there !== null) return there;
      const { flightRevisions, request } = run;
      const offered = { id, plan, flightRevisions, frozen: request.frozen };
      const changed = whatChanged(run.scenario, board.scenario);
      const answer = await this.flights.offer(board, transaction, offered, by);
      if (answer.kind === 'refused') {
        const since = changed.length === 0 ? '' : ` Changed since: ${changed.join(' ')}`;
        throw new Problem(
          'faults',
          `By today's facts the plan breaks limits, see faults. Plan again from now.${since}`,
          answer.faults.map(({ where, what, mend }) => ({ path: where, problem: what, remedy: mend })),
        );
      }
      const { flights, calledOff } = answer;
      await transaction.insert(planAcceptanceTable, {
        planId: id,
        acceptedBy: by.id,
        acceptedByName: by.fullName,
        flights: [...flights],
        calledOff: [...calledOff],
        changed: [...changed],
      });
      await this.audit.record(transaction, by, 'accepted', `plan ${id}`, {
        flights: flights.map(({ flight }) => flight),
        calledOff,
      });
      return transaction.findOneByOrFail(planAcceptanceTable, { planId: id });
    });
    await this.rechecks.recheck();
    return accepted;
  }
}

const inside = { within: ['inside the week'] } as const;

const isInsideTheWeek = ({ firstDay, offeredDays, flights }: FlightPlan): boolean => {
  const week = addDays(firstDay, daysOfAWeek - 1);
  const last = addDays(firstDay, offeredDays - 1);
  return flights.every(({ date, state }) => state !== 'offered' || date > last || date <= week);
};
