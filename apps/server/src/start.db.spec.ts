import { randomUUID } from 'node:crypto';
import { once } from 'node:events';
import { mkdtemp, readFile, rm } from 'node:fs/promises';
import { request } from 'node:http';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { setTimeout as wait } from 'node:timers/promises';
import type { Role } from '@drumline/contract';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { isAlive } from './embedded-postgres/server-process.js';
import { demoName } from './people/first-accounts.js';
import { drawn } from './stock/testing/movement-bodies.js';
import { Client } from './testing/client.js';
import { testPassword } from './testing/create-test-server.js';
import { type Program, startProgram } from './testing/start-program.js';

let dataDir: string;
let program: Program;
let settings: Record<string, string>;
const start = () => startProgram(settings);
const signedIn = async (role: Role): Promise<Client> => {
  const client = new Client(program.url);
  await client.signIn(demoName(role), testPassword);
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

/** Draws a litre at a time until told to stop, and keeps the ids of those that were acknowledged. */
const writeEvents = async (client: Client, acknowledged: string[], isOver: () => boolean): Promise<void> => {
  const { body } = await client.get<{ items: { number: string }[] }>('/api/drums?place=XESK&limit=1');
  while (!isOver()) {
    const id = randomUUID();
    const event = drawn(body.items[0]!.number, 'XESK', 1, { means: 'radio' });
    const answer = await client.put(`/api/movements/${id}`, event).catch(() => null);
    if (answer?.status === 200) acknowledged.push(id);
    else if (answer !== null && answer.status < 500)
      throw new Error(`refused: ${JSON.stringify(answer.body)}`);
    else await wait(20);
  }
};

/** The ledger's events, and no difference between them and the stock that is kept beside. */
const storedEvents = async (client: Client): Promise<Set<string>> => {
  const ids = new Set<string>();
  for (let next: string | null = ''; next !== null; ) {
    const after: string = next === '' ? '' : `&after=${next}`;
    const { body } = await client.get<{ items: { movement: { id: string } }[]; next: string | null }>(
      `/api/movements?limit=500${after}`,
    );
    for (const { movement } of body.items) ids.add(movement.id);
    next = body.next;
  }
  expect((await client.get<{ items: unknown[] }>('/api/stock/check')).body.items).toEqual([]);
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
    const refused = await start().catch((error: Error) => error.message);
    expect(refused).toMatch(/in use by another program/);
    expect(refused).not.toContain('taken over');
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
  ])('%s killed while events are written: none that was acknowledged is lost', async (what, kill) => {
    const acknowledged: string[] = [];
    let over = false;
    const client = await signedIn('dispatcher');
    const writers = [1, 2, 3, 4].map(() => writeEvents(client, acknowledged, () => over));
    const reached = (count: number) =>
      Promise.race([
        expect.poll(() => acknowledged.length, { timeout: 60_000 }).toBeGreaterThanOrEqual(count),
        ...writers,
      ]);
    await reached(20);
    await kill();
    if (what === 'the database') {
      await reached(acknowledged.length + 20); // it comes back by itself
    } else {
      await program.ended;
    }
    over = true;
    await Promise.all(writers);
    if (what !== 'the database') program = await start();
    const stored = await storedEvents(await signedIn('operations manager'));
    expect(acknowledged.filter((id) => !stored.has(id))).toEqual([]);
  });

  it('stopped and started keeps everything, and leaves no database running', async () => {
    const stored = await storedEvents(await signedIn('operations manager'));
    const pid = await databasePid();
    program.process.kill('SIGTERM');
    expect(await program.ended).toBe(0);
    expect(isAlive(pid)).toBe(false);
    program = await start();
    expect(await storedEvents(await signedIn('operations manager'))).toEqual(stored);
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
    expect(program.said().match(/.*"level":"(warn|error)".*/g)).toBeNull(); // nothing was closed under what still used it
    program = await start();
  });

  it('whose log nobody reads any more stops in order all the same', async () => {
    const pid = await databasePid();
    program.process.stdout?.destroy();
    program.process.stderr?.destroy();
    program.process.kill('SIGTERM');
    expect(await program.ended).toBe(0);
    expect(isAlive(pid)).toBe(false);
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
