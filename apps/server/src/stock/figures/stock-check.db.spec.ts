import { randomUUID } from 'node:crypto';
import type { Raised } from '@drumline/stock';
import fc from 'fast-check';
import pg from 'pg';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { Client } from '../../testing/client.js';
import { createTestServer, type TestServer } from '../../testing/create-test-server.js';
import { counted, drawn, leftAt, loaded, written } from '../testing/movement-bodies.js';
import type { PlaceFigures } from './place-figures.js';
import type { StockDifference } from './stock-check.service.js';

let server: TestServer;
let crew: Client;
let manager: Client;
beforeAll(async () => {
  server = await createTestServer();
  crew = await server.as('helicopter crew');
  manager = await server.as('operations manager');
});
afterAll(() => server.close());

const differences = async (): Promise<readonly StockDifference[]> =>
  (await manager.get<{ items: StockDifference[] }>('/api/stock/check')).body.items;
const raised = async (): Promise<readonly Raised[]> =>
  (await manager.get<{ items: Raised[] }>('/api/raised?limit=500')).body.items;

describe('what is kept beside the ledger', () => {
  it('is what the movements make, after the import', async () => {
    expect(await differences()).toEqual([]);
  });

  it('is what the movements make, after a random day reported from several phones at once', async () => {
    const [day] = fc.sample(fc.array(report, { minLength: 150, maxLength: 150 }), { numRuns: 1, seed: 1 });
    const ids = day!.map(() => randomUUID());
    const bodies = day!.map((body, index) =>
      body.kind === 'corrected' ? { ...body, corrects: ids[(index * 7) % ids.length] } : body,
    );
    const phones = Array.from({ length: 8 }, (_, phone) =>
      bodies.flatMap((movement, index) => (index % 8 === phone ? [{ id: ids[index], movement }] : [])),
    );
    const answers = await Promise.all(
      phones.map((outbox) => crew.post<{ items: { outcome: string }[] }>('/api/movements', outbox)),
    );
    expect(answers.filter(({ status }) => status !== 200)).toEqual([]);
    const outcomes = answers.flatMap(({ body }) => body.items.map(({ outcome }) => outcome));
    expect(new Set(outcomes)).toEqual(new Set(['in the ledger']));
    expect(await differences()).toEqual([]);
  }, 120_000);

  it('that was spoilt is found, and made anew', async () => {
    const before = (await manager.get<PlaceFigures>('/api/stock/XLOR')).body.bookLitres;
    await server.database.query(
      `update place_balances set book_millilitres = 1, version = version + 1 where place = 'XLOR'`,
    );
    await server.database.query(`delete from drums where number = '0495'`);
    expect((await differences()).map(({ table }) => table).sort()).toEqual(['drums', 'place_balances']);
    const pilot = await server.as('pilot');
    expect((await pilot.post('/api/stock/rebuild', {})).status).toBe(403);
    const { body } = await manager.post<{ items: StockDifference[] }>('/api/stock/rebuild', {});
    expect(body.items).toHaveLength(2);
    expect(await differences()).toEqual([]);
    expect((await manager.get<PlaceFigures>('/api/stock/XLOR')).body.bookLitres).toBe(before);
  });
});

describe('40 reports at once', () => {
  it('that overfill a cache are all kept, and the cache is raised', async () => {
    const fill = {
      kind: 'received',
      content: 'filled sealed',
      millilitres: 200_000,
      tareKg: 19,
      grossKg: 179,
    };
    const storekeeper = await server.as('storekeeper');
    const send = (index: number) =>
      storekeeper.put(`/api/movements/${randomUUID()}`, {
        ...fill,
        ...written(),
        drum: `N${index}`,
        place: 'XFAL',
        batch: 'J27-041',
      });
    const before = (await manager.get<PlaceFigures>('/api/stock/XFAL')).body.bookLitres;
    const answers = await Promise.all(Array.from({ length: 40 }, (_, index) => send(index)));
    expect(answers.every(({ status }) => status === 200)).toBe(true);
    expect((await manager.get<PlaceFigures>('/api/stock/XFAL')).body.bookLitres).toBe(before + 8000);
    expect((await raised()).filter(({ kind }) => kind === 'over capacity')).toMatchObject([
      { place: 'XFAL' },
    ]);
  });

  it('that load one drum on many flights are all kept, and the drum is raised', async () => {
    const send = (index: number) =>
      crew.put(`/api/movements/${randomUUID()}`, loaded('N1', 'XFAL', { flight: `F${index + 10}` }));
    const answers = await Promise.all(Array.from({ length: 40 }, (_, index) => send(index)));
    expect(answers.every(({ status }) => status === 200)).toBe(true);
    const twice = (await raised()).filter(({ kind, drum }) => kind === 'aboard two flights' && drum === 'N1');
    expect(twice).toHaveLength(39);
    expect(await differences()).toEqual([]);
  });

  it('of draws that look alike are all counted, and raised', async () => {
    const before = (await manager.get<PlaceFigures>('/api/stock/XFAL')).body.bookLitres;
    const send = (index: number) =>
      crew.put(
        `/api/movements/${randomUUID()}`,
        drawn(`N${index + 2}`, 'XFAL', 33, {
          writtenAt: `2027-06-14T06:1${index}Z`,
        }),
      );
    await Promise.all(Array.from({ length: 10 }, (_, index) => send(index)));
    expect((await manager.get<PlaceFigures>('/api/stock/XFAL')).body.bookLitres).toBe(before - 330);
    expect((await raised()).filter(({ kind }) => kind === 'draws look alike').length).toBeGreaterThanOrEqual(
      45,
    );
    expect(await differences()).toEqual([]);
  });
});

describe('the stock as it was known', () => {
  it('leaves out what came in later', async () => {
    const at = '2027-06-14T06:00:00.000Z';
    const { body } = await manager.get<PlaceFigures>(`/api/stock/XFAL/as-known-at?at=${at}`);
    expect(body.bookLitres).toBe(1200);
  });
});

describe('the ledger', () => {
  it('is refused a change by the database, whoever asks', async () => {
    await expect(server.database.query('update movements set means = means')).rejects.toThrow(/denied/);
    await expect(server.database.query('delete from movements')).rejects.toThrow(/denied/);
    const owner = new pg.Client({ connectionString: server.databaseUrl });
    await owner.connect();
    await expect(owner.query('update movements set means = means')).rejects.toThrow(/append-only/);
    await expect(owner.query('delete from movements')).rejects.toThrow(/append-only/);
    await expect(owner.query('delete from case_closings')).rejects.toThrow(/append-only/);
    await owner.end();
  });
});

const number = fc.constantFrom('0489', '0490', '0491', '0601', 'P1', 'P2', 'not heard of');
const place = fc.constantFrom('XALD', 'XLOR', 'XGAN', 'XESK');
const clock = fc
  .integer({ min: 0, max: 59 })
  .map((minute) => written(`2027-06-14T05:${String(minute).padStart(2, '0')}Z`, 'phone'));
const leg = fc.record({ flight: fc.constantFrom('F05', 'F06'), leg: fc.constantFrom(1, 2) });
const report = fc
  .tuple(number, number, place, clock, leg, fc.integer({ min: 1, max: 220 }), fc.integer({ min: 0, max: 9 }))
  .map(([drum, other, at, when, onLeg, litres, kind]) => {
    const reports: readonly ({ readonly kind: string } & Readonly<Record<string, unknown>>)[] = [
      loaded(drum, at, { ...when, ...onLeg }),
      loaded(drum, at, { ...when, ...onLeg }),
      leftAt(drum, at, { ...when, ...onLeg }),
      leftAt(drum, at, { ...when, ...onLeg }),
      drawn(drum, at, litres, when),
      drawn(drum, at, 50, when),
      counted(at, litres * 10, when),
      { kind: 'joined', ...when, provisional: drum, drum: other },
      { kind: 'corrected', ...when, corrects: '', reason: 'slip' },
      {
        kind: 'transferred',
        ...when,
        drum,
        place: at,
        into: other,
        batch: 'J27-041',
        millilitres: 1000 * litres,
      },
    ];
    return reports[kind]!;
  });
