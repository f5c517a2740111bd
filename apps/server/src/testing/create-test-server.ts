import { randomUUID } from 'node:crypto';
import type { Role } from '@drumline/contract';
import type { INestApplicationContext } from '@nestjs/common';
import type { DataSource } from 'typeorm';
import { inject } from 'vitest';
import { theProgram } from '../audit/audit.service.js';
import { readConfig } from '../config.js';
import { createApp } from '../create-app.js';
import { DemoService } from '../demo/demo.service.js';
import { createLog } from '../log.js';
import { openPlatform } from '../open-platform.js';
import { demoName, makeDemoAccounts } from '../people/first-accounts.js';
import { PeopleService } from '../people/people.service.js';
import type { Queues } from '../queue/queues.js';
import { ScenariosService } from '../scenarios/scenarios.service.js';
import { Client } from './client.js';
import { createDatabase, createOnce } from './create-database.js';
import { observeAnswers } from './observe-answers.js';

export interface TestServer {
  readonly url: string;
  /** Somebody signed in with this one role; the account is the demo's. */
  readonly as: (role: Role) => Promise<Client>;
  /** Somebody who is not signed in. */
  readonly stranger: () => Client;
  readonly database: DataSource;
  readonly databaseUrl: string;
  readonly queues: Queues;
  /** Any service of the application. */
  readonly app: INestApplicationContext;
  /** Lines of the log so far. */
  readonly log: readonly string[];
  readonly close: () => Promise<void>;
}

interface Options {
  /** Empty: no accounts and no territory. */
  readonly content?: 'demo' | 'accounts' | 'empty';
  /** Takes up jobs as `npm start` does. */
  readonly workers?: boolean;
  /** Folder of built pages; absent: whatever is built, if anything. */
  readonly pages?: string;
  /** Another server on the database of this one, with what is in it. */
  readonly beside?: TestServer;
}

export const testPassword = 'a password for tests';

/** A server on a new database of the run's PostgreSQL, by default with the demo's people and territory. */
export const createTestServer = async ({
  content = 'demo',
  workers = false,
  pages,
  beside,
}: Options = {}): Promise<TestServer> => {
  const databaseUrl = beside?.databaseUrl ?? (await newDatabase(content));
  const { platform, app, log, close } = await open(databaseUrl, pages);
  if (content === 'demo' && beside === undefined) {
    // Without the mark of a demo: a test that sends anything to any route would remove it.
    await app
      .get(ScenariosService)
      .import(await app.get(DemoService).example(), { dryRun: false, clock: 'document' }, theProgram);
  }
  if (workers) platform.queues.startWorkers();
  await app.listen(0, '127.0.0.1');
  const url = await app.getUrl();
  const observe = observeAnswers(app);
  const newClient = () => new Client(url, observe);
  return {
    url,
    as: async (role) => {
      const client = newClient();
      await client.signIn(demoName(role), testPassword);
      return client;
    },
    stranger: newClient,
    database: platform.database,
    databaseUrl,
    queues: platform.queues,
    app,
    log,
    close,
  };
};

const newDatabase = async (content: Options['content']): Promise<string> => {
  const template = content === 'empty' ? undefined : await databaseWithAccounts();
  return createDatabase(inject('postgresUrl'), `test_${randomUUID().replaceAll('-', '')}`, template);
};

/**
 * The name of a database with the tables and the demo's accounts, made once in a run: a copy of it is sooner there. The
 * territory is not in it, as its clock runs from the moment it is brought in.
 */
const databaseWithAccounts = async (): Promise<string> => {
  const name = inject('templateName');
  await createOnce(inject('postgresUrl'), name, async (databaseUrl) => {
    const { app, platform, close } = await open(databaseUrl);
    await makeDemoAccounts(app.get(PeopleService), platform.database, testPassword);
    await close();
  });
  return name;
};

const open = async (databaseUrl: string, pages?: string) => {
  const log: string[] = [];
  const closers: (() => Promise<unknown>)[] = [];
  const redisUrl = inject('redisUrl');
  const config = readConfig({ DATABASE_URL: databaseUrl, REDIS_URL: redisUrl ?? '', PORT: '0' });
  const platform = await openPlatform(
    {
      config,
      log: createLog('debug', (line) => log.push(line)),
      onStop: (close) => {
        closers.push(close);
      },
    },
    databaseUrl,
  );
  const app = await createApp(platform, pages);
  closers.push(() => app.close());
  const close = async (): Promise<void> => {
    for (const each of closers.reverse()) await each();
  };
  return { platform, app, log, close };
};
