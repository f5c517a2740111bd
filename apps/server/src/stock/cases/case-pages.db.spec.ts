import { randomUUID } from 'node:crypto';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { ShownProposal } from '../../proposals/proposals.service.js';
import { createTestServer, type TestServer } from '../../testing/create-test-server.js';
import { counted, drawn } from '../testing/movement-bodies.js';
import { signInNew } from '../testing/sign-in-new.js';
import type { ClosedCase, ListedCase } from './case-pages.service.js';

let server: TestServer;
beforeAll(async () => {
  server = await createTestServer();
});
afterAll(() => server.close());

const list = async <Item>(path: string): Promise<readonly Item[]> => {
  const manager = await server.as('operations manager');
  return (await manager.get<{ items: readonly Item[] }>(path)).body.items;
};
const caseAt = async (place: string): Promise<ListedCase> =>
  (await list<ListedCase>('/api/cases')).find((each) => each.place === place)!;

describe('a difference case on its page', () => {
  const dip = randomUUID();
  const draw = randomUUID();
  const closing = { cause: 'theft', words: 'Seals cut, tracks of a sledge.' };

  it('shows the count, the last one that was agreed, and what happened between the two', async () => {
    const crew = await server.as('helicopter crew');
    const agreed = randomUUID();
    const before = { happenedAt: '2027-06-14T05:00Z', writtenAt: '2027-06-14T05:00Z' };
    const between = { happenedAt: '2027-06-14T05:20Z', writtenAt: '2027-06-14T05:20Z' };
    await crew.put(`/api/movements/${agreed}`, counted('XCIN', 2400, before));
    const drums = await list<{ number: string }>('/api/drums?place=XCIN');
    await crew.put(`/api/movements/${draw}`, drawn(drums[0]!.number, 'XCIN', 100, between));
    await crew.put(`/api/movements/${dip}`, counted('XCIN', 2050));
    const found = await caseAt('XCIN');
    expect(found.counted).toMatchObject({ id: dip, method: 'dip', by: 'Demo helicopter crew' });
    expect(found.agreed).toMatchObject({ id: agreed, millilitres: 2_400_000 });
    expect(found.movementsSince.map(({ id }) => id)).toEqual([draw]);
    expect([found.differenceMillilitres, found.proposals]).toEqual([-250_000, []]);
  });

  it('shows that one person has proposed to close it, and how', async () => {
    const quality = await server.as('fuel quality');
    await quality.put(`/api/cases/${dip}/closing`, closing);
    expect((await caseAt('XCIN')).proposals).toMatchObject([
      { agreedBy: ['Demo fuel quality'], payload: { cause: 'theft', words: closing.words } },
    ]);
  });

  it('closed by two, it is on the list of the closed, with cause, words and both names', async () => {
    const second = await signInNew(server, 'second-manager', 'operations manager');
    const [proposal] = (await caseAt('XCIN')).proposals as readonly [ShownProposal];
    expect((await second.put(`/api/proposals/${proposal.id}/agreement`, {})).status).toBe(200);
    expect(await caseAt('XCIN')).toBeUndefined();
    const [closed] = await list<ClosedCase>('/api/closed-cases');
    expect(closed).toMatchObject({
      closing: { count: dip, ...closing, by: 'Demo fuel quality' },
      counted: { id: dip, place: 'XCIN' },
    });
    expect(closed?.closing.second).not.toBe(closed?.closing.by);
    expect((await list<ClosedCase>(`/api/closed-cases?after=${dip}`)).length).toBe(0);
  });
});
