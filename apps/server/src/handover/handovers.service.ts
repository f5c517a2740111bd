import { isDeepStrictEqual } from 'node:util';
import type { IsoInstant } from '@drumline/units';
import { Injectable } from '@nestjs/common';
import { DataSource, type EntityManager } from 'typeorm';
import { AuditService } from '../audit/audit.service.js';
import { type Page, pageOf } from '../http/page.js';
import { Problem } from '../http/problem.js';
import type { Account } from '../people/account.table.js';
import { ClockService } from '../territory/clock.service.js';
import type { HandoverBody, SignatureBody } from './handover.schema.js';

export interface Handover {
  readonly id: string;
  readonly at: IsoInstant;
  /** Who hands over. */
  readonly from: string;
  readonly fromAccount: string;
  readonly items: readonly HandoverItem[];
  /** Null: not every item is signed for and the list is not taken over. */
  readonly closed: { readonly by: string; readonly at: IsoInstant } | null;
}

interface HandoverItem {
  readonly kind: string;
  readonly words: string;
  readonly signed: { readonly by: string; readonly at: IsoInstant; readonly note: string | null } | null;
}

/** Lists that one dispatcher hands to the next: written once, signed for item by item, never changed. */
@Injectable()
export class HandoversService {
  constructor(
    private readonly database: DataSource,
    private readonly clock: ClockService,
    private readonly audit: AuditService,
  ) {}

  /** The same id is the same list. */
  async start(id: string, { items }: HandoverBody, by: Account): Promise<Handover> {
    const at = await this.clock.now();
    return this.database.transaction(async (transaction) => {
      const added: readonly unknown[] = await transaction.query(
        `insert into handovers (id, items, account_id, person, at) values ($1, $2, $3, $4, $5)
         on conflict (id) do nothing returning id`,
        [id, JSON.stringify(items), by.id, by.fullName, at],
      );
      const handover = await one(transaction, id);
      if (added.length > 0)
        await this.audit.record(transaction, by, 'started', `handover ${id}`, { items: items.length });
      else if (!isDeepStrictEqual(handover.items.map(saidOf), items.map(saidOf)))
        throw new Problem(
          'conflict',
          `Handover ${id} is there already and says something else. Give it a new id.`,
        );
      return handover;
    });
  }

  /** The first signature of an item stands; by somebody else than the one who hands over. */
  async sign(id: string, item: number, { note }: SignatureBody, by: Account) {
    const at = await this.clock.now();
    return this.database.transaction(async (transaction) => {
      const handover = await one(transaction, id);
      refuseOwn(handover, by);
      if (handover.items[item - 1] === undefined)
        throw new Problem('not-found', `The list has items 1 to ${handover.items.length}, no ${item}.`);
      await transaction.query(
        `insert into handover_signatures (handover_id, item, note, account_id, person, at)
         values ($1, $2, $3, $4, $5, $6) on conflict do nothing`,
        [id, item, note ?? null, by.id, by.fullName, at],
      );
      return one(transaction, id);
    });
  }

  /** Taken over: not before every item is signed for. */
  async close(id: string, by: Account): Promise<Handover> {
    const at = await this.clock.now();
    return this.database.transaction(async (transaction) => {
      const handover = await one(transaction, id);
      if (handover.closed !== null) return handover;
      refuseOwn(handover, by);
      const unread = handover.items.flatMap(({ signed }, index) => (signed === null ? [index + 1] : []));
      if (unread.length > 0)
        throw new Problem(
          'conflict',
          `Not signed for yet: ${unread.map((number) => `item ${number}`).join(', ')}. Each is read and signed first.`,
        );
      await transaction.query(
        `insert into handover_closings (handover_id, account_id, person, at) values ($1, $2, $3, $4)
         on conflict do nothing`,
        [id, by.id, by.fullName, at],
      );
      await this.audit.record(transaction, by, 'took over', `handover ${id}`);
      return one(transaction, id);
    });
  }

  get(id: string): Promise<Handover> {
    return one(this.database.manager, id);
  }

  /** The newest first. */
  async list({
    limit,
    after,
  }: {
    readonly limit: number;
    readonly after?: string | undefined;
  }): Promise<Page<Handover>> {
    const rows: readonly Handover[] = await this.database.query(
      `${handoverSql} where $2::uuid is null or (handovers.at, id) < (select at, id from handovers where id = $2)
       order by handovers.at desc, id desc limit $1`,
      [limit + 1, after ?? null],
    );
    return pageOf(rows, limit, ({ id }) => id);
  }

  /** The newest list, where nobody has taken it over yet; null: none waits. */
  async waiting(): Promise<Handover | null> {
    const { items } = await this.list({ limit: 1 });
    const [newest] = items;
    return newest === undefined || newest.closed !== null ? null : newest;
  }

  async lastClosedAt(): Promise<IsoInstant | null> {
    const [row]: readonly { readonly at: Date | null }[] = await this.database.query(
      'select max(at) as at from handover_closings',
    );
    return row?.at?.toISOString() ?? null;
  }
}

const saidOf = ({ kind, words }: { readonly kind: string; readonly words: string }) => ({ kind, words });

const refuseOwn = ({ fromAccount, from }: Handover, by: Account): void => {
  if (fromAccount !== by.id) return;
  throw new Problem('not-allowed', `${from} hands this over; the incoming person signs for it.`);
};

const one = async (manager: EntityManager, id: string): Promise<Handover> => {
  const rows: readonly Handover[] = await manager.query(`${handoverSql} where id = $1`, [id]);
  if (rows[0] !== undefined) return rows[0];
  throw new Problem('not-found', `There is no handover ${id}. Look for it among the handovers on Morning.`);
};

const instant = (column: string): string =>
  `to_char(${column} at time zone 'UTC', 'YYYY-MM-DD"T"HH24:MI:SS"Z"')`;

const handoverSql = `
  select id, ${instant('at')} as at, person as "from", account_id as "fromAccount",
    (select jsonb_agg(item || jsonb_build_object('signed',
        (select jsonb_build_object('by', person, 'at', ${instant('at')}, 'note', note)
         from handover_signatures signed where signed.handover_id = handovers.id and signed.item = number))
      order by number)
     from jsonb_array_elements(items) with ordinality as listed (item, number)) as items,
    (select jsonb_build_object('by', person, 'at', ${instant('at')})
     from handover_closings closing where closing.handover_id = handovers.id) as closed
  from handovers`;
