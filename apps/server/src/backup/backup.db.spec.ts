import { execFile } from 'node:child_process';
import { randomUUID } from 'node:crypto';
import { appendFile, mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { promisify } from 'node:util';
import pg from 'pg';
import { afterAll, beforeAll, describe, expect, inject, it } from 'vitest';
import { Client } from '../testing/client.js';
import { createDatabase } from '../testing/create-database.js';
import { createTestServer, type TestServer, testPassword } from '../testing/create-test-server.js';
import { startProgram } from '../testing/start-program.js';
import { keptTables } from './kept-tables.js';
import { tableFile } from './manifest.js';
import { restoreBackup } from './restore-backup.js';
import { writeBackup } from './write-backup.js';

const run = promisify(execFile);

let folder: string;
let server: TestServer;
beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), 'drumline-backup-'));
  server = await createTestServer();
  await use(await server.as('dispatcher'));
  await writeBackup(server.databaseUrl, join(folder, 'first'));
});
afterAll(async () => {
  await server.close();
  await rm(folder, { recursive: true, force: true });
});

const newDatabase = () => createDatabase(inject('postgresUrl'), `test_${randomUUID().replaceAll('-', '')}`);

/** A report and a count: lines in the surface table, the ledger, the stock and the audit. */
const use = async (client: Client): Promise<void> => {
  const report = { place: 'XLOR', state: 'soft', at: '2027-06-14T07:00Z', by: 'strip helper' };
  const reported = await client.put(`/api/surface-reports/${randomUUID()}`, report);
  const counted = await client.put(`/api/movements/${randomUUID()}`, {
    kind: 'counted',
    happenedAt: '2027-06-14T06:00Z',
    writtenAt: '2027-06-14T06:00Z',
    means: 'radio',
    place: 'XESK',
    method: 'dip',
    seenFrom: 'ground',
    millilitres: 2_300_000,
    sealedDrums: 11,
    openDrums: 1,
    emptyDrums: 0,
  });
  expect([reported.status, counted.status]).toEqual([200, 200]);
};

const everyLine = async (databaseUrl: string): Promise<Record<string, unknown>> => {
  const client = new pg.Client({ connectionString: databaseUrl });
  await client.connect();
  const lines: Record<string, unknown> = {};
  for (const { name } of await keptTables(client)) {
    const { rows } = await client.query<{ lines: unknown }>(
      `select coalesce(json_agg(line::text order by line::text), '[]') as lines from ${name} as line`,
    );
    lines[name] = rows[0]?.lines;
  }
  await client.end();
  return lines;
};

describe('a backup', () => {
  it('restored into a new database has every line of every table', async () => {
    const restored = await newDatabase();
    await restoreBackup(restored, join(folder, 'first'), { replace: false });
    expect(await everyLine(restored)).toEqual(await everyLine(server.databaseUrl));
  });

  it('leaves the ledger append-only, and its numbers go on', async () => {
    const restored = await newDatabase();
    await restoreBackup(restored, join(folder, 'first'), { replace: false });
    const client = new pg.Client({ connectionString: restored });
    await client.connect();
    await expect(client.query('delete from movements')).rejects.toThrow(/append-only/);
    await client.query(`insert into audit_entries (person, did, subject) values ('a', 'b', 'c')`);
    await client.end();
  });

  it('is not restored over what is there, unless told', async () => {
    const used = await newDatabase();
    await restoreBackup(used, join(folder, 'first'), { replace: false });
    await expect(restoreBackup(used, join(folder, 'first'), { replace: false })).rejects.toThrow(/not empty/);
    await restoreBackup(used, join(folder, 'first'), { replace: true });
    expect(await everyLine(used)).toEqual(await everyLine(server.databaseUrl));
  });

  it('is not restored under a running program', async () => {
    await expect(restoreBackup(server.databaseUrl, join(folder, 'first'), { replace: true })).rejects.toThrow(
      /runs on this database/,
    );
  });

  it('that is damaged is refused before anything is touched', async () => {
    await writeBackup(server.databaseUrl, join(folder, 'damaged'));
    await appendFile(tableFile(join(folder, 'damaged'), 'movements'), 'x');
    await expect(
      restoreBackup(await newDatabase(), join(folder, 'damaged'), { replace: false }),
    ).rejects.toThrow(/movements\.copy\.gz is missing or damaged/);
  });
});

describe('npm run backup and restore', () => {
  const program = (name: string) => fileURLToPath(new URL(`../../dist/${name}.js`, import.meta.url));
  const call = (name: string, dataDir: string, ...more: string[]) =>
    run(process.execPath, [program(name), ...more], {
      env: { PATH: process.env.PATH ?? '', DATA_DIR: dataDir },
    });
  const figures = async (url: string): Promise<unknown> => {
    const client = new Client(url);
    await client.signIn('dispatcher', testPassword);
    const { status, body } = await client.get('/api/stock/as-known-at?at=2099-01-01T00:00Z');
    expect(status).toBe(200);
    return body;
  };

  it('a used demo, backed up while it runs, has the same figures in a new data directory', async () => {
    const [from, to] = [await mkdtemp(`${folder}-from-`), await mkdtemp(`${folder}-to-`)];
    const first = await startProgram({ DATA_DIR: from, DEMO_PASSWORD: testPassword });
    const client = new Client(first.url);
    await client.signIn('dispatcher', testPassword);
    await use(client);
    const expected = await figures(first.url);
    await call('backup', from, join(folder, 'of-a-demo'));
    first.process.kill('SIGTERM');
    await first.ended;
    await call('restore', to, join(folder, 'of-a-demo'));
    const second = await startProgram({ DATA_DIR: to, DEMO_PASSWORD: testPassword });
    expect(await figures(second.url)).toEqual(expected);
    second.process.kill('SIGTERM');
    await second.ended;
    await Promise.all([from, to].map((each) => rm(each, { recursive: true })));
  });
});
