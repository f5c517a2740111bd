import { randomUUID } from 'node:crypto';
import pg from 'pg';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { drawn } from '../stock/testing/movement-bodies.js';
import type { Client } from '../testing/client.js';
import { createTestServer, type TestServer } from '../testing/create-test-server.js';

let server: TestServer;
let owner: pg.Client;
beforeAll(async () => {
  server = await createTestServer();
  owner = new pg.Client({ connectionString: server.databaseUrl });
  await owner.connect();
  const manager = await server.as('operations manager');
  await manager.put('/api/surface-reports/8f6f7c1e-6a3e-4a52-9c7b-0a4f7f0f4a11', {
    place: 'XLOR',
    state: 'soft',
    at: '2027-06-14T06:50Z',
    by: 'strip helper',
  });
  await lookAtRaised(manager);
});
afterAll(async () => {
  await owner.end();
  await server.close();
});

/** A draw from a drum that stands elsewhere is raised, and somebody looks at it. */
const lookAtRaised = async (manager: Client): Promise<void> => {
  const crew = await server.as('helicopter crew');
  await crew.put(`/api/movements/${randomUUID()}`, drawn('0447', 'XGAN', 20));
  const { body } = await manager.get<{ items: { id: string }[] }>('/api/raised');
  const act = { raised: body.items[0]!.id, act: 'seen', words: 'The crew misread the number.' };
  await manager.put(`/api/raised-acts/${randomUUID()}`, act);
};

const ledgers = ['movements', 'audit_entries', 'surface_reports', 'territory_history', 'raised_acts'];

/** A column to try to change. */
const columnOf: Readonly<Record<string, string>> = {
  audit_entries: 'person',
  territory_history: 'kind',
  raised_acts: 'words',
};

describe('an append-only table', () => {
  it.each(ledgers)('%s has rows, and the program has no right to change or remove one', async (table) => {
    const [{ count }] = await server.database.query(`select count(*)::int from ${table}`);
    expect(count).toBeGreaterThan(0);
    const denied = /permission denied/;
    await expect(server.database.query(`delete from ${table}`)).rejects.toThrow(denied);
    await expect(server.database.query(`truncate ${table}`)).rejects.toThrow(denied);
    const column = columnOf[table] ?? 'data';
    await expect(server.database.query(`update ${table} set ${column} = ${column}`)).rejects.toThrow(denied);
  });

  it.each(ledgers)('%s refuses even its owner', async (table) => {
    await expect(owner.query(`delete from ${table}`)).rejects.toThrow(/append-only/);
    await expect(owner.query(`truncate ${table} cascade`)).rejects.toThrow(/append-only/);
  });
});
