import { randomUUID } from 'node:crypto';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { Page } from '../../http/page.js';
import type { Client } from '../../testing/client.js';
import { createTestServer, type TestServer } from '../../testing/create-test-server.js';
import { drawn } from '../testing/movement-bodies.js';
import type { RaisedNow } from './raised.service.js';

let server: TestServer;
let dispatcher: Client;
beforeAll(async () => {
  server = await createTestServer();
  dispatcher = await server.as('dispatcher');
});
afterAll(() => server.close());

const list = async (state: 'open' | 'seen' | 'all' = 'open') =>
  (await dispatcher.get<Page<RaisedNow>>(`/api/raised?state=${state}`)).body.items;
const act = (who: Client, raised: string, rest: object = {}, id: string = randomUUID()) =>
  who.put<{ person: string; detail: string }>(`/api/raised-acts/${id}`, {
    raised,
    act: 'seen',
    words: 'Asked the crew: it was 0474.',
    ...rest,
  });
/** A crew draws 20 L from a drum that by the book stands elsewhere. */
const drawElsewhere = async (drum: string): Promise<RaisedNow> => {
  const crew = await server.as('helicopter crew');
  await crew.put(`/api/movements/${randomUUID()}`, drawn(drum, 'XGAN', 20));
  return (await list()).find((each) => each.drum === drum)!;
};

describe('a raised thing', () => {
  it('is open until somebody has looked at it, and then seen, with who and the words', async () => {
    const raised = await drawElsewhere('0447');
    expect(raised).toMatchObject({ kind: 'not there', isSeen: false, lastAct: null });
    expect((await act(dispatcher, raised.id)).status).toBe(200);
    expect((await list()).map(({ id }) => id)).not.toContain(raised.id);
    const seen = (await list('seen')).find(({ id }) => id === raised.id);
    expect(seen).toMatchObject({
      isSeen: true,
      lastAct: { act: 'seen', person: 'Demo dispatcher', words: 'Asked the crew: it was 0474.' },
    });
    expect((await list('all')).map(({ id }) => id)).toContain(raised.id);
  });

  it('is opened again by an act of its own: the first one stays', async () => {
    const raised = await drawElsewhere('0448');
    await act(dispatcher, raised.id);
    await act(await server.as('storekeeper'), raised.id, {
      act: 'open again',
      words: 'It was not 0474 either.',
    });
    const open = (await list()).find(({ id }) => id === raised.id);
    expect(open).toMatchObject({ isSeen: false, lastAct: { act: 'open again', person: 'Demo storekeeper' } });
    const rows = await server.database.query('select act from raised_acts where raised = $1 order by entry', [
      raised.id,
    ]);
    expect(rows).toEqual([{ act: 'seen' }, { act: 'open again' }]);
  });

  it('sent twice under one id is one act; the same id with other words is refused', async () => {
    const raised = await drawElsewhere('0449');
    const id = randomUUID();
    expect((await act(dispatcher, raised.id, {}, id)).status).toBe(200);
    expect((await act(dispatcher, raised.id, {}, id)).status).toBe(200);
    expect((await act(dispatcher, raised.id, { words: 'Something else.' }, id)).status).toBe(409);
    const manager = await server.as('operations manager');
    const { body } = await manager.get<Page<{ subject: string; person: string }>>('/api/audit');
    expect(body.items.filter(({ subject }) => subject === `raised: ${raised.id}`)).toHaveLength(1);
  });

  it('that reads otherwise than when it was seen is open again', async () => {
    const overfull = () => list('all').then((all) => all.find(({ kind }) => kind === 'over capacity')!);
    const manager = await server.as('operations manager');
    const { body, headers } = await manager.get<{ data: { capacityDrums: number } }>('/api/caches/XLOR');
    const shrink = async (capacityDrums: number, version: string) => {
      const cache = { ...body.data, capacityDrums };
      return manager.put('/api/caches/XLOR', cache, { headers: { 'If-Match': version } });
    };
    const once = await shrink(10, headers.get('ETag')!);
    await act(dispatcher, (await overfull()).id, { words: 'Two drums go to XOGR on Thursday.' });
    expect((await overfull()).isSeen).toBe(true);
    await shrink(9, once.headers.get('ETag')!);
    expect((await overfull()).isSeen).toBe(false);
  });

  it('says days and times by the calendar of the territory wherever it is read, and stays seen as it reads', async () => {
    const crew = await server.as('helicopter crew');
    const ahead = drawn('0451', 'XLOR', 20, { happenedAt: '2031-02-03T09:30:00.000Z' });
    const answer = await crew.put<{ raised: RaisedNow[] }>(`/api/movements/${randomUUID()}`, ahead);
    const ofClock = ({ what }: { what: string }) => what.includes('is said to have happened');
    const words = answer.body.raised.find(ofClock)!.what;
    expect(words).toMatch(
      /is said to have happened at Mon 3 February 2031, 09:30 but was received at Mon 14, \d\d:\d\d\.$/,
    );
    const life = await dispatcher.get<{ raised: RaisedNow[] }>('/api/drums/0451');
    const morning = await dispatcher.get<{ raised: RaisedNow[] }>('/api/morning');
    for (const { body } of [life, morning])
      expect(body.raised.filter(ofClock)).toMatchObject([{ what: words }]);
    const raised = (await list()).find(ofClock)!;
    expect(raised.what).toBe(words);
    await act(dispatcher, raised.id);
    expect((await list('seen')).find(ofClock)).toMatchObject({ what: words, isSeen: true });
  });

  it('is counted on Morning where there are more than it lists: each is in the list or in the count', async () => {
    const crew = await server.as('helicopter crew');
    for (let litres = 1; litres <= 25; litres += 1)
      await crew.put(
        `/api/movements/${randomUUID()}`,
        drawn('0452', 'XLOR', litres, { happenedAt: '2031-02-03T09:30Z' }),
      );
    const { body } = await dispatcher.get<{
      raised: RaisedNow[];
      moreRaised: { mayHurt: number; rest: number };
    }>('/api/morning');
    const open = await dispatcher.get<Page<RaisedNow>>('/api/raised?limit=100');
    const hurting = (things: readonly RaisedNow[]) => things.filter(({ mayHurt }) => mayHurt).length;
    const { mayHurt, rest } = body.moreRaised;
    expect(mayHurt + rest).toBeGreaterThan(0);
    expect(body.raised.length + mayHurt + rest).toBe(open.body.items.length);
    expect(hurting(body.raised) + mayHurt).toBe(hurting(open.body.items));
  });

  it('that is not there, or no longer, cannot be seen', async () => {
    expect((await act(dispatcher, 'not there | 9999')).status).toBe(404);
  });

  it('is for the office and the storekeeper to settle: a pilot reads it only', async () => {
    const raised = await drawElsewhere('0450');
    const pilot = await server.as('pilot');
    expect((await pilot.get('/api/raised')).status).toBe(200);
    expect((await act(pilot, raised.id)).status).toBe(403);
  });
});
