import { randomUUID } from 'node:crypto';
import type { MovementBody } from '@drumline/contract';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { createTestServer, type TestServer } from '../testing/create-test-server.js';

let server: TestServer;
beforeAll(async () => {
  server = await createTestServer();
});
afterAll(() => server.close());

interface Litres {
  readonly litres: number;
  readonly items: readonly Record<string, unknown>[];
}

const aDrum = async (place: string): Promise<string> => {
  const rows: readonly { readonly number: string }[] = await server.database.query(
    `select number from drums where place = $1 order by number limit 1`,
    [place],
  );
  return rows[0]!.number;
};

const report = async (body: MovementBody | Record<string, unknown>): Promise<string> => {
  const dispatcher = await server.as('dispatcher');
  const id = randomUUID();
  const at = { happenedAt: '2027-06-14T07:00Z', writtenAt: '2027-06-14T07:05Z', means: 'radio' };
  const { status } = await dispatcher.put(`/api/movements/${id}`, { ...at, ...body });
  expect(status).toBe(200);
  return id;
};

const draw = async (programme: string, litres: number): Promise<string> =>
  report({
    kind: 'drawn',
    drum: await aDrum('XESK'),
    place: 'XESK',
    millilitres: litres * 1000,
    into: 'H1',
    programme,
    leftMillilitres: null,
  });

const litresOf = async (programme: string): Promise<number> => {
  const leader = await server.as('field leader');
  return (await leader.get<Litres>(`/api/own-programmes/${programme}/litres`)).body.litres;
};

describe("a customer's field leader", () => {
  it('sees the programme that is theirs, and its helicopter work', async () => {
    const leader = await server.as('field leader');
    const { body } = await leader.get('/api/own-programmes');
    expect(body).toEqual({ items: [{ code: 'P1', name: 'ridge survey' }], next: null });
    const tasks = await leader.get<{ items: unknown[] }>('/api/own-programmes/P1/tasks');
    expect(tasks.body.items[0]).toEqual({
      date: '2027-06-14',
      place: 'XESK',
      hours: 4,
      litres: 450,
      note: null,
    });
  });

  it('sees the litres drawn for it: not those of others, not those that were taken back', async () => {
    const before = await litresOf('P1');
    const mistaken = await draw('P1', 60);
    await draw('P1', 25);
    await draw('P2', 40);
    expect(await litresOf('P1')).toBe(before + 85);
    const correction = await report({ kind: 'corrected', corrects: mistaken, reason: 'entered twice' });
    expect(await litresOf('P1')).toBe(before + 25);
    await report({ kind: 'corrected', corrects: correction, reason: 'it was right' });
    expect(await litresOf('P1')).toBe(before + 85);
  });

  it("is refused another customer's data", async () => {
    const leader = await server.as('field leader');
    for (const path of ['/api/own-programmes/P2/tasks', '/api/own-programmes/P2/litres'])
      expect((await leader.get(path)).status).toBe(403);
  });

  it('sees the levels of caches in words, and no figure', async () => {
    const leader = await server.as('field leader');
    const { body } = await leader.get<{ items: Record<string, unknown>[] }>('/api/cache-levels');
    expect(body.items.length).toBeGreaterThan(5);
    for (const each of body.items) {
      expect(Object.keys(each).sort()).toEqual(['level', 'place']);
      expect(['enough', 'low']).toContain(each.level);
    }
  });

  it('sees nothing else', async () => {
    const leader = await server.as('field leader');
    const { body } = await leader.get<{ paths: Record<string, Record<string, unknown>> }>(
      '/api/openapi.json',
    );
    const open: string[] = [];
    for (const [path, methods] of Object.entries(body.paths)) {
      for (const method of Object.keys(methods)) {
        if (/^\/(health|api\/(sign-in|sign-out|me\b.*))$/.test(path)) continue;
        const address = path.replace(/\{\w+\}/g, randomUUID());
        const { status } = await leader.send(
          method.toUpperCase(),
          address,
          method === 'get' ? undefined : {},
          {},
        );
        if (status !== 403) open.push(`${method} ${path}`);
      }
    }
    expect(open.sort()).toEqual(['get /api/cache-levels', 'get /api/own-programmes']);
  });
});
