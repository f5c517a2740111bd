import { unfinishedStates } from '@drumline/planning';
import { Injectable } from '@nestjs/common';
import { type EntityManager, In, LessThan, LessThanOrEqual, MoreThanOrEqual } from 'typeorm';
import { type Actor, AuditService } from '../../audit/audit.service.js';
import { Problem } from '../../http/problem.js';
import { StockService } from '../../stock/stock.service.js';
import {
  type Flight,
  flightHistoryTable,
  flightTable,
  type Load,
  legTable,
  loadTable,
  unreported,
} from './flight.table.js';

/** An act on a flight, for its history and the audit. */
export interface Stamp {
  readonly act: string;
  readonly by: Actor;
  readonly at: Date;
  readonly reason: string | null;
}

type Stamped = 'revision' | 'lastAct' | 'reason' | 'changedAt' | 'changedBy' | 'changedByName';
type Reported = keyof typeof unreported;

/** A flight as an act leaves it; what is not said of reports, nobody has reported. */
export type NextFlight = Omit<Flight, Stamped | Reported> & Partial<Pick<Flight, Reported>>;

/** Reads and writes flights with their legs, loads and history, always inside a transaction. */
@Injectable()
export class FlightStoreService {
  constructor(
    private readonly audit: AuditService,
    private readonly stock: StockService,
  ) {}

  async one(transaction: EntityManager, id: string): Promise<Flight> {
    const flight = await transaction.findOneBy(flightTable, { id });
    if (flight !== null) return flight;
    throw new Problem('not-found', `There is no flight ${id}. Look for it among the flights of Week.`);
  }

  /** Flights of a day on, by day and number. */
  since(transaction: EntityManager, day: string): Promise<Flight[]> {
    return transaction.find(flightTable, {
      where: { date: MoreThanOrEqual(day) },
      order: { date: 'ASC', id: 'ASC' },
    });
  }

  /** Of days before this one, those of which somebody has still to say something; by day and number. */
  unfinishedBefore(transaction: EntityManager, day: string): Promise<Flight[]> {
    return transaction.find(flightTable, {
      where: { date: LessThan(day), state: In([...unfinishedStates]) },
      order: { date: 'ASC', id: 'ASC' },
    });
  }

  loadsOf(transaction: EntityManager, flightId: string): Promise<Load[]> {
    return transaction.find(loadTable, { where: { flightId }, order: { load: 'ASC' } });
  }

  /** Every drum that is set aside for a flight, and every one still to be filled. */
  loads(transaction: EntityManager): Promise<Load[]> {
    return transaction.find(loadTable, { order: { flightId: 'ASC', load: 'ASC' } });
  }

  /**
   * Of the flights given with a revision, those that an act has changed since: a mark asks for a decision and changes
   * nothing. Revision 0: it was not there; a person has made or changed it since, and not only another plan.
   */
  async changedSince(
    transaction: EntityManager,
    revisions: Readonly<Record<string, number>>,
  ): Promise<ReadonlySet<string>> {
    const rows: { readonly id: string }[] = await transaction.query(
      `select distinct flight_id as id from flight_history join unnest($1::text[], $2::int[]) as known (flight, revision)
         on known.flight = flight_id where flight_history.revision > known.revision and act not in ('mark', 'unmark')
          and (known.revision > 0 or act not in ('offer', 'replan'))`,
      [Object.keys(revisions), Object.values(revisions)],
    );
    return new Set(rows.map(({ id }) => id));
  }

  /** Why a flight needs a decision now and needed one then already; null: it does not, or was marked since. */
  async neededDecision(
    transaction: EntityManager,
    { id, needsDecision }: Pick<Flight, 'id' | 'needsDecision'>,
    then: Date,
  ): Promise<string | null> {
    if (needsDecision === null) return null;
    const past = await transaction.findOne(flightHistoryTable, {
      where: { flightId: id, at: LessThanOrEqual(then) },
      order: { revision: 'DESC' },
    });
    return (past?.data as Flight | undefined)?.needsDecision ?? null;
  }

  /** Writes the flight as the act leaves it: its revision is one up, its history one line longer. */
  async write(
    transaction: EntityManager,
    next: NextFlight,
    loads: readonly Load[],
    { act, by, at, reason }: Stamp,
  ): Promise<Flight> {
    const before = await transaction.findOneBy(flightTable, { id: next.id });
    const revision = (before?.revision ?? 0) + 1;
    const flight: Flight = {
      ...unreported,
      ...next,
      ...(next.needsDecision === null ? { holdMark: null } : {}),
      ruleMark: ruleMarkOf(next),
      revision,
      lastAct: act,
      reason,
      changedAt: at,
      changedBy: by.id,
      changedByName: by.fullName ?? by.name,
    };
    await transaction.save(flightTable, flight as never);
    await transaction.delete(legTable, { flightId: flight.id });
    await transaction.insert(legTable, legsOf(flight));
    await transaction.delete(loadTable, { flightId: flight.id });
    if (loads.length > 0) await transaction.insert(loadTable, [...loads]);
    await transaction.insert(flightHistoryTable, {
      flightId: flight.id,
      revision,
      act,
      state: flight.state,
      data: { ...flight, loads } as object,
      reason,
      at,
      accountId: by.id,
      person: by.name,
    });
    if (before !== null)
      await this.stock.flightMoved(transaction, { id: flight.id, from: before.state, to: flight.state });
    await this.audit.record(transaction, by, did[act] ?? act, `flight ${flight.id}`, {
      state: flight.state,
      version: flight.version,
      ...(reason === null ? {} : { reason }),
    });
    return flight;
  }
}

/** It stands as long as the mark says it, alone or beside other things. */
const ruleMarkOf = ({ ruleMark, needsDecision }: NextFlight): string | null =>
  ruleMark != null && needsDecision?.includes(ruleMark) ? ruleMark : null;

/** The acts of the state machine as the audit says them. */
const did: Readonly<Record<string, string>> = {
  offer: 'offered',
  replan: 're-planned',
  approve: 'approved',
  amend: 'amended',
  decline: 'declined',
  give: 'gave',
  load: 'reported loading of',
  report: 'accounted for the drums of',
  close: 'closed',
  'take off': 'reported take-off of',
  land: 'reported landing of',
  'let go': 'let go',
  refuse: 'refused',
  'call off': 'called off',
  'turn back': 'turned back',
  'end elsewhere': 'ended elsewhere',
  mark: 'marked',
  unmark: 'took the mark off',
  keep: 'kept',
};

const legsOf = ({ id, planned }: Flight) =>
  planned.legs.map(({ from, to, distanceNm, blockHours, drumsAboard, drumsPossible }, index) => ({
    flightId: id,
    leg: index + 1,
    fromPlace: from,
    toPlace: to,
    distanceNm,
    blockHours,
    drumsAboard,
    drumsPossible,
  }));
