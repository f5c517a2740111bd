import { setTimeout as wait } from 'node:timers/promises';
import { Redis } from 'ioredis';
import { afterAll, beforeAll, describe, expect, inject, it } from 'vitest';
import { createLog } from '../log.js';
import { createTestServer, type TestServer } from '../testing/create-test-server.js';
import { openQueues } from './queues.js';

let server: TestServer;
beforeAll(async () => {
  server = await createTestServer({ content: 'empty' });
});
afterAll(() => server.close());

const redisUrl = inject('redisUrl');

const isInRedis = async (url: string, job: string): Promise<boolean> => {
  const redis = new Redis(url);
  const found = await redis.exists(`bull:where-jobs-live:${job}`);
  await redis.quit();
  return found === 1;
};

const schemasOfQueues = async (): Promise<number> => {
  const rows: readonly unknown[] = await server.database.query(
    `select from pg_namespace where nspname = 'bullmq'`,
  );
  return rows.length;
};

/** Connections to the database of the server that were opened under this name. */
const connectionsOf = async (name: string): Promise<number> => {
  const rows: readonly unknown[] = await server.database.query(
    `select from pg_stat_activity where datname = current_database() and application_name = $1`,
    [name],
  );
  return rows.length;
};

describe('the queue', () => {
  it.runIf(redisUrl !== undefined)(
    'lives in Redis where REDIS_URL is set, and not in the database',
    async () => {
      await server.queues.queue('where-jobs-live').add('job', {}, { jobId: 'the-job' });
      expect(await isInRedis(redisUrl!, 'the-job')).toBe(true);
      expect(await schemasOfQueues()).toBe(0);
    },
  );

  it.runIf(redisUrl === undefined)('lives in the database where there is no Redis', async () => {
    await server.queues.queue('where-jobs-live').add('job', {}, { jobId: 'the-job' });
    expect(await schemasOfQueues()).toBe(1);
    expect(await server.queues.queue('where-jobs-live').getJobCounts('waiting')).toEqual({ waiting: 1 });
  });

  it.runIf(redisUrl === undefined)('closed as soon as it is opened leaves the database alone', async () => {
    const name = 'closed-early';
    const databaseUrl = new URL(server.databaseUrl);
    databaseUrl.searchParams.set('application_name', name);
    for (const afterMs of [0, 1, 2, 4, 8, 12, 16, 24]) {
      const queues = await openQueues(
        { databaseUrl: databaseUrl.href, redisUrl },
        createLog('error', () => {}),
      );
      queues.handle('stopped-early', async () => {});
      queues.startWorkers();
      await wait(afterMs);
      if (afterMs === 24) expect(await connectionsOf(name)).toBeGreaterThan(0);
      await queues.close();
    }
    await wait(500); // whatever was under way has come to its end
    expect(await connectionsOf(name)).toBe(0);
  });
});
