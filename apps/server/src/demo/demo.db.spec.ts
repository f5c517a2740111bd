import { randomUUID } from 'node:crypto';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { theProgram } from '../audit/audit.service.js';
import type { MorningAnswer } from '../morning/morning-answer.js';
import { createTestServer, type TestServer } from '../testing/create-test-server.js';
import { DemoService } from './demo.service.js';

let server: TestServer;
let begunWithDemo: TestServer;
beforeAll(async () => {
  server = await createTestServer({ content: 'accounts' });
  begunWithDemo = await createTestServer({ content: 'accounts' });
  await begunWithDemo.app.get(DemoService).load(theProgram);
});
afterAll(() => Promise.all([server.close(), begunWithDemo.close()]));

interface State {
  readonly canLoad: boolean;
  readonly loaded?: { readonly entered: Readonly<Record<string, number>> };
}

const stateFor = async (): Promise<State> => {
  const manager = await server.as('operations manager');
  return (await manager.get<State>('/api/demo')).body;
};

/** All but the minute, and the numbers that an installation gives of its own to things without a name. */
const morningAt = async (at: TestServer): Promise<MorningAnswer> => {
  const { status, body } = await (await at.as('dispatcher')).get<MorningAnswer>('/api/morning');
  expect(status).toBe(200);
  const uuid = /[0-9a-f]{8}(-[0-9a-f]{4}){3}-[0-9a-f]{12}/g;
  return JSON.parse(JSON.stringify({ ...body, asOf: '' }).replace(uuid, 'a number')) as MorningAnswer;
};

const kept = [
  'accounts',
  'sessions',
  'audit_entries',
  'territory_entries',
  'territory_history',
  'migrations',
];

describe('the demo territory', () => {
  it('is not removed where it was never loaded, not even by the database', async () => {
    const manager = await server.as('operations manager');
    expect((await manager.post('/api/demo/remove', { word: 'remove' })).status).toBe(409);
    await expect(server.database.query('select remove_demo()')).rejects.toThrow(/no demo/);
  });

  it('is loaded by one act, into an empty ledger only', async () => {
    const manager = await server.as('operations manager');
    expect(await stateFor()).toEqual({ canLoad: true });
    expect((await manager.post('/api/demo/load', {})).status).toBe(200);
    expect((await manager.post('/api/demo/load', {})).status).toBe(409);
    expect((await stateFor()).loaded?.entered).toEqual({ movements: 0, flights: 0, plans: 0, changes: 0 });
  });

  it('gives the morning of an installation that begins with it: nothing of it is news, whoever loaded it', async () => {
    expect(await morningAt(server)).toEqual(await morningAt(begunWithDemo));
  });

  it('tells what was entered since, and takes it out with itself when the word is typed; people and audit stay', async () => {
    const manager = await server.as('operations manager');
    const report = { place: 'XLOR', state: 'soft', at: '2027-06-14T06:50Z', by: 'strip helper' };
    expect((await manager.put(`/api/surface-reports/${randomUUID()}`, report)).status).toBe(200);
    const cache = await manager.get<{ version: number; data: object }>('/api/caches/XLOR');
    await manager.change('/api/caches/XLOR', cache.body.version, { ...cache.body.data, empties: 9 });
    expect((await stateFor()).loaded?.entered.changes).toBe(1);

    expect((await manager.post('/api/demo/remove', { word: 'yes' })).status).toBe(422);
    expect((await (await server.as('set-up')).post('/api/demo/remove', { word: 'remove' })).status).toBe(403);
    expect((await manager.post('/api/demo/remove', { word: 'remove' })).status).toBe(204);

    expect(await stateFor()).toEqual({ canLoad: true });
    const tables: readonly { readonly name: string }[] = await server.database.query(
      `select relname as name from pg_class where relnamespace = 'public'::regnamespace and relkind = 'r'`,
    );
    for (const { name } of tables.filter((table) => !kept.includes(table.name))) {
      const [{ count }] = await server.database.query(`select count(*)::int from ${name}`);
      expect([name, count]).toEqual([name, 0]);
    }
    const { body } = await manager.get<{ items: { did: string; subject: string }[] }>('/api/audit?limit=9');
    expect(body.items).toContainEqual(
      expect.objectContaining({ did: 'removed', subject: 'demo territory', person: 'operations-manager' }),
    );
    const stock = await manager.get('/api/stock');
    expect([stock.status, JSON.stringify(stock.body)]).toEqual([
      409,
      expect.stringContaining(
        'its title, days and time zone and its fuel, crew and drum rules are not filled in yet',
      ),
    ]);
  });

  it('and the ledger that begins then is append-only as before, and can be begun with the demo again', async () => {
    const manager = await server.as('operations manager');
    expect((await manager.post('/api/demo/load', {})).status).toBe(200);
    expect(((await manager.get<{ items: object[] }>('/api/stock')).body.items ?? []).length).toBeGreaterThan(
      0,
    );
    await expect(server.database.query('truncate movements')).rejects.toThrow(/permission denied/);
    const [{ count }] = await server.database.query(
      `select count(*)::int from pg_trigger where tgenabled = 'D' and not tgisinternal`,
    );
    expect(count).toBe(0);
    expect(await morningAt(server)).toEqual(await morningAt(begunWithDemo));
  });
});

describe('what is missing for a plan', () => {
  it('is nothing with the demo loaded', async () => {
    const dispatcher = await server.as('dispatcher');
    expect((await dispatcher.get('/api/scenario/missing')).body).toEqual({ items: [], next: null });
  });

  it('is said for an empty territory', async () => {
    const manager = await server.as('operations manager');
    await manager.post('/api/demo/remove', { word: 'remove' });
    const { body } = await manager.get<{ items: { at: string }[] }>('/api/scenario/missing');
    expect(body.items.slice(0, 3).map(({ at }) => at)).toEqual(['settings', 'policy', 'places']);
  });
});
