import type { PlanRequest } from '@drumline/contract';
import type { Scenario, StandingFlight } from '@drumline/planning';
import { localDate } from '@drumline/units';
import { Injectable } from '@nestjs/common';
import { type Board, BoardService } from '../flights/board/board.service.js';
import { Problem } from '../http/problem.js';

export interface Snapshot {
  readonly scenario: Scenario;
  readonly flightRevisions: Readonly<Record<string, number>>;
}

/** The only place that turns what the features keep into the scenario of a planning run. */
@Injectable()
export class LoadScenarioService {
  constructor(private readonly board: BoardService) {}

  async snapshot(request: PlanRequest): Promise<Snapshot> {
    const { days, offeredDays, changePrice } = request;
    const board = await this.board.read({
      ...(days === undefined ? {} : { days }),
      ...(offeredDays === undefined ? {} : { offeredDays }),
    });
    const { scenario, flights } = board;
    refuseDayOver(scenario, request);
    refuseUnknownFrozen(board, request);
    return {
      scenario: {
        ...scenario,
        ...(changePrice === undefined ? {} : { policy: { ...scenario.policy, changePrice } }),
        offeredDays: Math.min(scenario.days, scenario.offeredDays),
        flights: standingFor(board, request),
      },
      flightRevisions: Object.fromEntries(flights.map(({ id, revision }) => [id, revision])),
    };
  }
}

/** Flights held in place stand for the planner as settled ones: it has no other word for not moving them. */
const standingFor = ({ flights, standingOf }: Board, { frozen }: PlanRequest): readonly StandingFlight[] =>
  flights.flatMap((flight) => {
    const standing = standingOf(flight);
    if (standing === null) return [];
    const holds = standing.state === 'offered' && (flight.heldInPlace || frozen.includes(flight.id));
    return [holds ? { ...standing, state: 'approved' as const } : standing];
  });

/** What stands in the caches is known for now only: a page left open overnight is told so. */
const refuseDayOver = ({ asOf, timeZone }: Scenario, { from }: PlanRequest): void => {
  const today = localDate(asOf, timeZone);
  if (from === undefined || from === today) return;
  throw new Problem('faults', 'See faults.', [
    {
      path: 'from',
      problem: `a plan is made from today, ${today}, with the stock of now; ${from} is another day.`,
      remedy: 'Read the page again, or leave `from` out.',
    },
  ]);
};

const refuseUnknownFrozen = ({ flights }: Board, { frozen }: PlanRequest): void => {
  const known = new Set(flights.map(({ id }) => id));
  const faults = frozen.flatMap((id, index) =>
    known.has(id)
      ? []
      : [
          {
            path: `frozen[${index}]`,
            problem: `${id} is no flight of the days ahead.`,
            remedy: 'Leave it out.',
          },
        ],
  );
  if (faults.length > 0) throw new Problem('faults', 'See faults.', faults);
};
