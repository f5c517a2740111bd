import { randomUUID } from 'node:crypto';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { Client } from '../testing/client.js';
import { createTestServer, type TestServer } from '../testing/create-test-server.js';
import type { Handover } from './handovers.service.js';

let server: TestServer;
let outgoing: Client;
let incoming: Client;
beforeAll(async () => {
  server = await createTestServer();
  outgoing = await server.as('dispatcher');
  incoming = await server.as('operations manager');
});
afterAll(() => server.close());

const items = [
  { kind: 'open decision', words: 'F05 needs a decision: XLOR is soft.' },
  { kind: 'not heard from', words: 'XKNA, last count 3 June.' },
];
const start = async () => {
  const id = randomUUID();
  await outgoing.put(`/api/handovers/${id}`, { items });
  return `/api/handovers/${id}`;
};

describe('a handover', () => {
  // product.md, M28: cannot be closed with an unread item; both names and times stored.
  it('is taken over only when the incoming person has signed for every item', async () => {
    const path = await start();
    await incoming.put(`${path}/items/1`, { note: 'will call at 07:00' });
    const early = await incoming.post<{ detail: string }>(`${path}/close`, {});
    expect([early.status, early.body.detail]).toEqual([
      409,
      'Not signed for yet: item 2. Each is read and signed first.',
    ]);
    await incoming.put(`${path}/items/2`, {});
    expect((await incoming.post(`${path}/close`, {})).status).toBe(200);
    const { body } = await outgoing.get<Handover>(path);
    expect(body).toMatchObject({
      from: 'Demo dispatcher',
      at: expect.stringMatching(/^2027-06-14/),
      items: [
        { ...items[0], signed: { by: 'Demo operations manager', note: 'will call at 07:00' } },
        { ...items[1], signed: { by: 'Demo operations manager', note: null } },
      ],
      closed: { by: 'Demo operations manager', at: expect.stringMatching(/^2027-06-14/) },
    });
  });

  it('is not signed for by the one who hands over, nor beyond its items', async () => {
    const path = await start();
    expect((await outgoing.put(`${path}/items/1`, {})).status).toBe(403);
    expect((await outgoing.post(`${path}/close`, {})).status).toBe(403);
    expect((await incoming.put(`${path}/items/3`, {})).status).toBe(404);
  });

  it('stays as it was written: the same again is the same, another text is refused, the first signature stands', async () => {
    const path = await start();
    expect((await outgoing.put(path, { items })).status).toBe(200);
    expect((await outgoing.put(path, { items: items.slice(1) })).status).toBe(409);
    await incoming.put(`${path}/items/1`, { note: 'first' });
    await incoming.put(`${path}/items/1`, { note: 'second' });
    const { body } = await outgoing.get<Handover>(path);
    expect(body.items[0]!.signed).toMatchObject({ note: 'first' });
    await expect(server.database.query("update handovers set person = 'nobody'")).rejects.toThrow();
  });

  it('can be read later, the newest first, and is for the desk only', async () => {
    const path = await start();
    const { body } = await incoming.get<{ items: Handover[] }>('/api/handovers?limit=1');
    expect(`/api/handovers/${body.items[0]!.id}`).toBe(path);
    const pilot = await server.as('pilot');
    expect((await pilot.get('/api/handovers')).status).toBe(403);
    expect((await pilot.put(`${path}/items/1`, {})).status).toBe(403);
  });
});
