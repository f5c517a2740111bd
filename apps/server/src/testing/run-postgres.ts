import { randomUUID } from 'node:crypto';
import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { TestProject } from 'vitest/node';
import { startEmbeddedPostgres } from '../embedded-postgres/embedded-postgres.js';
import { createLog } from '../log.js';

declare module 'vitest' {
  interface ProvidedContext {
    postgresUrl: string;
    redisUrl: string | undefined;
    /** A database that this run's other ones may be copies of: made by the first test that wants it. */
    templateName: string;
  }
}

/** One PostgreSQL for the whole run: the one that DATABASE_URL names, or the embedded one in a folder of its own. */
const runPostgres = async (project: TestProject): Promise<() => Promise<void>> => {
  project.provide('redisUrl', process.env.REDIS_URL);
  project.provide('templateName', `template_${randomUUID().replaceAll('-', '')}`);
  if (process.env.DATABASE_URL !== undefined) {
    project.provide('postgresUrl', process.env.DATABASE_URL);
    return async () => {};
  }
  const dataDir = await mkdtemp(join(tmpdir(), 'drumline-test-'));
  const server = await startEmbeddedPostgres({ dataDir, fsync: false, log: createLog('error') });
  project.provide('postgresUrl', await server.databaseUrl('postgres'));
  return async () => {
    await server.stop();
    await rm(dataDir, { recursive: true, force: true });
  };
};

export default runPostgres;
