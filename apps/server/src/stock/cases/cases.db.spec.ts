import { randomUUID } from 'node:crypto';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { ShownProposal } from '../../proposals/proposals.service.js';
import { createTestServer, type TestServer, testPassword } from '../../testing/create-test-server.js';
import type { PlaceFigures } from '../figures/place-figures.js';
import { counted, drawn } from '../testing/movement-bodies.js';
import { signInNew } from '../testing/sign-in-new.js';
import type { OpenCase } from './cases.service.js';

let server: TestServer;
const dip = randomUUID();
beforeAll(async () => {
  server = await createTestServer();
});
afterAll(() => server.close());

const cases = async (): Promise<readonly OpenCase[]> => {
  const manager = await server.as('operations manager');
  return (await manager.get<{ items: OpenCase[] }>('/api/cases')).body.items;
};
const stockAt = async (place: string): Promise<PlaceFigures> => {
  const manager = await server.as('operations manager');
  return (await manager.get<PlaceFigures>(`/api/stock/${place}`)).body;
};

describe('a dip against the book', () => {
  it('15 L short of 2,400 is accepted without a word', async () => {
    const manager = await server.as('operations manager');
    await manager.put(`/api/movements/${randomUUID()}`, counted('XESK', 2385));
    expect((await cases()).filter(({ place }) => place === 'XESK')).toEqual([]);
    expect(await stockAt('XESK')).toMatchObject({
      bookLitres: 2400,
      usableLitres: 2400,
      lastCount: { verdict: 'accepted', countedLitres: 2385 },
    });
  });

  it('250 L short against a tolerance of 48 L opens a case, and the projection goes on from 2,150', async () => {
    const manager = await server.as('operations manager');
    await manager.put(`/api/movements/${dip}`, counted('XCIN', 2150));
    const [open, ...others] = (await cases()).filter(({ place }) => place === 'XCIN');
    expect(others).toEqual([]);
    expect(open).toMatchObject({
      count: dip,
      bookMillilitres: 2_400_000,
      countedMillilitres: 2_150_000,
      differenceMillilitres: -250_000,
      toleranceMillilitres: 48_000,
    });
    const stock = await stockAt('XCIN');
    expect(stock).toMatchObject({ bookLitres: 2400, usableLitres: 2150, countShortfallLitres: 250 });
    expect(stock.cache?.projection.usable[0]).toBe(2150);
  });

  it('names the phones that may hold a report which explains it', async () => {
    await (await server.as('pilot')).onPhone();
    await server.database.query(`update sessions set last_seen_at = now() - interval '1 hour'`);
    const [open] = (await cases()).filter(({ place }) => place === 'XCIN');
    expect(open?.notHeardFrom.map(({ person }) => person)).toContain('Demo pilot');
  });

  it('cannot be closed by the person who counted', async () => {
    const manager = await server.as('operations manager');
    const closing = { cause: 'spill', words: 'bung of 0552 found open' };
    const { status, body } = await manager.put<{ detail: string }>(`/api/cases/${dip}/closing`, closing);
    expect(status).toBe(403);
    expect(body.detail).toMatch(/made the count at XCIN/);
  });

  it('nor may the one who counted be the second of two', async () => {
    const quality = await server.as('fuel quality');
    const closing = { cause: 'spill', words: 'bung of 0552 found open' };
    const { body } = await quality.put<ShownProposal>(`/api/cases/${dip}/closing`, closing);
    expect(body.agreed).toHaveLength(1);
    const manager = await server.as('operations manager');
    expect((await manager.put(`/api/proposals/${body.id}/agreement`, {})).status).toBe(403);
    expect((await cases()).map(({ count }) => count)).toContain(dip);
  });

  it('is closed as a spill by two others: what was not found stays off usable stock', async () => {
    const second = await signInNew(server, 'second-manager', 'operations manager');
    const quality = await server.as('fuel quality');
    const closing = { cause: 'spill', words: 'bung of 0552 found open' };
    const first = await quality.put<ShownProposal>(`/api/cases/${dip}/closing`, closing);
    const other = { cause: 'recount', words: 'counted again' };
    const waiting = await quality.put<ShownProposal>(`/api/cases/${dip}/closing`, other);
    const { body } = await second.put<ShownProposal>(`/api/cases/${dip}/closing`, closing);
    expect(body).toMatchObject({ id: first.body.id, state: 'in force' });
    expect((await cases()).map(({ count }) => count)).not.toContain(dip);
    expect(await stockAt('XCIN')).toMatchObject({ bookLitres: 2400, usableLitres: 2150 });
    const left = await second.get<ShownProposal>(`/api/proposals/${waiting.body.id}`);
    expect(left.body.state).toBe('withdrawn');
  });

  it('closed because counting again showed the count wrong: the book stands again', async () => {
    const manager = await server.as('operations manager');
    const wrong = randomUUID();
    await manager.put(`/api/movements/${wrong}`, counted('XBIR', 1000));
    expect((await stockAt('XBIR')).usableLitres).toBe(1000);
    const closing = { cause: 'recount', words: 'two rows were missed' };
    const quality = await server.as('fuel quality');
    await quality.put(`/api/cases/${wrong}/closing`, closing);
    const second = server.stranger();
    await second.signIn('second-manager', testPassword);
    expect((await second.put(`/api/cases/${wrong}/closing`, closing)).body).toMatchObject({
      state: 'in force',
    });
    const { bookLitres, usableLitres } = await stockAt('XBIR');
    expect(usableLitres).toBe(bookLitres);
  });

  it('a late report that explains the difference takes the case away', async () => {
    const manager = await server.as('operations manager');
    const later = { happenedAt: '2027-06-14T05:55Z', writtenAt: '2027-06-14T05:55Z' };
    await manager.put(`/api/movements/${randomUUID()}`, counted('XCIN', 2200, later));
    expect((await cases()).map(({ place }) => place)).toContain('XCIN');
    const crew = await server.as('helicopter crew');
    const [drum] = await drumsAt('XCIN');
    const before = { happenedAt: '2027-06-14T05:30Z', writtenAt: '2027-06-14T05:30Z' };
    await crew.put(`/api/movements/${randomUUID()}`, drawn(drum!, 'XCIN', 200, before));
    expect((await cases()).map(({ place }) => place)).not.toContain('XCIN');
  });
});

const drumsAt = async (place: string): Promise<readonly string[]> => {
  const manager = await server.as('operations manager');
  const { body } = await manager.get<{ items: { number: string }[] }>(`/api/drums?place=${place}`);
  return body.items.map(({ number }) => number);
};
