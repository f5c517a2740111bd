import { markableStates, nextState } from '@drumline/planning';
import type { Loaded } from '@drumline/stock';
import { Injectable } from '@nestjs/common';
import type { EntityManager } from 'typeorm';
import type { Account } from '../../people/account.table.js';
import { StockService } from '../../stock/stock.service.js';
import type { Flight } from '../store/flight.table.js';
import type { FlightReport } from '../store/flight-report.table.js';
import { FlightStoreService } from '../store/flight-store.service.js';

interface Loading {
  readonly flight: Flight;
  readonly report: FlightReport;
  readonly now: Date;
  readonly by: Account;
}

/** The drums of a loading: each a movement of the ledger, and none of them set aside for another flight any longer. */
@Injectable()
export class TakeAboardService {
  constructor(
    private readonly stock: StockService,
    private readonly store: FlightStoreService,
  ) {}

  async take(transaction: EntityManager, loading: Loading): Promise<void> {
    const movements = loadedDrums(loading);
    const numbers = new Set(movements.map(({ drum }) => drum));
    const setAside = (await this.store.loads(transaction)).filter(({ drum }) => numbers.has(drum ?? ''));
    for (const id of new Set(setAside.map(({ flightId }) => flightId)))
      if (id !== loading.flight.id)
        await this.takeFrom(transaction, await this.store.one(transaction, id), numbers, loading);
    await this.stock.append(transaction, movements, loading.by);
  }

  /** A flight that loses a drum has to be looked at: it may have to take another. */
  private async takeFrom(
    transaction: EntityManager,
    other: Flight,
    numbers: ReadonlySet<string>,
    { flight, now, by }: Loading,
  ): Promise<void> {
    if (!markableStates.includes(other.state)) return;
    const loads = await this.store.loadsOf(transaction, other.id);
    const lost = loads.flatMap(({ drum }) => (drum !== null && numbers.has(drum) ? [drum] : []));
    const why = `${flight.id} has taken ${lost.join(', ')}, set aside for this flight.`;
    const reason = other.needsDecision === null ? why : `${other.needsDecision} ${why}`;
    const answer = nextState(other, {
      act: 'mark',
      by: { name: by.fullName, role: 'planner' },
      reason,
      met: [],
    });
    if (answer.kind === 'refused') throw new Error(answer.words);
    const { needsDecision } = answer.flight;
    const left = loads.map((load) => (lost.includes(load.drum ?? '') ? { ...load, drum: null } : load));
    const stamp = { act: 'mark', by, at: now, reason: why };
    await this.store.write(transaction, { ...other, needsDecision }, left, stamp);
  }
}

/** In the order of their numbers, as every turn of the stock is taken. */
const loadedDrums = ({ flight, report: { data, author, receivedAt } }: Loading): readonly Loaded[] => {
  if (data.kind !== 'load') return [];
  const { happenedAt, writtenAt, means, witnesses, drums } = data;
  const drumNumbers = [...drums].sort((one, other) => (one.drum < other.drum ? -1 : 1));
  return drumNumbers.map(({ movement, drum }) => ({
    id: movement,
    kind: 'loaded',
    happenedAt,
    writtenAt,
    receivedAt: receivedAt.toISOString(),
    means,
    by: author,
    witnesses,
    drum,
    place: flight.fromPlace,
    flight: flight.id,
    leg: 1,
    condition: 'sound',
    foundMillilitres: null,
    bound: 'out',
  }));
};
