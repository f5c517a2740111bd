import { Injectable } from '@nestjs/common';
import { DataSource } from 'typeorm';
import { AuditService } from '../audit/audit.service.js';
import { Problem } from '../http/problem.js';
import { type Account, accountTable } from './account.table.js';
import { hashPassword, isPasswordOf } from './password.js';
import { SessionsService } from './sessions.service.js';
import type { NewPassword, SignIn } from './sign-in.schema.js';

const windowMinutes = 15;
const mostFailures = { name: 8, address: 40 } as const;

export interface Caller {
  readonly address: string;
  readonly device: string;
}

@Injectable()
export class SignInService {
  constructor(
    private readonly database: DataSource,
    private readonly sessions: SessionsService,
    private readonly audit: AuditService,
  ) {}

  /** Returns the account and the token for its cookie. A wrong name and a wrong password look the same. */
  async signIn({ name, password }: SignIn, caller: Caller): Promise<{ account: Account; token: string }> {
    const typed = name.trim().toLowerCase();
    await this.refuseGuessing(typed, caller.address);
    const account = await this.database
      .getRepository(accountTable)
      .findOneBy({ name: typed, disabled: false });
    if (!(await isPasswordOf(account?.passwordHash, password)) || account === null) {
      await this.database.query('insert into sign_in_failures (name, address) values ($1, $2)', [
        typed,
        caller.address,
      ]);
      throw new Problem(
        'not-signed-in',
        'The name or the password is wrong. Type both again, or ask set-up.',
      );
    }
    const token = await this.database.transaction(async (transaction) => {
      await transaction.query('delete from sign_in_failures where name = $1', [typed]);
      // Not used up by the first sign-in: its answer may be lost on a poor line. But only the last one counts.
      if (account.oneTimePassword) await this.sessions.revokeAll(transaction, account.id, null);
      await this.audit.record(transaction, account, 'signed in', `account ${account.name}`);
      return this.sessions.open(transaction, account, caller.device);
    });
    return { account, token };
  }

  // Counted in the database: a restart forgets nothing, and every API process sees the same.
  private async refuseGuessing(name: string, address: string): Promise<void> {
    const [failures] = await this.database.query<[{ name: number; address: number }]>(
      `select count(*) filter (where name = $1)::int as name, count(*) filter (where address = $2)::int as address
       from sign_in_failures where at > now() - make_interval(mins => $3)`,
      [name, address, windowMinutes],
    );
    if (failures.address >= mostFailures.address)
      throw tooMany(`from this address. Wait ${windowMinutes} minutes.`);
    if (failures.name >= mostFailures.name)
      throw tooMany(
        `for this name, by you or by somebody else. Wait ${windowMinutes} minutes, or ask set-up for a one-time ` +
          'password: with that you can sign in at once.',
      );
  }

  /** Every other session of the account ends. */
  async changePassword(account: Account, sessionId: string, { current, next }: NewPassword): Promise<void> {
    if (!(await isPasswordOf(account.passwordHash, current))) {
      throw new Problem('faults', 'See faults.', [
        {
          path: 'current',
          problem: 'this is not your password.',
          remedy: 'Type the one you signed in with.',
        },
      ]);
    }
    if (next === current) {
      throw new Problem('faults', 'See faults.', [
        { path: 'next', problem: 'this is the password that you have.', remedy: 'Choose another one.' },
      ]);
    }
    const passwordHash = await hashPassword(next);
    await this.database.transaction(async (transaction) => {
      await transaction.update(accountTable, account.id, { passwordHash, oneTimePassword: false });
      await this.sessions.revokeAll(transaction, account.id, sessionId);
      await this.audit.record(transaction, account, 'changed the password', `account ${account.name}`);
    });
  }
}

const tooMany = (words: string): Problem =>
  new Problem('too-many-attempts', `Too many wrong passwords ${words}`, [], {
    'Retry-After': String(windowMinutes * 60),
  });
