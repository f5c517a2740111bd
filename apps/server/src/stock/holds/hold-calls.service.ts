import type { IsoInstant } from '@drumline/units';
import { Injectable } from '@nestjs/common';
import { DataSource } from 'typeorm';
import { Problem } from '../../http/problem.js';
import type { Account } from '../../people/account.table.js';
import { ClockService } from '../../territory/clock.service.js';

/** A place, or the crew of a flight, that somebody has told of a hold by radio. */
export interface HoldCall {
  readonly called: string;
  readonly by: string;
  readonly at: IsoInstant;
}

/** Calls about a hold: each is written down once, and the first stands. */
@Injectable()
export class HoldCallsService {
  constructor(
    private readonly database: DataSource,
    private readonly clock: ClockService,
  ) {}

  /** `called`: the code of a place or the number of a flight. Answers with every call of the hold. */
  async record(hold: string, called: string, by: Account): Promise<readonly HoldCall[]> {
    const [known] = await this.database.query<readonly Known[]>(knownSql, [hold, called]);
    if (!known!.isHold)
      throw new Problem(
        'not-found',
        `There is no hold ${hold}. Look for it among the held batches on Drums.`,
      );
    if (!known!.isCalled)
      throw new Problem(
        'not-found',
        `${called} is neither a place nor a flight. Name one of its radio scripts.`,
      );
    await this.database.query(
      `insert into hold_calls (hold_id, called, account_id, person, at) values ($1, $2, $3, $4, $5)
       on conflict do nothing`,
      [hold, called, by.id, by.fullName, await this.clock.now()],
    );
    return this.of(hold);
  }

  /** The first call first. */
  of(hold: string): Promise<readonly HoldCall[]> {
    return this.database.query(
      `select called, person as by, to_char(at at time zone 'UTC', 'YYYY-MM-DD"T"HH24:MI:SS"Z"') as at
       from hold_calls where hold_id = $1 order by hold_calls.at, called`,
      [hold],
    );
  }
}

interface Known {
  readonly isHold: boolean;
  readonly isCalled: boolean;
}

const knownSql = `
  select exists (select from movements where id = $1 and kind = 'held') as "isHold",
    exists (select from territory_entries where kind = 'places' and id = $2 and not removed)
      or exists (select from flights where id = $2) as "isCalled"`;
