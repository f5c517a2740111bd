import { isDeepStrictEqual } from 'node:util';
import type { FlightReportBody } from '@drumline/contract';
import type { Kept, Moved } from '@drumline/planning';
import { Injectable } from '@nestjs/common';
import { DataSource, type EntityManager } from 'typeorm';
import { AuditService } from '../../audit/audit.service.js';
import { type Page, pageOf } from '../../http/page.js';
import { Problem } from '../../http/problem.js';
import type { Account } from '../../people/account.table.js';
import { ClockService } from '../../territory/clock.service.js';
import { type Board, BoardService } from '../board/board.service.js';
import type { Flight, Load } from '../store/flight.table.js';
import type { FlightReportsQuery } from '../store/flight-query.js';
import { type FlightReport, flightReportTable } from '../store/flight-report.table.js';
import { FlightStoreService } from '../store/flight-store.service.js';
import { takeFlightTurn } from '../store/flight-turn.js';
import { afterReport, isPastLoading } from './after-report.js';
import { answerReport, raisedBy } from './answer-report.js';
import { LookAtReportService } from './look-at-report.service.js';
import { ReportAuthorService } from './report-author.service.js';
import { TakeAboardService } from './take-aboard.service.js';

/** A report on its way in. */
export interface SentReport {
  readonly id: string;
  readonly body: FlightReportBody;
  readonly by: Account;
  readonly now: Date;
  /** For a load only: what it is judged by. */
  readonly board: Board | null;
}

export interface ReportAnswer {
  readonly report: FlightReport;
  /** False: a loading that is kept, and that the flight does not show as loaded. */
  readonly entered: boolean;
  readonly flight: Flight & { readonly loads: readonly Pick<Load, 'stop' | 'place' | 'drum'>[] };
}

/** What crews report. The same id is the same report, whoever sends it and however often; it is kept as it came. */
@Injectable()
export class FlightReportsService {
  constructor(
    private readonly database: DataSource,
    private readonly board: BoardService,
    private readonly clock: ClockService,
    private readonly store: FlightStoreService,
    private readonly audit: AuditService,
    private readonly look: LookAtReportService,
    private readonly authors: ReportAuthorService,
    private readonly aboard: TakeAboardService,
  ) {}

  async put(id: string, body: FlightReportBody, by: Account): Promise<ReportAnswer> {
    const sent = { id, body, by };
    if (body.kind === 'load')
      return this.board.change((board, transaction) =>
        this.receive(transaction, { ...sent, now: board.now, board }),
      );
    // A territory that is not complete keeps no report of a crew out.
    const now = await this.clock.now();
    return this.database.transaction(async (transaction) => {
      await takeFlightTurn(transaction);
      return this.receive(transaction, { ...sent, now, board: null });
    });
  }

  /** The newest first. */
  async list({ limit, after, flight }: FlightReportsQuery): Promise<Page<FlightReport>> {
    const reports = this.database.getRepository(flightReportTable).createQueryBuilder('report');
    if (flight !== undefined) reports.andWhere('report.flight_id = :flight', { flight });
    if (after !== undefined)
      reports.andWhere(
        '(report.received_at, report.id) < (select received_at, id from flight_reports where id = :after)',
        { after },
      );
    const rows = await reports
      .orderBy('report.receivedAt', 'DESC')
      .addOrderBy('report.id', 'DESC')
      .take(limit + 1)
      .getMany();
    return pageOf(rows, limit, ({ id }) => id);
  }

  private async receive(transaction: EntityManager, sent: SentReport): Promise<ReportAnswer> {
    const known = await transaction.findOneBy(flightReportTable, { id: sent.id });
    if (known !== null) return this.again(transaction, known, sent.body);
    const flight = await this.store.one(transaction, sent.body.flight);
    const author = await this.authors.authorOf(transaction, flight, sent);
    const looked = await this.look.at(transaction, flight, sent);
    const answer = answerReport(sent, author.name, looked);
    const keptLoad = await this.keptLoad(transaction, flight);
    const report: FlightReport = {
      id: sent.id,
      flightId: flight.id,
      kind: sent.body.kind,
      happenedAt: new Date(sent.body.happenedAt),
      receivedAt: sent.now,
      data: sent.body,
      author: author.name,
      sentBy: sent.by.fullName,
      accountId: sent.by.id,
      raised: [
        ...raisedBy(answer, sent.body, keptLoad),
        ...author.raised,
        ...looked.raised,
        ...looked.faults.map(({ problem }) => `${flight.id}: ${problem}`),
      ],
    };
    const isFirst = !(await transaction.existsBy(flightReportTable, {
      flightId: flight.id,
      kind: report.kind,
    }));
    await transaction.insert(flightReportTable, report);
    const { isFlown } = looked;
    return this.write(transaction, { sent, report, flight, answer, isFirst, keptLoad, isFlown });
  }

  private async write(
    transaction: EntityManager,
    { sent, report, flight, answer, isFirst, keptLoad, isFlown }: Received,
  ): Promise<ReportAnswer> {
    const before = await this.store.loadsOf(transaction, flight.id);
    const after = afterReport(flight, before, { body: sent.body, answer, isFirst, keptLoad });
    const isAboard = isFlown || isEntered(report, after.flight);
    const loading = after.leavesWithKeptLoad ? keptLoad : isAboard ? report : null;
    if (loading?.kind === 'load') await this.aboard.take(transaction, { ...sent, flight, report: loading });
    if (!after.changed) {
      await this.audit.record(transaction, sent.by, 'reported', `flight ${flight.id}`, {
        kind: report.kind,
        author: report.author,
      });
      return shown(report, flight, before);
    }
    const stamp = { act: report.kind, by: sent.by, at: sent.now, reason: reasonOf(report) };
    const written = await this.store.write(transaction, after.flight, after.loads, stamp);
    return shown(report, written, after.loads);
  }

  /** The last loading, in the order in which they happened, of a flight that nobody has entered as loaded: with it the flight leaves. */
  private async keptLoad(transaction: EntityManager, { id, state }: Flight): Promise<FlightReport | null> {
    if (isPastLoading(state)) return null;
    return transaction.findOne(flightReportTable, {
      where: { flightId: id, kind: 'load' },
      order: { happenedAt: 'DESC', receivedAt: 'DESC', id: 'DESC' },
    });
  }

  private async again(
    transaction: EntityManager,
    known: FlightReport,
    body: FlightReportBody,
  ): Promise<ReportAnswer> {
    if (!isDeepStrictEqual(known.data, body))
      throw new Problem(
        'conflict',
        `Report ${known.id} is there already and says something else. Give a new report a new id.`,
      );
    const flight = await this.store.one(transaction, known.flightId);
    return shown(known, flight, await this.store.loadsOf(transaction, flight.id));
  }
}

interface Received {
  readonly sent: SentReport;
  readonly report: FlightReport;
  readonly flight: Flight;
  readonly answer: Moved | Kept;
  readonly isFirst: boolean;
  readonly keptLoad: FlightReport | null;
  readonly isFlown: boolean;
}

/** Before the flight is loaded a load report has not been entered. */
const isEntered = ({ kind }: Pick<FlightReport, 'kind'>, { state }: Flight): boolean =>
  kind !== 'load' || isPastLoading(state);

const reasonOf = ({ author, sentBy, data }: FlightReport): string | null => {
  if ('reason' in data) return data.reason ?? null;
  return author === sentBy ? null : `reported by ${author}`;
};

const shown = (report: FlightReport, flight: Flight, loads: readonly Load[]): ReportAnswer => ({
  report,
  entered: isEntered(report, flight),
  flight: { ...flight, loads: loads.map(({ stop, place, drum }) => ({ stop, place, drum })) },
});
