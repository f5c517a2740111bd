import type { CaseClosingRequest } from '@drumline/contract';
import {
  asLanded,
  type CaseClosing,
  type Counted,
  closeCase,
  type DifferenceCase,
  differenceCases,
  litresOf,
  type Movement,
  replay,
  toleranceOfCount,
} from '@drumline/stock';
import { Injectable, type OnModuleInit } from '@nestjs/common';
import { DataSource, type EntityManager } from 'typeorm';
import { AuditService } from '../../audit/audit.service.js';
import { Problem } from '../../http/problem.js';
import type { Account } from '../../people/account.table.js';
import { mayDo } from '../../people/permission.js';
import { type NotSeen, SessionsService } from '../../people/sessions.service.js';
import { ProposalsService, type ShownProposal } from '../../proposals/proposals.service.js';
import { isCountAfter } from '../figures/is-count-after.js';
import { KeptStock, lastCountAt, type StandingCount } from '../figures/kept-stock.js';
import { downAtOf } from '../figures/riding-home.js';
import { loadSlice } from '../figures/slice.js';
import { StockFiguresService } from '../figures/stock-figures.service.js';
import { inTheField } from '../holds/holds.service.js';

export interface OpenCase extends Omit<DifferenceCase, 'movementsSince' | 'agreedCount'> {
  /** The count that opened it, and the last one before it that was agreed. */
  readonly counted: Counted;
  readonly agreed: Counted | null;
  /** What happened at the place since the last agreed count. */
  readonly movementsSince: readonly Movement[];
  /** Whose phones may hold a report that explains it. */
  readonly notHeardFrom: readonly NotSeen[];
  /** Of the field, with a device that is signed in; 0: the radio only. */
  readonly peopleWithDevice: number;
}

const act = 'close difference case';

/** Where book and count differ beyond the tolerance, until two people have closed it. */
@Injectable()
export class CasesService implements OnModuleInit {
  constructor(
    private readonly database: DataSource,
    private readonly kept: KeptStock,
    private readonly figures: StockFiguresService,
    private readonly sessions: SessionsService,
    private readonly proposals: ProposalsService,
    private readonly audit: AuditService,
  ) {}

  onModuleInit(): void {
    this.proposals.register('difference case', (transaction, payload, by, agreed) =>
      this.carryOut(transaction, payload as unknown as Payload, by, agreed),
    );
  }

  async open(): Promise<readonly OpenCase[]> {
    const { places } = await this.kept.read();
    const { policy, asOf } = await this.figures.scenario();
    const counts = [...places.values()].flatMap((place) => lastCountAt(place, asOf) ?? []);
    const differing = counts.filter((count) => isBeyond(count, policy.countTolerance));
    if (differing.length === 0) return [];
    const slice = await this.sliceOf(differing.map(({ counted }) => counted.place));
    const known = replay(slice.filter((movement) => !isCountAfter(movement, asOf)));
    const state = asLanded(known, await downAtOf(this.database.manager, slice));
    const closings = await this.closings();
    return Promise.all(
      differenceCases(state, policy.countTolerance, closings).map(async ({ agreedCount, ...each }) => ({
        ...each,
        counted: state.movements.get(each.count) as Counted,
        agreed: agreedCount === null ? null : (state.movements.get(agreedCount) as Counted),
        movementsSince: each.movementsSince.map((id) => state.movements.get(id)!),
        notHeardFrom: await this.notHeardFrom(each.count),
        peopleWithDevice: await this.sessions.peopleWithDevice(inTheField),
      })),
    );
  }

  /** A proposal: it is closed once two people with the right, neither of whom counted, have agreed. */
  async propose(count: string, request: CaseClosingRequest, me: Account): Promise<ShownProposal> {
    const mine = mayDo(me, act, { to: 'enter' });
    if (mine.kind === 'refused') throw new Problem('not-allowed', mine.words);
    const open = await this.openOf(count);
    await this.refuseCounters(open, [me]);
    return this.proposals.propose(
      {
        carriedOutBy: 'difference case',
        act,
        subject: subjectOf(open),
        payload: { count, ...request },
      },
      me,
    );
  }

  private async carryOut(
    transaction: EntityManager,
    { count, cause, words }: Payload,
    by: Account,
    agreed: readonly Account[],
  ): Promise<void> {
    const open = await this.openOf(count);
    await this.refuseCounters(open, agreed);
    const first = agreed.find(({ id }) => id !== by.id)!;
    const at = (await this.figures.scenario()).asOf;
    const answer = closeCase(
      { ...open, movementsSince: [], agreedCount: null },
      { cause, words, by: first.fullName, second: by.fullName, at },
    );
    if (answer.kind === 'refused') throw new Problem('conflict', answer.words);
    await transaction.query('insert into case_closings (count, place, data) values ($1, $2, $3)', [
      count,
      open.place,
      JSON.stringify(answer.closing),
    ]);
    // The one that is being carried out is put in force after this.
    await this.proposals.dropOthers(
      transaction,
      { carriedOutBy: 'difference case', subject: subjectOf(open) },
      (payload) => payload.count === count,
    );
    await transaction.query('update place_balances set version = version + 1 where place = $1', [open.place]);
    await this.audit.record(transaction, by, 'closed', subjectOf(open), { count, cause });
  }

  private async openOf(count: string): Promise<OpenCase> {
    const open = (await this.open()).find((each) => each.count === count);
    if (open !== undefined) return open;
    throw new Problem(
      'not-found',
      `Count ${count} has no open difference case. Look among the difference cases on Caches.`,
    );
  }

  /** The account that sent the count counts as one who counted. */
  private async refuseCounters(open: OpenCase, people: readonly Account[]): Promise<void> {
    const [row] = await this.database.query<readonly [{ readonly sender: string | null }]>(
      'select account_id as sender from movements where id = $1',
      [open.count],
    );
    const counted = people.find(({ id, fullName }) => id === row.sender || open.countedBy.includes(fullName));
    if (counted === undefined) return;
    const words = `${counted.fullName} made the count at ${open.place} and cannot close its case: somebody else has to.`;
    throw new Problem('not-allowed', words);
  }

  private async sliceOf(places: readonly string[]): Promise<readonly Movement[]> {
    const { manager } = this.database;
    const rows: readonly { readonly drum: string }[] = await manager.query(
      'select distinct drum from drum_steps where place = any($1)',
      [places],
    );
    const drums = rows.map(({ drum }) => drum);
    const ofDrums = await loadSlice(manager, { drums, batch: null, place: null });
    const counts = await Promise.all(
      places.map((place) => loadSlice(manager, { drums: [], batch: null, place })),
    );
    return [ofDrums, ...counts].flatMap(({ movements }) => movements);
  }

  private async notHeardFrom(count: string): Promise<readonly NotSeen[]> {
    const [row] = await this.database.query<readonly [{ readonly at: Date }]>(
      'select recorded_at as at from movements where id = $1',
      [count],
    );
    return this.sessions.notSeenSince(row.at, inTheField);
  }

  private async closings(): Promise<readonly CaseClosing[]> {
    const rows: readonly { readonly data: CaseClosing }[] = await this.database.query(
      'select data from case_closings',
    );
    return rows.map(({ data }) => data);
  }
}

const subjectOf = ({ place }: { readonly place: string }): string => `difference case ${place}`;

interface Payload extends CaseClosingRequest {
  readonly count: string;
}

const isBeyond = (
  { counted, bookMillilitres, closedAs }: StandingCount,
  tolerance: Parameters<typeof toleranceOfCount>[2],
): boolean => {
  const litres = toleranceOfCount(litresOf(bookMillilitres), counted.openDrums, tolerance);
  return closedAs === null && Math.abs(counted.millilitres - bookMillilitres) > litres * 1000;
};
