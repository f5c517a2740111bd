import type { MovementBody, MovementOutbox } from '@drumline/contract';
import type { Movement, Raised } from '@drumline/stock';
import { Injectable, type OnModuleInit } from '@nestjs/common';
import { DataSource } from 'typeorm';
import type { Actor } from '../../audit/audit.service.js';
import { Problem } from '../../http/problem.js';
import { requestContext } from '../../log.js';
import type { Account } from '../../people/account.table.js';
import { mayBeOneOfTwo, refuseUnlessMay } from '../../people/permission.js';
import { ProposalsService, type ShownProposal } from '../../proposals/proposals.service.js';
import { ClockService } from '../../territory/clock.service.js';
import { LocalWordsService } from '../../territory/local-words.service.js';
import { correctedBy } from '../figures/slice.js';
import { StockFiguresService } from '../figures/stock-figures.service.js';
import { KnownSubjectService } from '../holds/known-subject.service.js';
import { LedgerService } from './ledger.service.js';
import { refuseImpossible } from './refuse-impossible.js';
import { isForTwo, reportRight } from './report-right.js';

/** In the ledger, or waiting for a second person. */
export type Reported =
  | { readonly outcome: 'in the ledger'; readonly movement: Movement; readonly raised: readonly Raised[] }
  | { readonly outcome: 'proposed'; readonly proposal: ShownProposal };

export type OutboxAnswer =
  | ({ readonly id: string } & Reported)
  | { readonly id: string; readonly outcome: 'refused'; readonly problem: ReturnType<Problem['body']> };

/** What people report. Nothing is refused because the book says otherwise. */
@Injectable()
export class MovementsService implements OnModuleInit {
  constructor(
    private readonly database: DataSource,
    private readonly ledger: LedgerService,
    private readonly figures: StockFiguresService,
    private readonly proposals: ProposalsService,
    private readonly clock: ClockService,
    private readonly knownSubject: KnownSubjectService,
    private readonly words: LocalWordsService,
  ) {}

  onModuleInit(): void {
    this.proposals.register('movement', async (transaction, payload, by, agreed) => {
      const { movement, proposer } = payload as unknown as Proposed;
      const second = agreed.find(({ id }) => id !== proposer) ?? by;
      const receivedAt = await this.receivedAt();
      const named = movement.kind === 'released' ? { ...movement, second: second.fullName } : movement;
      await this.ledger.append(transaction, { ...named, receivedAt } as Movement, by);
    });
  }

  async report(id: string, body: MovementBody, me: Account): Promise<Reported> {
    const movement = { by: me.fullName, ...body, id, receivedAt: await this.receivedAt() } as Movement;
    const root = await this.rootOf(movement);
    const bases = deliveries.has(root.kind) ? (await this.figures.scenario()).bases : [];
    const { act, intent } = reportRight(
      root,
      (place) => bases.some((base) => base.place === place),
      movement.means,
    );
    if (isForTwo(root) && (movement.kind === 'corrected' || act === 'release hold'))
      return this.propose(movement, me);
    refuseUnlessMay(me, act, intent);
    if (ofWhatIsInIt.has(body.kind))
      refuseImpossible(body, (await this.figures.scenario()).policy.drum.brimLitres);
    if (movement.kind === 'held' && movement.means === 'screen')
      await this.knownSubject.refuseUnknown(movement.of);
    return this.append(movement, me);
  }

  /** Each by itself: what is refused keeps nothing else out. */
  async reportAll(outbox: MovementOutbox, me: Account): Promise<readonly OutboxAnswer[]> {
    const answers: OutboxAnswer[] = [];
    for (const { id, movement } of outbox) {
      try {
        answers.push({ id, ...(await this.report(id, movement, me)) });
      } catch (error) {
        if (!(error instanceof Problem)) throw error;
        const requestId = requestContext.getStore()?.requestId ?? 'unknown';
        answers.push({ id, outcome: 'refused', problem: error.body(requestId) });
      }
    }
    return answers;
  }

  private async append(movement: Movement, by: Actor): Promise<Reported> {
    const { movement: kept, isNew, raised } = await this.ledger.appendAlone(movement, by);
    const toLookAt = isNew ? raised.map(({ data }) => data) : await this.raisedBy(kept);
    return { outcome: 'in the ledger', movement: kept, raised: await this.words.raised(toLookAt) };
  }

  private async propose(movement: Movement, by: Account): Promise<Reported> {
    if (!mayBeOneOfTwo(by, 'release hold')) refuseUnlessMay(by, 'release hold', { to: 'decide' });
    if (await this.isKnown(movement.id)) return this.append(movement, by);
    const { receivedAt: _, ...sent } = movement;
    const proposal = await this.proposals.propose(
      {
        carriedOutBy: 'movement',
        act: 'release hold',
        subject: subjectOf(movement),
        payload: { movement: sent, proposer: by.id },
      },
      by,
    );
    return { outcome: 'proposed', proposal };
  }

  private async rootOf(movement: Movement): Promise<Movement> {
    if (movement.kind !== 'corrected') return movement;
    return [...(await correctedBy(this.database.manager, movement)).values()].at(-1)!;
  }

  private async raisedBy({ id }: Movement): Promise<readonly Raised[]> {
    const rows: readonly { readonly data: Raised }[] = await this.database.query(
      `select data from raised where data -> 'movements' @> to_jsonb($1::text) order by id`,
      [id],
    );
    return rows.map(({ data }) => data);
  }

  private async isKnown(id: string): Promise<boolean> {
    const rows: readonly unknown[] = await this.database.query('select from movements where id = $1', [id]);
    return rows.length === 1;
  }

  private receivedAt = async () => (await this.clock.now()).toISOString();
}

/** Reports of what is in a drum, or of what it weighs. */
const ofWhatIsInIt: ReadonlySet<Movement['kind']> = new Set(['filled', 'dipped', 'weighed']);

/** Reports that a storekeeper makes at a base only. */
const deliveries: ReadonlySet<Movement['kind']> = new Set(['left at', 'brought home', 'slung']);

interface Proposed {
  readonly movement: Omit<Movement, 'receivedAt'>;
  readonly proposer: string;
}

const subjectOf = (movement: Movement): string => {
  if (movement.kind === 'corrected') return `correction of ${movement.corrects}`;
  if (!('of' in movement)) return `${movement.kind}`;
  const { of } = movement;
  const what = 'batch' in of ? `batch ${of.batch}` : `drum ${of.drum}`;
  // It is held until the second person agrees.
  return movement.kind === 'released' ? `release of ${what}` : `${movement.kind}: ${what}`;
};
