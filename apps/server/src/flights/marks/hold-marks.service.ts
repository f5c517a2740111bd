import { heldAboardWords } from '@drumline/loading';
import { markableStates, nextState } from '@drumline/planning';
import type { Movement } from '@drumline/stock';
import { Injectable, type OnModuleInit } from '@nestjs/common';
import { type EntityManager, In } from 'typeorm';
import type { Actor } from '../../audit/audit.service.js';
import { LedgerService } from '../../stock/ledger/ledger.service.js';
import { StockService } from '../../stock/stock.service.js';
import { type Flight, flightTable } from '../store/flight.table.js';
import { FlightStoreService } from '../store/flight-store.service.js';
import { takeFlightTurn } from '../store/flight-turn.js';

/** Marks "Needs a decision" on every flight with a held drum as the hold is written, and takes it off with the release. */
@Injectable()
export class HoldMarksService implements OnModuleInit {
  constructor(
    private readonly ledger: LedgerService,
    private readonly store: FlightStoreService,
    private readonly stock: StockService,
  ) {}

  onModuleInit(): void {
    this.ledger.follow({
      concerns: mayHoldOrRelease,
      before: takeFlightTurn,
      after: (transaction, { receivedAt }, by) => this.settle(transaction, by, new Date(receivedAt)),
    });
  }

  /** Makes the marks say what is held now, whatever came before. */
  private async settle(transaction: EntityManager, by: Actor, at: Date): Promise<void> {
    const flights = await transaction.find(flightTable, {
      where: { state: In([...markableStates]) },
      order: { id: 'ASC' },
    });
    const loads = await this.store.loads(transaction);
    const held = await this.stock.held(
      transaction,
      loads.flatMap(({ drum }) => drum ?? []),
    );
    const numbers = held.map(({ number }) => number);
    const aboard = new Set(await this.stock.aboard(transaction, numbers));
    const notAboard = new Set(numbers.filter((number) => !aboard.has(number)));
    for (const flight of flights) {
      const own = loads.filter(({ flightId }) => flightId === flight.id);
      const ofFlight = held.filter(({ number }) => own.some(({ drum }) => drum === number));
      const why = heldAboardWords(ofFlight, notAboard);
      if (why === (flight.holdMark?.why ?? null)) continue;
      const marked = why === null ? unmarked(flight, by) : markedBy(flight, why, by);
      await this.store.write(transaction, marked, own, {
        act: why === null ? 'unmark' : 'mark',
        by,
        at,
        reason: why ?? 'none of its drums is held any more',
      });
    }
  }
}

const holding: ReadonlySet<Movement['kind']> = new Set(['held', 'released', 'condemned', 'corrected']);

/** A drum that is not sound is held by the report that says so. */
const mayHoldOrRelease = (movement: Movement): boolean =>
  holding.has(movement.kind) || ('condition' in movement && movement.condition !== 'sound');

const markedBy = (flight: Flight, why: string, { name }: Actor): Flight => {
  const besides = flight.holdMark === null ? flight.needsDecision : flight.holdMark.besides;
  const reason = besides === null ? why : `${why} ${besides}`;
  const answer = nextState(flight, { act: 'mark', by: { name, role: 'planner' }, reason, met: [] });
  if (answer.kind === 'refused') throw new Error(answer.words);
  return { ...flight, needsDecision: answer.flight.needsDecision, holdMark: { why, besides } };
};

const unmarked = (flight: Flight, { name }: Actor): Flight => {
  const answer = nextState(flight, { act: 'unmark', by: { name, role: 'planner' }, met: [] });
  if (answer.kind === 'refused') throw new Error(answer.words);
  return { ...flight, needsDecision: flight.holdMark?.besides ?? null, holdMark: null };
};
