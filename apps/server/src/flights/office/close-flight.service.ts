import { isDeepStrictEqual } from 'node:util';
import type { Closing } from '@drumline/contract';
import { nextState } from '@drumline/planning';
import { Injectable } from '@nestjs/common';
import { DataSource } from 'typeorm';
import type { Expected } from '../../http/etag.js';
import { Problem } from '../../http/problem.js';
import type { Account } from '../../people/account.table.js';
import { ClockService } from '../../territory/clock.service.js';
import { FlightStoreService } from '../store/flight-store.service.js';
import { takeFlightTurn } from '../store/flight-turn.js';
import { isRepeat, refuseStale, roleFor, type WithLoads } from './flight-acts.service.js';

/** Hours and costs of a flight whose drums are all accounted for: its last act. */
@Injectable()
export class CloseFlightService {
  constructor(
    private readonly database: DataSource,
    private readonly clock: ClockService,
    private readonly store: FlightStoreService,
  ) {}

  async close(id: string, closing: Closing, expected: Expected, by: Account): Promise<WithLoads> {
    const at = await this.clock.now();
    return this.database.transaction(async (transaction) => {
      await takeFlightTurn(transaction);
      const flight = await this.store.one(transaction, id);
      const loads = await this.store.loadsOf(transaction, id);
      const isSame = isDeepStrictEqual(flight.closing, closing);
      if (isSame && isRepeat(flight, { act: 'close', expected, reason: closing.note }, by))
        return { flight, loads, raised: null };
      refuseStale(flight, expected);
      const person = { name: by.fullName, role: roleFor(by, flight, 'close') };
      const answer = nextState(flight, { act: 'close', by: person, met: ['costs and hours'] });
      if (answer.kind === 'refused') throw new Problem('conflict', answer.words);
      const next = { ...flight, state: answer.flight.state, closing };
      const stamp = { act: 'close', by, at, reason: closing.note ?? null };
      return { flight: await this.store.write(transaction, next, loads, stamp), loads, raised: null };
    });
  }
}
