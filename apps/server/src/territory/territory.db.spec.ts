import { randomUUID } from 'node:crypto';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { signInNew } from '../stock/testing/sign-in-new.js';
import type { Client } from '../testing/client.js';
import { createTestServer, type TestServer } from '../testing/create-test-server.js';

interface Shown {
  readonly id: string;
  readonly version: number;
  readonly data: Record<string, unknown>;
}
interface Faults {
  readonly detail: string;
  readonly faults: readonly { readonly path: string; readonly problem: string }[];
}

let server: TestServer;
let manager: Client;
beforeAll(async () => {
  server = await createTestServer();
  manager = await server.as('operations manager');
});
afterAll(() => server.close());

describe('the territory', () => {
  it('is read a page at a time, to the end', async () => {
    const ids: string[] = [];
    let next: string | null = '';
    while (next !== null) {
      const after: string = next === '' ? '' : `&after=${next}`;
      const page = await manager.get<{ items: Shown[]; next: string | null }>(`/api/caches?limit=5${after}`);
      ids.push(...page.body.items.map(({ id }) => id));
      next = page.body.next;
    }
    expect(ids).toHaveLength(14);
    expect(new Set(ids).size).toBe(14);
  });

  it('a minimum is changed from the version that was read, and its history stays', async () => {
    const { body, headers } = await manager.get<Shown>('/api/caches/XDUN');
    const more = { ...body.data, minimumLitres: 1100 };
    const changed = await manager.put<Shown>('/api/caches/XDUN', more, {
      headers: { 'If-Match': headers.get('ETag')! },
    });
    expect(changed.status).toBe(200);
    expect(changed.headers.get('ETag')).toBe('"2"');
    const history = await server.database.query(
      `select version, data from territory_history where kind = 'caches' and id = 'XDUN' order by version`,
    );
    expect(history.map(({ data }: Shown) => data.minimumLitres)).toEqual([body.data.minimumLitres, 1100]);
  });

  it('two changing one thing at once: one wins, the other is told the version', async () => {
    const { body } = await manager.get<Shown>('/api/caches/XHAS');
    const answers = await Promise.all(
      [21, 22].map((capacityDrums) => manager.change('/api/caches/XHAS', 1, { ...body.data, capacityDrums })),
    );
    const refused = answers.find(({ status }) => status === 412);
    expect(answers.map(({ status }) => status).sort()).toEqual([200, 412]);
    expect(refused?.headers.get('ETag')).toBe('"2"');
  });

  it('a retry of a change that was made is answered like the first', async () => {
    const { body } = await manager.get<Shown>('/api/caches/XCIN');
    const more = { ...body.data, empties: 7 };
    const [first, again] = [
      await manager.change<Shown>('/api/caches/XCIN', 1, more),
      await manager.change<Shown>('/api/caches/XCIN', 1, more),
    ];
    expect([first.status, again.status]).toEqual([200, 200]);
    expect(again.body).toEqual(first.body);
  });

  it('without saying which version was read, nothing is changed', async () => {
    const { body } = await manager.get<Shown>('/api/caches/XBIR');
    expect((await manager.put('/api/caches/XBIR', body.data)).status).toBe(428);
  });

  it('a thing that names what is not there is refused by its field', async () => {
    const task = {
      date: '2027-06-20',
      helicopter: 'H1',
      programme: 'P9',
      place: 'XESK',
      hours: 1,
      litres: 112,
    };
    const { status, body } = await manager.make<Faults>(`/api/helicopter-tasks/${randomUUID()}`, task);
    expect(status).toBe(422);
    expect(body.faults.map(({ path }) => path)).toEqual(['programme']);
  });

  it('a thing that others name stays', async () => {
    const { status, body } = await manager.delete<Faults>('/api/programmes/P1', {
      headers: { 'If-Match': '"1"' },
    });
    expect([status, body]).toEqual([422, expect.objectContaining({ status: 422 })]);
    expect((await manager.get('/api/programmes/P1')).status).toBe(200);
  });

  it('is sent under its own name only', async () => {
    const { body } = await manager.get<Shown>('/api/caches/XBIR');
    const { status } = await manager.change('/api/caches/XISK', 1, body.data);
    expect(status).toBe(422);
  });
});

describe('a level lowered below critical', () => {
  it('takes two people; above it one is enough', async () => {
    const { body } = await manager.get<Shown>('/api/caches/XISK');
    const levels = async () => (await manager.get<Shown>('/api/caches/XISK')).body.data;
    const lower = { ...body.data, minimumLitres: 500, criticalLitres: 500 };
    const proposed = await manager.change<{ proposal: { id: string } }>(
      '/api/caches/XISK',
      body.version,
      lower,
    );
    expect(proposed.status).toBe(202);
    expect(await levels()).toMatchObject({ minimumLitres: 1000, criticalLitres: 600 });
    const agreement = `/api/proposals/${proposed.body.proposal.id}/agreement`;
    expect((await (await server.as('dispatcher')).put(agreement, undefined)).status).toBe(403);
    await manager.put(agreement, undefined);
    expect(await levels()).toMatchObject({ minimumLitres: 1000 });
    const second = await signInNew(server, 'n.vale', 'operations manager');
    expect((await second.put(agreement, undefined)).status).toBe(200);
    expect(await levels()).toMatchObject({ minimumLitres: 500, criticalLitres: 500 });
    const raised = { ...lower, minimumLitres: 900 };
    expect((await manager.change('/api/caches/XISK', body.version + 1, raised)).status).toBe(200);
  });
});

describe('a strip limit', () => {
  const path = '/api/strip-limits/XLOR-B';
  const limits = async (): Promise<Shown> => (await manager.get<Shown>(path)).body;

  it('takes two different people of the right roles', async () => {
    const before = await limits();
    const data = { ...before.data, landingLb: 8000, reference: 'demo table, revision 13' };
    const proposed = await manager.change<{ proposal: { id: string } }>(path, before.version, data);
    expect(proposed.status).toBe(202);
    const agreement = `/api/proposals/${proposed.body.proposal.id}/agreement`;

    expect((await manager.put(agreement, undefined)).body).toMatchObject({
      state: 'open',
      draftedBy: 'Demo operations manager',
      signedBy: ['Demo operations manager'],
      // N. Vale of the test above is a second operations manager.
      stillToSign: { people: 1, roles: ['operations manager', 'fuel quality'] },
    });
    expect((await (await server.as('dispatcher')).put(agreement, undefined)).status).toBe(403);
    expect((await limits()).data).toEqual(before.data);

    const quality = await server.as('fuel quality');
    expect((await quality.put(agreement, undefined)).body).toMatchObject({ state: 'in force' });
    expect(await limits()).toMatchObject({ version: before.version + 1, data });
  });

  it('drafted at set-up waits for two others', async () => {
    const before = await limits();
    const setUp = await server.as('set-up');
    const data = { ...before.data, reference: 'demo table, revision 14' };
    const drafted = await setUp.change<{ proposal: { id: string } }>(path, before.version, data);
    const agreement = `/api/proposals/${drafted.body.proposal.id}/agreement`;
    expect((await manager.put(agreement, undefined)).body).toMatchObject({ state: 'open' });
    const quality = await server.as('fuel quality');
    expect((await quality.put(agreement, undefined)).body).toMatchObject({ state: 'in force' });
  });

  it('proposed on a version that is no longer there does not come in force', async () => {
    const { version, data } = await limits();
    const quality = await server.as('fuel quality');
    const propose = async (person: Client, reference: string) =>
      (await person.change<{ proposal: { id: string } }>(path, version, { ...data, reference })).body.proposal
        .id;
    const [first, second] = [await propose(manager, 'one'), await propose(manager, 'other')];
    expect((await quality.put(`/api/proposals/${first}/agreement`, undefined)).status).toBe(200);
    expect((await quality.put(`/api/proposals/${second}/agreement`, undefined)).status).toBe(412);
  });
});

describe('what is not everybody’s', () => {
  it('a pilot sees his own crew record', async () => {
    const pilot = await server.as('pilot');
    expect((await pilot.get('/api/pilots/FW1')).status).toBe(200);
    expect((await pilot.get('/api/pilots/FW2')).status).toBe(403);
    const { body } = await pilot.get<{ items: Shown[] }>('/api/pilots');
    expect(body.items.map(({ id }) => id)).toEqual(['FW1']);
  });

  it('a helicopter crew sees the tasks of its own helicopter', async () => {
    const crew = await server.as('helicopter crew');
    const { body } = await crew.get<{ items: Shown[] }>('/api/helicopter-tasks?limit=500');
    expect(new Set(body.items.map(({ data }) => data.helicopter))).toEqual(new Set(['H1']));
  });

  it("a customer's field leader sees none of it", async () => {
    const leader = await server.as('field leader');
    for (const path of [
      '/api/caches',
      '/api/places',
      '/api/pilots',
      '/api/helicopter-tasks',
      '/api/scenario',
    ]) {
      expect([path, (await leader.get(path)).status]).toEqual([path, 403]);
    }
  });
});
