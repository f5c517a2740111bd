import { randomUUID } from 'node:crypto';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { PlaceFigures } from './stock/figures/place-figures.js';
import { counted, drawn, written } from './stock/testing/movement-bodies.js';
import { createTestServer, type TestServer } from './testing/create-test-server.js';
import type { ShownFlight } from './testing/flight-desk.js';
import { solvedRun } from './testing/hand-plan.js';

let one: TestServer;
let other: TestServer;
beforeAll(async () => {
  one = await createTestServer();
  other = await createTestServer({ beside: one });
});
afterAll(async () => {
  await other.close();
  await one.close();
});

describe('two servers on one database: what one has written the other shows at the next request', () => {
  it('stock of all caches and of one, with its drums', async () => {
    const [crew, manager] = [await one.as('helicopter crew'), await other.as('operations manager')];
    const all = async () =>
      (await manager.get<{ items: PlaceFigures[] }>('/api/stock')).body.items.find(
        ({ place }) => place === 'XLOR',
      );
    const place = async () =>
      (await manager.get<PlaceFigures & { drums: { number: string; litres: number }[] }>('/api/stock/XLOR'))
        .body;
    const before = await place();
    expect((await all())?.bookLitres).toBe(before.bookLitres);
    const drum = before.drums[0]!;
    for (let times = 1; times <= 3; times++) {
      await crew.put(`/api/movements/${randomUUID()}`, drawn(drum.number, 'XLOR', 10 + times));
      const litres = before.bookLitres - 10 * times - (times * (times + 1)) / 2;
      expect((await all())?.bookLitres).toBe(litres);
      expect((await place()).bookLitres).toBe(litres);
    }
    expect((await place()).drums.find(({ number }) => number === drum.number)?.litres).toBe(drum.litres - 36);
  });

  it('a count of a clock that is ahead, once its moment has come', async () => {
    const [crew, manager] = [await one.as('helicopter crew'), await other.as('operations manager')];
    const count = async () =>
      (await manager.get<PlaceFigures>('/api/stock/XESK')).body.lastCount?.countedLitres ?? null;
    const { body } = await manager.get<{ asOf: string }>('/api/stock/XESK');
    const soon = new Date(Date.parse(body.asOf) + 1500).toISOString();
    const report = counted('XESK', 2390, { ...written(soon) });
    expect((await crew.put(`/api/movements/${randomUUID()}`, report)).status).toBe(200);
    expect(await count()).not.toBe(2390);
    await expect.poll(count, { timeout: 5000 }).toBe(2390);
  });

  it('flights', async () => {
    const [dispatcher, reader] = [await one.as('dispatcher'), await other.as('dispatcher')];
    const states = async () => {
      const { body } = await reader.get<{ items: ShownFlight[] }>('/api/flights');
      return new Map(body.items.map(({ id, state }) => [id, state]));
    };
    expect((await states()).size).toBe(0);
    await dispatcher.post(`/api/plans/${await solvedRun(one)}/accept`, {});
    expect((await states()).get('F01')).toBe('offered');
    const { headers } = await dispatcher.get('/api/flights/F01');
    await dispatcher.post('/api/flights/F01/approve', {}, { headers: { 'If-Match': headers.get('ETag')! } });
    expect((await states()).get('F01')).toBe('approved');
  });

  it('of a list of flights, each person sees their own page', async () => {
    const [dispatcher, pilot] = [await other.as('dispatcher'), await other.as('pilot')];
    const list = async (who: typeof pilot) =>
      (await who.get<{ items: ShownFlight[] }>('/api/flights')).body.items;
    const all = await list(dispatcher);
    const own = await list(pilot);
    expect(own.length).toBeLessThan(all.length);
    expect(await list(dispatcher)).toEqual(all);
    const mine = await pilot.get<{ crew: string | null }>('/api/me');
    expect(own.every((flight) => flight.pilot === mine.body.crew)).toBe(true);
  });

  it('that a session has ended', async () => {
    const [here, there] = [await one.as('storekeeper'), await other.as('storekeeper')];
    expect((await there.get('/api/stock')).status).toBe(200);
    const { body } = await there.get<{ items: { id: string; thisOne: boolean }[] }>('/api/me/sessions');
    const session = body.items.find(({ thisOne }) => thisOne)!;
    expect((await here.delete(`/api/me/sessions/${session.id}`)).status).toBe(204);
    expect((await there.get('/api/stock')).status).toBe(401);
  });
});
