import { Injectable, type OnModuleInit } from '@nestjs/common';
import { DataSource, type EntityManager } from 'typeorm';
import type { Expected } from '../http/etag.js';
import { Problem } from '../http/problem.js';
import type { Account } from '../people/account.table.js';
import { mayDo } from '../people/permission.js';
import { ProposalsService, type ShownProposal } from '../proposals/proposals.service.js';
import type { Entry } from './entry.table.js';
import { isForTwo } from './for-two.js';
import { kindNamed } from './kinds.js';
import { subjectOf } from './subject-of.js';
import { TerritoryService } from './territory.service.js';
import { type Change, TerritoryWritesService } from './territory-writes.service.js';

export type Changed = { readonly entry: Entry | null } | { readonly proposal: ShownProposal };

interface Payload {
  readonly kind: string;
  readonly id: string;
  readonly data: unknown;
  readonly expected: Expected;
}

/** Changes one thing at once where one person is enough, and proposes it where the permission table asks for two. */
@Injectable()
export class TerritoryChangesService implements OnModuleInit {
  private readonly listeners: ((by: Account) => Promise<unknown>)[] = [];

  constructor(
    private readonly database: DataSource,
    private readonly territory: TerritoryService,
    private readonly writes: TerritoryWritesService,
    private readonly proposals: ProposalsService,
  ) {}

  onModuleInit(): void {
    this.proposals.register('territory', async (transaction, payload, by, agreed) => {
      const { kind: name, data, ...rest } = payload as unknown as Payload;
      const kind = kindNamed(name);
      const names = agreed.map(({ fullName }) => fullName);
      const kept = data === null ? null : kind.withNames(data, names);
      await this.carryOut(transaction, { kind, data: kept, ...rest }, by);
    });
  }

  /** What is looked at again, by whoever stands above this, as soon as one person has changed something. A listener never throws. */
  onChanged(listener: (by: Account) => Promise<unknown>): void {
    this.listeners.push(listener);
  }

  async change(change: Change, by: Account): Promise<Changed> {
    const { kind, id, data, expected } = change;
    const subject = subjectOf(kind, id, data);
    const alone = mayDo(by, kind.act, { to: 'enter' });
    if (alone.kind === 'allowed' && !(await this.isForTwo(change))) {
      const entry = await this.database.transaction((transaction) => this.carryOut(transaction, change, by));
      for (const listener of this.listeners) await listener(by);
      return { entry };
    }
    if (alone.kind === 'refused' && mayDo(by, kind.act, draft).kind !== 'allowed') {
      throw new Problem('not-allowed', alone.words);
    }
    await this.refuseUnlessItFits(change, by);
    const payload: Payload = { kind: kind.name, id, data, expected };
    const proposal = await this.proposals.propose(
      { carriedOutBy: 'territory', act: kind.act, subject, payload: { ...payload } },
      by,
    );
    return { proposal };
  }

  /** What the permission table leaves to one, and two have to agree on all the same: see for-two. */
  private async isForTwo({ kind, id, data }: Change): Promise<boolean> {
    const there = (await this.territory.all(kind.name)).find((entry) => entry.id === id);
    return isForTwo(kind.name, there?.data ?? null, data);
  }

  private async carryOut(transaction: EntityManager, change: Change, by: Account): Promise<Entry | null> {
    if (change.data !== null) return this.writes.put(transaction, change, by);
    await this.writes.remove(transaction, change, by);
    return null;
  }

  /** What could not be carried out today is not proposed: it is tried, and undone. */
  private async refuseUnlessItFits(change: Change, by: Account): Promise<void> {
    const runner = this.database.createQueryRunner();
    try {
      await runner.startTransaction();
      await this.carryOut(runner.manager, change, by);
    } finally {
      await runner.rollbackTransaction();
      await runner.release();
    }
  }
}

const draft = { to: 'enter', within: ['as a draft'] } as const;
