import type { SameReport } from '@drumline/contract';
import { Injectable } from '@nestjs/common';
import { DataSource } from 'typeorm';
import { ClockService } from '../../territory/clock.service.js';

/** So far back a phone is told who else has reported the same. */
const lookBackDays = 7;

/** Reports of one drum, kind and leg are one movement, whoever makes them: a phone says who else did. */
@Injectable()
export class SameReportsService {
  constructor(
    private readonly database: DataSource,
    private readonly clock: ClockService,
  ) {}

  /** Standing reports of others that say what a report of this account says, in the order in which they came. */
  async of(account: string): Promise<readonly SameReport[]> {
    const since = new Date((await this.clock.now()).getTime() - lookBackDays * 86_400_000);
    const rows: readonly { readonly movement: string; readonly by: string; readonly written_at: Date }[] =
      await this.database.query(sameSql, [account, since]);
    return rows.map(({ movement, by, written_at }) => ({
      movement,
      by,
      writtenAt: written_at.toISOString(),
    }));
  }
}

const sameSql = `
  select mine.id as movement, other.data ->> 'by' as by, other.written_at
  from movements mine
  join movements other on other.drum = mine.drum and other.kind = mine.kind and other.flight = mine.flight
    and other.data -> 'leg' = mine.data -> 'leg' and other.data ->> 'by' <> mine.data ->> 'by'
  where mine.account_id = $1 and mine.received_at >= $2 and mine.kind in ('left at', 'brought home')
    and not exists (select from movements where corrects in (mine.id, other.id))
  order by other.entry`;
