import { createHash, randomBytes } from 'node:crypto';
import type { Role } from '@drumline/contract';
import { Injectable } from '@nestjs/common';
import { DataSource, type EntityManager, IsNull, MoreThan } from 'typeorm';
import { ask, prepared } from '../database/prepared.js';
import type { Account } from './account.table.js';
import { type Session, sessionTable } from './session.table.js';

/** Long enough for a pilot who is out of reach for a week. */
const idleDays = 14;
const dayMs = 86_400_000;
/** The row is written at most this often, not at every request. */
const seenEveryMs = 5 * 60_000;

export interface SignedIn {
  readonly account: Account;
  readonly session: Pick<Session, 'id' | 'lastSeenAt'>;
}

export interface NotSeen {
  readonly person: string;
  readonly device: string;
  readonly lastSeenAt: Date;
}

@Injectable()
export class SessionsService {
  constructor(private readonly database: DataSource) {}

  /** Returns the token for the cookie. It is known to the browser only; the row holds its hash. */
  async open(transaction: EntityManager, account: Account, device: string): Promise<string> {
    const token = randomBytes(32).toString('base64url');
    await transaction.insert(sessionTable, {
      tokenHash: hashOf(token),
      accountId: account.id,
      device: device.slice(0, 200),
      expiresAt: inDays(idleDays),
    });
    return token;
  }

  /**
   * Null: no such session, an ended one, or an account that may no longer sign in. Asked at every request and kept
   * nowhere: what is ended or taken away counts at once, with any number of servers. `byPhone`: the phone page asks.
   */
  async find(token: string, byPhone = false): Promise<SignedIn | null> {
    const [row] = await ask<SignedInRow>(this.database.manager, signedIn, [hashOf(token)]);
    if (row === undefined) return null;
    const { sessionId, lastSeenAt, onPhone, ...account } = row;
    const isNewPhone = byPhone && !onPhone;
    if (isNewPhone || Date.now() - lastSeenAt.getTime() > seenEveryMs) {
      const now = { lastSeenAt: new Date(), expiresAt: inDays(idleDays), onPhone: onPhone || byPhone };
      await this.database.getRepository(sessionTable).update(sessionId, now);
    }
    return { account, session: { id: sessionId, lastSeenAt } };
  }

  list(accountId: string): Promise<Session[]> {
    return this.database.getRepository(sessionTable).find({
      where: { accountId, revokedAt: IsNull(), expiresAt: MoreThan(new Date()) },
      order: { lastSeenAt: 'DESC' },
    });
  }

  /** People with one of the roles whose phone has not asked for anything since; noticed to within five minutes. */
  async notSeenSince(at: Date, roles: readonly Role[]): Promise<readonly NotSeen[]> {
    return this.database.query(
      `select distinct on (accounts.id) full_name as person, device, last_seen_at as "lastSeenAt"
       from sessions join accounts on accounts.id = account_id
       where on_phone and revoked_at is null and expires_at > now() and not disabled and roles && $2::text[]
       and accounts.id not in (select account_id from sessions where on_phone and last_seen_at >= $1)
       order by accounts.id, last_seen_at desc`,
      [at, roles],
    );
  }

  /** How many people of these roles have a phone that is signed in. */
  async peopleWithDevice(roles: readonly Role[]): Promise<number> {
    const [row] = await this.database.query<readonly [{ readonly people: number }]>(
      `select count(distinct accounts.id)::int as people from sessions join accounts on accounts.id = account_id
       where on_phone and revoked_at is null and expires_at > now() and not disabled and roles && $1::text[]`,
      [roles],
    );
    return row.people;
  }

  /** Ends one session of the account; false: it has no such session. */
  async revoke(accountId: string, sessionId: string): Promise<boolean> {
    const { affected } = await this.database
      .getRepository(sessionTable)
      .update({ id: sessionId, accountId, revokedAt: IsNull() }, { revokedAt: new Date() });
    return affected === 1;
  }

  /** Ends every session of the account but the one kept. */
  async revokeAll(transaction: EntityManager, accountId: string, kept: string | null): Promise<void> {
    const open = await transaction.findBy(sessionTable, { accountId, revokedAt: IsNull() });
    for (const { id } of open) {
      if (id !== kept) await transaction.update(sessionTable, { id }, { revokedAt: new Date() });
    }
  }
}

interface SignedInRow extends Account {
  readonly sessionId: string;
  readonly lastSeenAt: Date;
  readonly onPhone: boolean;
}

const signedIn = prepared(`
  select accounts.id, name, full_name as "fullName", roles, crew, programmes, password_hash as "passwordHash",
    one_time_password as "oneTimePassword", disabled, version, accounts.created_at as "createdAt",
    sessions.id as "sessionId", last_seen_at as "lastSeenAt", on_phone as "onPhone"
  from sessions join accounts on accounts.id = account_id
  where token_hash = $1 and revoked_at is null and expires_at > now() and not disabled`);

/** A page of another site can make the browser send the cookie, but cannot read what this is made from. */
export const csrfTokenOf = (token: string): string =>
  createHash('sha256').update(`csrf:${token}`).digest('base64url');

const hashOf = (token: string): Buffer => createHash('sha256').update(token).digest();
const inDays = (days: number): Date => new Date(Date.now() + days * dayMs);
