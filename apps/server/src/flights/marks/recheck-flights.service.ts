import { checkFlights, faultWords, markableStates, nextState } from '@drumline/planning';
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
import { faultsOfStanding } from '../office/check-flight.js';
import { loadsOf } from '../office/flight-acts.service.js';
import type { Flight } from '../store/flight.table.js';
import { FlightStoreService } from '../store/flight-store.service.js';

const everyMs = 60_000;

/** Marks "Needs a decision" on every flight that today's facts do not allow as it stands, and takes such a mark off with its cause. */
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
    if (marksToSettle(await this.board.read()).length === 0) return [];
    return this.board.change((board, transaction) => this.mark(board, transaction, by));
  }

  /** Inside a turn that has begun. */
  async mark(board: Board, transaction: EntityManager, by: Actor): Promise<readonly string[]> {
    const settled = marksToSettle(board);
    for (const { flight, why } of settled) {
      const act = why === null ? 'unmark' : 'mark';
      const reason = why ?? `no longer so: ${flight.ruleMark}`;
      const planner = { name: by.name, role: 'planner' as const };
      const answer = nextState(flight, { act, by: planner, reason, met: [] });
      if (answer.kind === 'refused') throw new Error(answer.words);
      const marked = { ...flight, needsDecision: answer.flight.needsDecision, ruleMark: why };
      await this.store.write(transaction, marked, loadsOf(board, flight), { act, by, at: board.now, reason });
    }
    return settled.flatMap(({ flight, why }) => (why === null ? [] : [flight.id]));
  }
}

interface ToSettle {
  readonly flight: Flight;
  /** Null: what a rule has marked it for is over, and nothing else is wrong. */
  readonly why: string | null;
}

/** A mark that says what no rule has set, alone or besides, stands until somebody decides. */
const marksToSettle = (board: Board): readonly ToSettle[] => {
  const checked = checkFlights(board.scenario, board.scenario.flights);
  return board.flights
    .filter(
      ({ state, needsDecision, ruleMark }) =>
        markableStates.includes(state) && (needsDecision === null || needsDecision === ruleMark),
    )
    .flatMap((flight) => {
      const faults = faultsOfStanding(board, checked, flight, loadsOf(board, flight)).map(faultWords);
      const { ruleMark } = flight;
      if (ruleMark !== null && faults.some((words) => isSameCause(words, ruleMark))) return [];
      const why = faults[0] ?? null;
      return why === ruleMark ? [] : [{ flight, why }];
    });
};

/** Of the same flight, leg and rule: its figures may move without anything new to decide. */
const isSameCause = (one: string, other: string): boolean => withoutFigures(one) === withoutFigures(other);

const withoutFigures = (words: string): string => {
  const end = words.indexOf(': ');
  return words.slice(0, end) + words.slice(end).replace(/\d[\d,.:]*/g, '#');
};
