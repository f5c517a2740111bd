import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import type { ClockAnswer, MorningAnswer } from '@drumline/contract/answers';
import type { Scenario } from '@drumline/planning';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { rootFolder } from '../config.js';
import { createTestServer, type TestServer } from '../testing/create-test-server.js';

let server: TestServer;
let document: Scenario;
beforeAll(async () => {
  server = await createTestServer({ content: 'accounts' });
  document = JSON.parse(await readFile(join(rootFolder, 'seeds', 'hollowtarn.json'), 'utf8')) as Scenario;
});
afterAll(() => server.close());

describe('a scenario document', () => {
  it('that has faults is kept out, every fault named', async () => {
    const setUp = await server.as('set-up');
    const [first, ...rest] = document.caches;
    const wrong = { ...document, caches: [{ ...first, minimumLitres: '800' }, ...rest], winds: 'none' };
    const { status, body } = await setUp.post<{ faults: { path: string }[] }>('/api/scenario/import', wrong);
    expect(status).toBe(422);
    expect(body.faults.map(({ path }) => path).sort()).toEqual(['caches[0].minimumLitres', 'winds']);
  });

  it('with standing flights is kept out, and says what to do with them', async () => {
    const setUp = await server.as('set-up');
    const [first] = document.handPlan;
    const standing = { ...document, flights: [{ ...first, state: 'approved' }] };
    const { status, body } = await setUp.post<{ faults: { path: string; remedy: string }[] }>(
      '/api/scenario/import',
      standing,
    );
    expect(status).toBe(422);
    expect(body.faults).toEqual([
      expect.objectContaining({ path: 'flights', remedy: expect.stringContaining('handPlan') }),
    ]);
    expect((await setUp.get('/api/scenario')).status).toBe(409);
  });

  it('is tried without being written', async () => {
    const setUp = await server.as('set-up');
    const { status, body } = await setUp.post('/api/scenario/import?dryRun=true', document);
    expect([status, body]).toEqual([200, expect.objectContaining({ dryRun: true, drums: 186 })]);
    expect((await setUp.get('/api/scenario')).status).toBe(409);
  });

  it('goes by the time of day from the first where no drill is asked for: nothing is told as changed', async () => {
    const other = await createTestServer({ content: 'accounts' });
    const setUp = await other.as('set-up');
    const before = Date.now();
    expect((await setUp.post('/api/scenario/import?clock=time%20of%20day', document)).status).toBe(200);
    expect((await setUp.get<ClockAnswer>('/api/clock')).body.settings).toEqual([]);
    const manager = await other.as('operations manager');
    const { changed, asOf } = (await manager.get<MorningAnswer>('/api/morning')).body;
    expect(Date.parse(asOf)).toBeGreaterThan(before - 60_000);
    expect(changed.map(({ what }) => what).filter((what) => what.includes('settings'))).toEqual([]);
    await other.close();
  });

  it('comes back as it was brought in', async () => {
    const setUp = await server.as('set-up');
    expect((await setUp.post('/api/scenario/import', document)).status).toBe(200);
    const manager = await server.as('operations manager');
    const { body } = await manager.get<Scenario>('/api/scenario');
    const { asOf, counts, drums, surfaceReports, ...same } = body;
    const { asOf: from, counts: counted, drums: given, surfaceReports: reports, ...expected } = document;
    expect(same).toEqual(expected);
    expect(asOf.slice(0, 13)).toBe(from.slice(0, 13));
    expect(byNumber(drums)).toEqual(byNumber(given));
    expect(new Set(surfaceReports.map(words))).toEqual(new Set(reports.map(words)));
    expect(counts).toHaveLength(counted.length);
  });

  it('is not brought into a ledger that has begun', async () => {
    const setUp = await server.as('set-up');
    expect((await setUp.post('/api/scenario/import', document)).status).toBe(409);
  });

  it('is not open to a pilot', async () => {
    const pilot = await server.as('pilot');
    expect((await pilot.get('/api/scenario')).status).toBe(403);
    expect((await pilot.post('/api/scenario/import', document)).status).toBe(403);
  });
});

const byNumber = (drums: Scenario['drums']) => [...drums].sort((a, b) => (a.number < b.number ? -1 : 1));

const words = ({ place, state, at, by }: Scenario['surfaceReports'][number]) =>
  `${place} ${state} ${at} ${by}`;
