import { checkFlights, markableStates, nextState } from '@drumline/planning';
import { Inject, Injectable, type OnApplicationBootstrap, type OnModuleDestroy } from '@nestjs/common';
import type { EntityManager } from 'typeorm';
import { againAndAgain, type Stop } from '../../again-and-again.js';
import { type Actor, theProgram } from '../../audit/audit.service.js';
import { Problem } from '../../http/problem.js';
import { errorFields, type Log } from '../../log.js';
import { LOG } from '../../platform.module.js';
import { SurfaceService } from '../../surface/surface.service.js';
import { TerritoryChangesService } from '../../territory/territory-changes.service.js';
import { type Board, BoardService } from '../board/board.service.js';
import { faultsOfStanding, faultWords } from '../office/check-flight.js';
import { loadsOf } from '../office/flight-acts.service.js';
import { FlightStoreService } from '../store/flight-store.service.js';

const everyMs = 60_000;

/** Marks "Needs a decision" on every flight that today's facts no longer allow as it stands. */
@Injectable()
export class RecheckFlightsService implements OnApplicationBootstrap, OnModuleDestroy {
  private stop: Stop | undefined;

  constructor(
    private readonly board: BoardService,
    private readonly store: FlightStoreService,
    private readonly surface: SurfaceService,
    private readonly territory: TerritoryChangesService,
    @Inject(LOG) private readonly log: Log,
  ) {}

  onApplicationBootstrap(): void {
    this.stop = againAndAgain(everyMs, () => this.recheck(), this.couldNot);
    this.surface.onReported((by) => this.recheck(by).catch(this.couldNot));
    this.territory.onChanged((by) => this.recheck(by).catch(this.couldNot));
  }

  private readonly couldNot = (error: unknown): void => {
    // A territory that is not complete yet has no flights to look at.
    if (!(error instanceof Problem)) this.log.warn('Flights could not be checked.', errorFields(error));
  };

  async onModuleDestroy(): Promise<void> {
    await this.stop?.();
  }

  /** Looks first without a turn, so that nothing waits where nothing is wrong. Returns the flights newly marked. */
  async recheck(by: Actor = theProgram): Promise<readonly string[]> {
    if (newlyBroken(await this.board.read()).length === 0) return [];
    return this.board.change((board, transaction) => this.mark(board, transaction, by));
  }

  /** Inside a turn that has begun. */
  async mark(board: Board, transaction: EntityManager, by: Actor): Promise<readonly string[]> {
    const broken = newlyBroken(board);
    for (const { flight, why } of broken) {
      const planner = { name: by.name, role: 'planner' as const };
      const answer = nextState(flight, { act: 'mark', by: planner, reason: why, met: [] });
      if (answer.kind === 'refused') throw new Error(answer.words);
      const { needsDecision } = answer.flight;
      const stamp = { act: 'mark', by, at: board.now, reason: why };
      await this.store.write(transaction, { ...flight, needsDecision }, loadsOf(board, flight), stamp);
    }
    return broken.map(({ flight }) => flight.id);
  }
}

/** A mark that stands is left as it is. */
const newlyBroken = (board: Board) => {
  const checked = checkFlights(board.scenario, board.scenario.flights);
  return board.flights
    .filter(({ state, needsDecision }) => markableStates.includes(state) && needsDecision === null)
    .flatMap((flight) => {
      const [fault] = faultsOfStanding(board, checked, flight, loadsOf(board, flight));
      return fault === undefined ? [] : [{ flight, why: faultWords(fault) }];
    });
};
