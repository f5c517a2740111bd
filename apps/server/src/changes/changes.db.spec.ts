import { randomUUID } from 'node:crypto';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { Client } from '../testing/client.js';
import { createTestServer, type TestServer } from '../testing/create-test-server.js';
import { solvedRun } from '../testing/hand-plan.js';
import type { Versions } from './changes.service.js';

let server: TestServer;
let manager: Client;
beforeAll(async () => {
  server = await createTestServer();
  manager = await server.as('operations manager');
});
afterAll(() => server.close());

/** The kinds whose version is another one after the act. */
const changedBy = async (act: () => Promise<unknown>): Promise<string[]> => {
  const before = await manager.get<Versions>('/api/changes');
  await act();
  const headers = { 'If-None-Match': before.headers.get('ETag') ?? '' };
  const after = await manager.get<Versions>('/api/changes', { headers });
  if (after.status === 304) return [];
  return Object.entries(after.body)
    .filter(([kind, version]) => version !== before.body[kind as keyof Versions])
    .map(([kind]) => kind);
};

describe('what has changed', () => {
  it('is nothing, and 304, while nobody writes anything', async () => {
    expect(await changedBy(() => manager.get('/api/stock'))).toEqual([]);
  });

  it('is told by kind', async () => {
    const report = { place: 'XLOR', state: 'soft', at: '2027-06-14T07:00Z', by: 'strip helper' };
    expect(await changedBy(() => manager.put(`/api/surface-reports/${randomUUID()}`, report))).toEqual([
      'surfaceReports',
    ]);
    const count = {
      kind: 'counted',
      happenedAt: '2027-06-14T06:00Z',
      writtenAt: '2027-06-14T06:00Z',
      means: 'radio',
      place: 'XESK',
      method: 'dip',
      seenFrom: 'ground',
      millilitres: 2_385_000,
      sealedDrums: 11,
      openDrums: 1,
      emptyDrums: 0,
    };
    expect(await changedBy(() => manager.put(`/api/movements/${randomUUID()}`, count))).toEqual(['stock']);
    const cache = await manager.get<{ version: number; data: object }>('/api/caches/XLOR');
    const { version, data } = cache.body;
    const lower = { ...data, minimumLitres: 1100 };
    expect(await changedBy(() => manager.change('/api/caches/XLOR', version, lower))).toEqual(['territory']);
    const items = [{ kind: 'said', words: 'The kettle is broken.' }];
    const handover = `/api/handovers/${randomUUID()}`;
    expect(await changedBy(() => manager.put(handover, { items }))).toEqual(['handovers']);
    let plan = '';
    expect(await changedBy(async () => (plan = await solvedRun(server)))).toEqual(['plans']);
    const accepted = await changedBy(() => manager.post(`/api/plans/${plan}/accept`, {}));
    expect(accepted).toContain('flights');
  });

  it("is not a customer's to know", async () => {
    const leader = await server.as('field leader');
    expect((await leader.get('/api/changes')).status).toBe(403);
  });
});
