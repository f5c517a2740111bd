import { randomUUID } from 'node:crypto';
import { once } from 'node:events';
import { mkdtemp, readFile, rm } from 'node:fs/promises';
import { request } from 'node:http';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { setTimeout as wait } from 'node:timers/promises';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { isAlive } from './embedded-postgres/server-process.js';
import { Client } from './testing/client.js';
import { testPassword } from './testing/create-test-server.js';
import { type Program, startProgram } from './testing/start-program.js';

let dataDir: string;
let program: Program;
let settings: Record<string, string>;
const start = () => startProgram(settings);
const signedIn = async (): Promise<Client> => {
  const client = new Client(program.url);
  await client.signIn('dispatcher', testPassword);
  return client;
};

beforeAll(async () => {
  dataDir = await mkdtemp(join(tmpdir(), 'drumline-start-'));
  settings = { DATA_DIR: dataDir, DEMO_PASSWORD: testPassword };
  program = await start();
});
afterAll(async () => {
  program.process.kill('SIGTERM');
  await program.ended;
  await rm(dataDir, { recursive: true, force: true });
});

const databasePid = async (): Promise<number> =>
  Number((await readFile(join(dataDir, 'postgres', 'postmaster.pid'), 'utf8')).split('\n')[0]);

/** Writes reports until told to stop, and keeps the ids of those that were acknowledged. */
const writeReports = async (client: Client, acknowledged: string[], isOver: () => boolean): Promise<void> => {
  while (!isOver()) {
    const id = randomUUID();
    const report = { place: 'XLOR', state: 'dry', at: '2027-06-14T07:00Z', by: 'strip helper' };
    const answer = await client.put(`/api/surface-reports/${id}`, report).catch(() => null);
    if (answer?.status === 200) acknowledged.push(id);
    else await wait(20);
  }
};

const storedReports = async (client: Client): Promise<Set<string>> => {
  const ids = new Set<string>();
  for (let next: string | null = ''; next !== null; ) {
    const after: string = next === '' ? '' : `&after=${next}`;
    const { body } = await client.get<{ items: { id: string }[]; next: string | null }>(
      `/api/surface-reports?limit=500${after}`,
    );
    for (const { id } of body.items) ids.add(id);
    next = body.next;
  }
  return ids;
};

/** A request that the server has begun to read; its body is sent when it is finished. Answers the status. */
const halfSent = async (path: string, body: object): Promise<{ finish: () => Promise<number> }> => {
  const text = JSON.stringify(body);
  const headers = {
    'Content-Type': 'application/json',
    'Content-Length': Buffer.byteLength(text),
    Expect: '100-continue',
  };
  const sent = request(program.url + path, { method: 'POST', headers });
  const status = new Promise<number>((resolve, reject) => {
    sent.on('response', (answer) => resolve(answer.resume().statusCode ?? 0)).on('error', reject);
  });
  sent.flushHeaders();
  await once(sent, 'continue');
  return {
    finish: () => {
      sent.end(text);
      return status;
    },
  };
};

describe('the program in one go', () => {
  it('refuses to share its data directory', async () => {
    await expect(start()).rejects.toThrow(/in use by another program/);
  });

  it.each([
    ['the program', async () => void program.process.kill('SIGKILL')],
    ['the database', async () => void process.kill(await databasePid(), 'SIGKILL')],
    [
      'both',
      async () => {
        process.kill(await databasePid(), 'SIGKILL');
        program.process.kill('SIGKILL');
      },
    ],
  ])('%s killed while reports are written: none that was acknowledged is lost', async (what, kill) => {
    const acknowledged: string[] = [];
    let over = false;
    const client = await signedIn();
    const writers = [1, 2, 3, 4].map(() => writeReports(client, acknowledged, () => over));
    while (acknowledged.length < 20) await wait(20);
    await kill();
    const before = acknowledged.length;
    if (what === 'the database') {
      while (acknowledged.length < before + 20) await wait(20); // it comes back by itself
    } else {
      await program.ended;
    }
    over = true;
    await Promise.all(writers);
    if (what !== 'the database') program = await start();
    const stored = await storedReports(await signedIn());
    expect(acknowledged.filter((id) => !stored.has(id))).toEqual([]);
  });

  it('stopped and started keeps everything, and leaves no database running', async () => {
    const stored = await storedReports(await signedIn());
    const pid = await databasePid();
    program.process.kill('SIGTERM');
    expect(await program.ended).toBe(0);
    expect(isAlive(pid)).toBe(false);
    program = await start();
    expect(await storedReports(await signedIn())).toEqual(stored);
  });

  it('stops in the order app, queue, database: what is under way is answered first', async () => {
    const pid = await databasePid();
    const signIn = await halfSent('/api/sign-in', { name: 'dispatcher', password: testPassword });
    program.process.kill('SIGTERM');
    const isRefused = () =>
      fetch(`${program.url}/health`).then(
        () => false,
        () => true,
      );
    await expect.poll(isRefused, { timeout: 30_000 }).toBe(true);
    expect(isAlive(pid)).toBe(true);
    expect(await signIn.finish()).toBe(200); // read and written in the database
    expect(await program.ended).toBe(0);
    expect(isAlive(pid)).toBe(false);
    expect(program.said()).not.toMatch(/"level":"(warn|error)"/); // nothing was closed under what still used it
    program = await start();
  });

  it('started by npm, stops when npm is told to', async () => {
    program.process.kill('SIGTERM');
    await program.ended;
    program = await startProgram(settings, ['npm', 'start', '--ignore-scripts']); // without building again
    const pid = await databasePid();
    program.process.kill('SIGTERM');
    await program.ended;
    await expect.poll(() => isAlive(pid), { timeout: 30_000 }).toBe(false);
    program = await start();
  });
});
