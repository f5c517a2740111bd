import type { Role } from '@drumline/contract';
import { Injectable } from '@nestjs/common';
import { DataSource, type EntityManager, In, MoreThan } from 'typeorm';
import { type Actor, AuditService, theProgram } from '../audit/audit.service.js';
import { type Expected, staleVersion } from '../http/etag.js';
import { type Page, type PageQuery, pageOf } from '../http/page.js';
import { Problem } from '../http/problem.js';
import { type Account, accountTable } from './account.table.js';
import { hashPassword, oneTimePassword } from './password.js';
import { hasLevel, refuseUnlessMay } from './permission.js';
import type { Person } from './person.schema.js';
import { SessionsService } from './sessions.service.js';

@Injectable()
export class PeopleService {
  constructor(
    private readonly database: DataSource,
    private readonly sessions: SessionsService,
    private readonly audit: AuditService,
  ) {}

  async list({ limit, after }: PageQuery): Promise<Page<Account>> {
    const rows = await this.database.getRepository(accountTable).find({
      where: after === undefined ? {} : { name: MoreThan(after) },
      order: { name: 'ASC' },
      take: limit + 1,
    });
    return pageOf(rows, limit, (account) => account.name);
  }

  async get(id: string): Promise<Account> {
    const account = await this.database.getRepository(accountTable).findOneBy({ id });
    if (account === null)
      throw new Problem(
        'not-found',
        `There is no person ${id}. Look for them in the list of people on Set-up.`,
      );
    return account;
  }

  /** Those of them who may sign in today. */
  active(transaction: EntityManager, ids: readonly string[]): Promise<Account[]> {
    return transaction.findBy(accountTable, { id: In([...ids]), disabled: false });
  }

  everybodyActive(transaction: EntityManager): Promise<Account[]> {
    return transaction.findBy(accountTable, { disabled: false });
  }

  /** Whose flights are the own flights of people of this name. */
  async crewsNamed(transaction: EntityManager, fullName: string): Promise<readonly (string | null)[]> {
    const people = await transaction.findBy(accountTable, { fullName });
    return people.map(({ crew }) => crew);
  }

  /** Full names by account id. */
  async namesOf(ids: readonly (string | null)[]): Promise<ReadonlyMap<string, string>> {
    const known = [...new Set(ids)].filter((id) => id !== null);
    const people = await this.database.getRepository(accountTable).findBy({ id: In(known) });
    return new Map(people.map(({ id, fullName }) => [id, fullName]));
  }

  isEmpty = async (): Promise<boolean> => (await this.database.getRepository(accountTable).count()) === 0;

  /** A new person gets a one-time password, returned this once; a changed one keeps the password. */
  put(id: string, person: Person, expected: Expected, by: Account): Promise<Written> {
    return this.database.transaction(async (transaction) => {
      await transaction.query('select pg_advisory_xact_lock(872364005)'); // rare: one at a time
      const there = await transaction.findOneBy(accountTable, { id });
      refuseToMakeManager(by, [...person.roles, ...(there?.roles ?? [])]);
      await refuseTakenName(transaction, id, person.name);
      return expected === 'none yet'
        ? this.add(transaction, id, person, there, by)
        : this.change(transaction, id, person, expected.version, by);
    });
  }

  private async add(
    transaction: EntityManager,
    id: string,
    person: Person,
    there: Account | null,
    by: Account,
  ): Promise<Written> {
    if (there !== null) {
      // A retry of the same request is harmless; its password was shown the first time.
      if (isSame(there, person)) return { account: there, oneTimePassword: null };
      throw staleVersion(`Person ${there.name}`, there.version);
    }
    const password = oneTimePassword();
    const account = await this.insert(transaction, { id, ...person }, password, true);
    await this.audit.record(transaction, by, 'added', `account ${person.name}`, { roles: person.roles });
    return { account, oneTimePassword: password };
  }

  private async change(
    transaction: EntityManager,
    id: string,
    person: Person,
    version: number,
    by: Account,
  ): Promise<Written> {
    const { affected } = await transaction.update(
      accountTable,
      { id, version },
      { ...person, version: version + 1 },
    );
    const account = await transaction.findOneBy(accountTable, { id });
    if (affected !== 1 || account === null) throw staleVersion(`Person ${id}`, account?.version ?? null);
    await refuseToLockOut(transaction);
    if (person.disabled) await this.sessions.revokeAll(transaction, id, null);
    await this.audit.record(transaction, by, 'changed', `account ${person.name}`, {
      roles: person.roles,
      disabled: person.disabled,
    });
    return { account, oneTimePassword: null };
  }

  /** For somebody who forgot the password: every session of theirs ends. */
  async giveOneTimePassword(id: string, by: Account): Promise<string> {
    const account = await this.get(id);
    refuseToMakeManager(by, account.roles);
    return this.database.transaction((transaction) => this.resetPassword(transaction, account, by));
  }

  /** From the machine itself: opens the account and makes it operations manager. Null: there is no such account. */
  async letIn(name: string): Promise<string | null> {
    const account = await this.database.getRepository(accountTable).findOneBy({ name });
    if (account === null) return null;
    return this.database.transaction(async (transaction) => {
      const { id, version } = account;
      const roles: Role[] = [...new Set<Role>([...account.roles, 'operations manager'])];
      await transaction.update(accountTable, id, { roles, disabled: false, version: version + 1 });
      return this.resetPassword(transaction, account, theProgram);
    });
  }

  private async resetPassword(transaction: EntityManager, { id, name }: Account, by: Actor): Promise<string> {
    const password = oneTimePassword();
    const passwordHash = await hashPassword(password);
    await transaction.update(accountTable, id, { passwordHash, oneTimePassword: true });
    await transaction.query('delete from sign_in_failures where name = $1', [name]);
    await this.sessions.revokeAll(transaction, id, null);
    await this.audit.record(transaction, by, 'gave a one-time password', `account ${name}`);
    return password;
  }

  /** Inserts an account with a given password. */
  async insert(
    transaction: EntityManager,
    person: Person & { readonly id: string },
    password: string,
    mustChange: boolean,
  ): Promise<Account> {
    const passwordHash = await hashPassword(password);
    await transaction.insert(accountTable, { ...person, passwordHash, oneTimePassword: mustChange });
    return transaction.findOneByOrFail(accountTable, { id: person.id });
  }
}

export interface Written {
  readonly account: Account;
  readonly oneTimePassword: string | null;
}

/** Whoever may only enter people could else make himself operations manager. */
const refuseToMakeManager = (by: Account, touched: readonly Role[]): void => {
  if (touched.includes('operations manager')) refuseUnlessMay(by, 'people', { to: 'decide' });
};

/** Who may make an operations manager is made by nobody else: the last one stays. */
const refuseToLockOut = async (transaction: EntityManager): Promise<void> => {
  const able = await transaction.findBy(accountTable, { disabled: false });
  if (able.some((account) => hasLevel(account, 'people', 'decide'))) return;
  throw new Problem(
    'conflict',
    'Nobody would be left who may decide about people: this is the last operations manager who can sign in. ' +
      'Make another one first. Nothing was changed.',
  );
};

const refuseTakenName = async (transaction: EntityManager, id: string, name: string): Promise<void> => {
  const holder = await transaction.findOneBy(accountTable, { name });
  if (holder === null || holder.id === id) return;
  throw new Problem('faults', 'See faults.', [
    {
      path: 'name',
      problem: `${name} is taken by ${holder.fullName}.`,
      remedy: 'Choose another sign-in name.',
    },
  ]);
};

const isSame = (account: Account, person: Person): boolean =>
  account.name === person.name &&
  account.fullName === person.fullName &&
  JSON.stringify(account.roles) === JSON.stringify(person.roles);
