import { randomUUID } from 'node:crypto';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { createTestServer, type TestServer } from '../testing/create-test-server.js';
import type { PlaceFigures } from './figures/place-figures.js';
import type { HoldEffect, NotHeard } from './holds/holds.service.js';
import { drawn, written } from './testing/movement-bodies.js';

interface Stock {
  readonly items: readonly PlaceFigures[];
}

let server: TestServer;
beforeAll(async () => {
  server = await createTestServer();
});
afterAll(() => server.close());

const stockBy = async () => {
  const manager = await server.as('operations manager');
  const { body } = await manager.get<Stock>('/api/stock');
  return new Map(body.items.map((each) => [each.place, each]));
};

describe('a batch is recalled: 44 drums, 8,800 L, 7 places', () => {
  const heldBy = randomUUID();

  it('what would follow is shown first, and nothing changes', async () => {
    const crew = await server.as('helicopter crew');
    await crew.onPhone();
    const { status, body } = await crew.get<HoldEffect>('/api/holds/consequence?batch=J27-041');
    expect(status).toBe(200);
    expectRecall(body);
    expect((await stockBy()).get('XLOR')).toMatchObject({
      bookLitres: 2200,
      usableLitres: 2200,
      heldLitres: 0,
    });
  });

  it('a pilot may hold one drum, not a batch', async () => {
    const pilot = await server.as('pilot');
    await pilot.onPhone();
    const hold = { ...written(), of: { batch: 'J27-041' }, reason: 'water found' };
    expect((await pilot.put(`/api/holds/${randomUUID()}`, hold)).status).toBe(403);
  });

  it('one action holds it everywhere: the book stays, usable falls', async () => {
    const dispatcher = await server.as('dispatcher');
    const hold = { ...written(), of: { batch: 'J27-041' }, reason: 'water found in a sample' };
    const { status, body } = await dispatcher.put<{ consequence: HoldEffect }>(`/api/holds/${heldBy}`, hold);
    expect(status).toBe(200);
    expectRecall(body.consequence);
    // Sent again it is the same hold, and still says what it took out.
    const again = await dispatcher.put<{ consequence: HoldEffect }>(`/api/holds/${heldBy}`, hold);
    expectRecall(again.body.consequence);
    const stock = await stockBy();
    const usable = (place: string) => stock.get(place)?.usableLitres;
    expect(['XESK', 'XLOR', 'XFAL', 'XKNA', 'XMAR'].map(usable)).toEqual([1200, 1000, 800, 120, 0]);
    const level = (place: string) => stock.get(place)?.cache?.level;
    expect(['XESK', 'XLOR', 'XFAL', 'XKNA', 'XMAR'].map(level)).toEqual([
      'enough',
      'below minimum',
      'below minimum',
      'below critical',
      'below critical',
    ]);
    expect(stock.get('XLOR')).toMatchObject({ bookLitres: 2200, heldLitres: 1200 });
    // Of the 24 filled drums at XMER the 10 of the batch may not be used.
    expect(stock.get('XMER')).toMatchObject({
      sealedDrums: 24,
      sealedHeldDrums: 10,
      sealedPastRetestDrums: 0,
    });
    const sum = (isCache: boolean) =>
      [...stock.values()]
        .filter(({ cache }) => (cache !== null) === isCache)
        .reduce((drums, row) => drums + row.sealedHeldDrums + row.partUsedHeldDrums, 0);
    expect([sum(false), sum(true)]).toEqual([24, 20]);
  });

  it('phones that have not asked since are listed by name', async () => {
    await server.database.query(`update sessions set last_seen_at = now() - interval '1 hour'`);
    const quality = await server.as('fuel quality');
    const { body } = await quality.get<NotHeard>(`/api/holds/${heldBy}/not-heard`);
    expect(body.items.map(({ person }) => person).sort()).toEqual(['Demo helicopter crew', 'Demo pilot']);
    expect(body.peopleWithDevice).toBe(2);
  });

  it('a storekeeper or a pilot at an office browser is no phone in the field', async () => {
    await server.as('storekeeper');
    await server.database.query(
      `update sessions set last_seen_at = now() - interval '1 hour' where on_phone`,
    );
    await server.as('pilot');
    const quality = await server.as('fuel quality');
    const { body } = await quality.get<NotHeard>(`/api/holds/${heldBy}/not-heard`);
    expect(body.items.map(({ person }) => person).sort()).toEqual(['Demo helicopter crew', 'Demo pilot']);
    expect(body.peopleWithDevice).toBe(2);
  });

  it('every device has asked since is another answer than nobody has a device', async () => {
    const quality = await server.as('fuel quality');
    const answer = async () => (await quality.get<NotHeard>(`/api/holds/${heldBy}/not-heard`)).body;
    const ofField = `account_id in (select id from accounts where roles && array['pilot', 'helicopter crew', 'storekeeper'])`;
    await server.database.query(`update sessions set last_seen_at = now() where ${ofField}`);
    expect(await answer()).toMatchObject({ items: [], peopleWithDevice: 2 });
    const signedIn = await server.database.query(
      `select id from sessions where revoked_at is null and ${ofField}`,
    );
    const ids = [signedIn.map(({ id }: { readonly id: string }) => id)];
    await server.database.query('update sessions set revoked_at = now() where id = any($1)', ids);
    expect(await answer()).toMatchObject({ items: [], peopleWithDevice: 0 });
    await server.database.query('update sessions set revoked_at = null where id = any($1)', ids);
  });

  it('places and crews to call are ticked off one by one, by name, for everybody', async () => {
    const [quality, dispatcher] = [await server.as('fuel quality'), await server.as('dispatcher')];
    const call = (called: string) => dispatcher.put(`/api/holds/${heldBy}/calls/${called}`, undefined);
    expect([(await call('XLOR')).status, (await call('XZZZ')).status]).toEqual([200, 404]);
    await quality.put(`/api/holds/${heldBy}/calls/XLOR`, undefined);
    const { body } = await quality.get<{ calls: object[] }>(`/api/holds/${heldBy}/not-heard`);
    // The first call stands.
    expect(body.calls).toEqual([
      { called: 'XLOR', by: 'Demo dispatcher', at: expect.stringMatching(/^2027-06-14T/) },
    ]);
    expect((await dispatcher.put(`/api/holds/${randomUUID()}/calls/XLOR`, undefined)).status).toBe(404);
    const accounts = await server.as('accounts');
    expect((await accounts.put(`/api/holds/${heldBy}/calls/XESK`, undefined)).status).toBe(403);
  });

  it('a customer sees a word for each cache, and no figure', async () => {
    const leader = await server.as('field leader');
    const { body } = await leader.get<{ items: object[] }>('/api/cache-levels');
    expect(body.items).toContainEqual({ place: 'XLOR', level: 'low' });
    expect(body.items).toContainEqual({ place: 'XCIN', level: 'enough' });
    expect((await leader.get('/api/stock')).status).toBe(403);
  });
});

const expectRecall = (found: HoldEffect): void => {
  expect([found.drums, found.litres]).toEqual([44, 8800]);
  expect(Object.fromEntries(found.places.map(({ place, drums }) => [place, drums]))).toEqual({
    XALD: 14,
    XMER: 10,
    XESK: 6,
    XLOR: 6,
    XKNA: 3,
    XMAR: 3,
    XFAL: 2,
  });
  const after = new Map(found.places.map(({ place, usableLitresAfter }) => [place, usableLitresAfter]));
  expect(['XESK', 'XLOR', 'XFAL', 'XKNA', 'XMAR'].map((place) => after.get(place))).toEqual([
    1200, 1000, 800, 120, 0,
  ]);
  const before = new Map(found.places.map(({ place, usableLitresBefore }) => [place, usableLitresBefore]));
  expect(['XESK', 'XLOR', 'XFAL'].map((place) => before.get(place))).toEqual([2400, 2200, 1200]);
  expect([...found.belowMinimum].sort()).toEqual(['XFAL', 'XKNA', 'XLOR', 'XMAR']);
  expect([...found.belowCritical].sort()).toEqual(['XKNA', 'XMAR']);
  expect(found.places.find(({ place }) => place === 'XLOR')?.radioScript).toMatch(
    /^XLOR: Batch J27-041 is held/,
  );
};

describe('a draw for a task of today', () => {
  it('counts once: the evening is as low as it was foreseen', async () => {
    const before = (await stockBy()).get('XESK')!;
    const crew = await server.as('helicopter crew');
    const { body } = await crew.get<{ drums: { number: string; batch: string; content: string }[] }>(
      '/api/stock/XESK',
    );
    const { number } = body.drums.find(
      ({ batch, content }) => batch !== 'J27-041' && content === 'filled sealed',
    )!;
    expect((await crew.put(`/api/movements/${randomUUID()}`, drawn(number, 'XESK', 150))).status).toBe(200);
    const after = (await stockBy()).get('XESK')!;
    expect(after.bookLitres).toBe(before.bookLitres - 150);
    expect(after.cache!.projection.usable[0]).toBe(before.cache!.projection.usable[0]! - 150);
    expect(after.cache!.projection.usable.slice(1)).toEqual(before.cache!.projection.usable.slice(1));
  });
});
