import { Injectable } from '@nestjs/common';
import { Brackets, DataSource } from 'typeorm';
import { type Page, pageOf } from '../http/page.js';
import type { Account } from '../people/account.table.js';
import { mayDo, refuseUnlessMay } from '../people/permission.js';
import { BoardService } from './board/board.service.js';
import { type Consequence, consequenceOf } from './office/consequence.js';
import type { WithLoads } from './office/flight-acts.service.js';
import {
  type Flight,
  type FlightPast,
  flightHistoryTable,
  flightTable,
  loadTable,
} from './store/flight.table.js';
import type { FlightQuery } from './store/flight-query.js';
import { FlightStoreService } from './store/flight-store.service.js';

/** Flights as they are read. Whoever sees only their own sees the flights that name them as pilot. */
@Injectable()
export class FlightsService {
  constructor(
    private readonly database: DataSource,
    private readonly board: BoardService,
    private readonly store: FlightStoreService,
  ) {}

  async list(query: FlightQuery, me: Account): Promise<Page<Flight>> {
    const { limit, after, from, until, state, aircraft, pilot, needsDecision } = query;
    const rows = this.database.getRepository(flightTable).createQueryBuilder('flight');
    const only = (sql: string, values: Readonly<Record<string, unknown>>) =>
      rows.andWhere(sql, { ...values });
    if (!seesAll(me)) only('flight.pilot = :crew', { crew: me.crew ?? '' });
    if (from !== undefined) only('flight.date >= :from', { from });
    if (until !== undefined) only('flight.date <= :until', { until });
    if (state !== undefined) only('flight.state = :state', { state });
    if (aircraft !== undefined) only('flight.aircraft = :aircraft', { aircraft });
    if (pilot !== undefined) only('flight.pilot = :pilot', { pilot });
    if (needsDecision !== undefined)
      rows.andWhere(`flight.needsDecision is ${needsDecision === 'true' ? 'not ' : ''}null`);
    if (after !== undefined) {
      const [date, id] = [after.slice(0, 10), after.slice(11)];
      rows.andWhere(
        new Brackets((where) =>
          where
            .where('flight.date > :date', { date })
            .orWhere('(flight.date = :date and flight.id > :id)', { date, id }),
        ),
      );
    }
    const found = await rows
      .orderBy('flight.date')
      .addOrderBy('flight.id')
      .take(limit + 1)
      .getMany();
    return pageOf(found, limit, ({ date, id }) => `${date}.${id}`);
  }

  async get(id: string, me: Account): Promise<WithLoads> {
    const flight = await this.store.one(this.database.manager, id);
    refuseUnlessMay(me, 'approve flight', { to: 'view', own: isOwn(flight, me) });
    const loads = await this.database
      .getRepository(loadTable)
      .find({ where: { flightId: id }, order: { load: 'ASC' } });
    return { flight, loads, raised: null };
  }

  async history(id: string, me: Account): Promise<readonly FlightPast[]> {
    await this.get(id, me);
    return this.database
      .getRepository(flightHistoryTable)
      .find({ where: { flightId: id }, order: { revision: 'ASC' } });
  }

  async consequence(id: string, me: Account): Promise<Consequence> {
    await this.get(id, me);
    const { scenario } = await this.board.read();
    return consequenceOf(scenario, id);
  }
}

/** Flights of everybody, not only those that name this person's crew. */
export const seesAll = (me: Account): boolean =>
  mayDo(me, 'approve flight', { to: 'view' }).kind === 'allowed';

export const isOwn = ({ pilot }: Flight, { crew }: Account): boolean => crew !== null && pilot === crew;
