import type { RaisedActRequest } from '@drumline/contract';
import type { Raised } from '@drumline/stock';
import type { IsoInstant } from '@drumline/units';
import { Injectable } from '@nestjs/common';
import { DataSource } from 'typeorm';
import { AuditService } from '../../audit/audit.service.js';
import { Problem } from '../../http/problem.js';
import type { Account } from '../../people/account.table.js';
import { ClockService } from '../../territory/clock.service.js';

/** Somebody has looked at a raised thing, or wants it looked at again. */
export interface RaisedAct extends RaisedActRequest {
  readonly id: string;
  /** How the thing read then. */
  readonly what: string;
  readonly person: string;
  readonly at: IsoInstant;
}

/** What people do about raised things: appended, the last word holds. */
@Injectable()
export class RaisedActsService {
  constructor(
    private readonly database: DataSource,
    private readonly clock: ClockService,
    private readonly audit: AuditService,
  ) {}

  /** Null: there is no act with this id. The same id with other words is refused. */
  async repeated(id: string, request: RaisedActRequest): Promise<RaisedAct | null> {
    const [row]: readonly { readonly act: RaisedAct }[] = await this.database.query(
      `select ${actJson} as act from raised_acts where id = $1`,
      [id],
    );
    if (row === undefined) return null;
    const { raised, act, words } = row.act;
    if (raised === request.raised && act === request.act && words === request.words) return row.act;
    const detail = `Act ${id} is there already and says something else. Give a new act a new id.`;
    throw new Problem('conflict', detail);
  }

  async append(id: string, request: RaisedActRequest, { what }: Raised, by: Account): Promise<void> {
    const { raised, act, words } = request;
    const at = await this.clock.now();
    await this.database.transaction(async (transaction) => {
      const added: readonly unknown[] = await transaction.query(
        `insert into raised_acts (id, raised, act, what, words, account_id, person, at)
         values ($1, $2, $3, $4, $5, $6, $7, $8) on conflict (id) do nothing returning id`,
        [id, raised, act, what, words, by.id, by.fullName, at],
      );
      if (added.length > 0)
        await this.audit.record(transaction, by, did[act], `raised: ${raised}`, { what, words });
    });
  }

  /** What was done last about each. */
  async last(raised: readonly string[]): Promise<ReadonlyMap<string, RaisedAct>> {
    const rows: readonly { readonly raised: string; readonly act: RaisedAct | null }[] =
      await this.database.query(
        `select raised, ${lastAct('asked.raised')} as act from unnest($1::text[]) as asked (raised)`,
        [raised],
      );
    return new Map(rows.flatMap(({ raised, act }) => (act === null ? [] : [[raised, act] as const])));
  }
}

const did = { seen: 'saw', 'open again': 'opened again' } as const;

const actJson = `json_build_object('id', id, 'raised', raised, 'act', act, 'what', what, 'words', words,
  'person', person, 'at', to_char(at at time zone 'UTC', 'YYYY-MM-DD"T"HH24:MI:SS.MS"Z"'))`;

/** SQL: the last act on a raised thing; null where there is none. */
export const lastAct = (raised: string): string =>
  `(select ${actJson} from raised_acts where raised_acts.raised = ${raised} order by entry desc limit 1)`;

/** What reads otherwise than when it was seen is to be looked at again. */
export const isSeen = ({ what }: Raised, act: RaisedAct | null): boolean =>
  act?.act === 'seen' && act.what === what;
