import { randomUUID } from 'node:crypto';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { createTestServer, type TestServer } from '../testing/create-test-server.js';

let server: TestServer;
beforeAll(async () => {
  server = await createTestServer();
});
afterAll(() => server.close());

const soft = { place: 'XLOR', state: 'soft', at: '2027-06-14T06:52Z', by: 'strip helper, by radio' };

describe('a surface report', () => {
  it('from the radio is in the scenario at once, and in the audit', async () => {
    const dispatcher = await server.as('dispatcher');
    expect((await dispatcher.put(`/api/surface-reports/${randomUUID()}`, soft)).status).toBe(200);
    const manager = await server.as('operations manager');
    const { body } = await manager.get<{ surfaceReports: unknown[] }>('/api/scenario');
    expect(body.surfaceReports).toContainEqual(soft);
    const audit = await manager.get<{ items: unknown[] }>('/api/audit');
    expect(audit.body.items).toContainEqual(
      expect.objectContaining({ person: 'dispatcher', did: 'reported', subject: 'surface XLOR' }),
    );
  });

  it('sent five times at once is one report', async () => {
    const pilot = await server.as('pilot');
    const id = randomUUID();
    const answers = await Promise.all(
      [1, 2, 3, 4, 5].map(() => pilot.put(`/api/surface-reports/${id}`, soft)),
    );
    expect(answers.map(({ status }) => status)).toEqual([200, 200, 200, 200, 200]);
    const [{ count }] = await server.database.query(
      'select count(*)::int from surface_reports where id = $1',
      [id],
    );
    expect(count).toBe(1);
  });

  it('with the id of another report is refused', async () => {
    const pilot = await server.as('pilot');
    const id = randomUUID();
    await pilot.put(`/api/surface-reports/${id}`, soft);
    expect((await pilot.put(`/api/surface-reports/${id}`, { ...soft, state: 'dry' })).status).toBe(409);
  });

  it('of a place that nobody knows is refused by its field', async () => {
    const pilot = await server.as('pilot');
    const { status, body } = await pilot.put<{ faults: { path: string }[] }>(
      `/api/surface-reports/${randomUUID()}`,
      { ...soft, place: 'XZZZ' },
    );
    expect([status, body.faults.map(({ path }) => path)]).toEqual([422, ['place']]);
  });

  it('is not for a storekeeper to give', async () => {
    const storekeeper = await server.as('storekeeper');
    expect((await storekeeper.put(`/api/surface-reports/${randomUUID()}`, soft)).status).toBe(403);
  });
});
