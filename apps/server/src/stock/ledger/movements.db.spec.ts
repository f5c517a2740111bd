import { randomUUID } from 'node:crypto';
import type { Role } from '@drumline/contract';
import type { MovementKind, Raised } from '@drumline/stock';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { createTestServer, type TestServer } from '../../testing/create-test-server.js';
import type { DrumLife } from '../drums.service.js';
import type { PlaceFigures } from '../figures/place-figures.js';
import { counted, drawn, leftAt, loaded, written } from '../testing/movement-bodies.js';
import { signInNew } from '../testing/sign-in-new.js';
import type { Reported } from './movements.service.js';

let server: TestServer;
beforeAll(async () => {
  server = await createTestServer();
});
afterAll(() => server.close());

const stockAt = async (place: string): Promise<PlaceFigures> => {
  const manager = await server.as('operations manager');
  return (await manager.get<PlaceFigures>(`/api/stock/${place}`)).body;
};
const drum = async (number: string): Promise<DrumLife> => {
  const manager = await server.as('operations manager');
  return (await manager.get<DrumLife>(`/api/drums/${number}`)).body;
};
const raised = async (): Promise<readonly Raised[]> => {
  const manager = await server.as('operations manager');
  return (await manager.get<{ items: Raised[] }>('/api/raised?limit=500')).body.items;
};

describe('the same report', () => {
  it('sent five times changes stock once, and is answered the same each time', async () => {
    const pilot = await server.as('pilot');
    const before = (await stockAt('XLOR')).bookLitres;
    const ids = [randomUUID(), randomUUID()];
    await pilot.put(`/api/movements/${ids[0]}`, loaded('0489', 'XALD'));
    const send = () => pilot.put<Reported>(`/api/movements/${ids[1]}`, leftAt('0489', 'XLOR'));
    const answers = await Promise.all([send(), send(), send(), send(), send()]);
    expect(answers.map(({ status }) => status)).toEqual([200, 200, 200, 200, 200]);
    expect(new Set(answers.map(({ body }) => JSON.stringify(sorted(body)))).size).toBe(1);
    expect((await stockAt('XLOR')).bookLitres).toBe(before + 200);
  });

  it('from two phones is one movement with two reporters', async () => {
    const before = (await stockAt('XLOR')).bookLitres;
    const [pilot, crew] = [await server.as('pilot'), await server.as('helicopter crew')];
    await pilot.put(`/api/movements/${randomUUID()}`, loaded('0490', 'XALD'));
    await Promise.all([
      pilot.put(`/api/movements/${randomUUID()}`, leftAt('0490', 'XLOR')),
      crew.put(`/api/movements/${randomUUID()}`, leftAt('0490', 'XLOR')),
    ]);
    expect((await stockAt('XLOR')).bookLitres).toBe(before + 200);
    const { timeline } = await drum('0490');
    const landed = timeline.filter(({ movement }) => movement.kind === 'left at');
    expect(landed).toHaveLength(2);
    expect(landed.filter(({ sameAs }) => sameAs !== null)).toHaveLength(1);
    expect([...landed[0]!.witnesses].sort()).toEqual(['Demo helicopter crew', 'Demo pilot']);
  });

  it('with another content under the same id is refused', async () => {
    const pilot = await server.as('pilot');
    const id = randomUUID();
    await pilot.put(`/api/movements/${id}`, counted('XBIR', 2000));
    const { status, body } = await pilot.put<{ type: string }>(`/api/movements/${id}`, counted('XBIR', 2001));
    expect([status, body.type]).toEqual([409, 'urn:drumline:problem:conflict']);
  });
});

describe('an outbox', () => {
  it('is answered one by one: what is refused keeps nothing else out', async () => {
    const pilot = await server.as('pilot');
    const fill = { kind: 'filled', ...written(), drum: '0491', place: 'XALD', batch: 'J27-041' };
    const outbox = [
      { id: randomUUID(), movement: loaded('0491', 'XALD') },
      { id: randomUUID(), movement: { ...fill, millilitres: 200_000, tareKg: 19, grossKg: 180 } },
      { id: randomUUID(), movement: leftAt('0491', 'XGAN', { by: 'A. Other' }) },
    ];
    const { status, body } = await pilot.post<{ items: { outcome: string }[] }>('/api/movements', outbox);
    expect(status).toBe(200);
    expect(body.items.map(({ outcome }) => outcome)).toEqual(['in the ledger', 'refused', 'in the ledger']);
    const { where, timeline } = await drum('0491');
    expect(where).toEqual({ kind: 'at', place: 'XGAN' });
    expect(timeline.at(-1)?.movement.by).toBe('A. Other');
  });
});

describe('a report that the book contradicts', () => {
  it('is kept and raised: a drum that nobody has heard of', async () => {
    const pilot = await server.as('pilot');
    const { status, body } = await pilot.put<{ raised: Raised[] }>(
      `/api/movements/${randomUUID()}`,
      leftAt('9999', 'XLOR', { flight: 'F77' }),
    );
    expect(status).toBe(200);
    expect(body.raised.map(({ kind }) => kind)).toContain('not in the book');
    expect((await raised()).filter((each) => each.drum === '9999')).not.toEqual([]);
  });

  it.each<readonly [string, Role, string, object]>([
    ['300 L dipped in a drum', 'operations manager', 'millilitres', { kind: 'dipped', millilitres: 300_000 }],
    ['a drum of 0 kg', 'storekeeper', 'grossKg', { kind: 'weighed', grossKg: 0 }],
  ])('%s: asked back on screen, kept by radio', async (_name, role, path, report) => {
    const who = await server.as(role);
    const manager = await server.as('operations manager');
    const send = (means: 'screen' | 'radio') =>
      who.put<{ faults: { path: string }[] }>(`/api/movements/${randomUUID()}`, {
        ...written('2027-06-14T06:00Z', means),
        drum: '0552',
        place: 'XCIN',
        ...report,
      });
    const { status, body } = await send('screen');
    expect([status, body.faults.map((fault) => fault.path)]).toEqual([422, [path]]);
    expect((await send('radio')).status).toBe(200);
    expect((await manager.get('/api/week')).status).toBe(200);
  });

  it('a batch that nobody has entered stands in the book and is not usable', async () => {
    const before = await stockAt('XALD');
    const storekeeper = await server.as('storekeeper');
    const fill = { kind: 'filled', ...written(), drum: '9001', place: 'XALD', batch: 'no such batch' };
    await storekeeper.put(`/api/movements/${randomUUID()}`, {
      ...fill,
      millilitres: 200_000,
      tareKg: 19,
      grossKg: 180,
    });
    const after = await stockAt('XALD');
    expect(after.bookLitres).toBe(before.bookLitres + 200);
    expect(after.usableLitres).toBe(before.usableLitres);
    expect((await (await server.as('operations manager')).get('/api/scenario')).status).toBe(200);
  });
});

describe('a correction', () => {
  it('takes the litres back, and both entries still show', async () => {
    const crew = await server.as('helicopter crew');
    const [number] = (await stockDrums('XESK')) as [string];
    const before = (await stockAt('XESK')).bookLitres;
    const id = randomUUID();
    await crew.put(`/api/movements/${id}`, drawn(number, 'XESK', 60));
    expect((await stockAt('XESK')).bookLitres).toBe(before - 60);
    const correction = { kind: 'corrected', ...written(), corrects: id, reason: 'wrong drum' };
    await crew.put(`/api/movements/${randomUUID()}`, correction);
    expect((await stockAt('XESK')).bookLitres).toBe(before);
    const entry = (await drum(number)).timeline.find(({ movement }) => movement.id === id);
    expect(entry?.reversedBy).toHaveLength(1);
  });

  it('that comes before what it corrects counts when that arrives', async () => {
    const crew = await server.as('helicopter crew');
    const [number] = (await stockDrums('XESK')) as [string];
    const before = (await stockAt('XESK')).bookLitres;
    const id = randomUUID();
    const correction = { kind: 'corrected', ...written(), corrects: id, reason: 'wrong drum' };
    await crew.put(`/api/movements/${randomUUID()}`, correction);
    const blind = async () =>
      (await raised()).filter(({ kind }) => kind === 'corrects an unknown movement').length;
    expect(await blind()).toBe(1);
    await crew.put(`/api/movements/${id}`, drawn(number, 'XESK', 60));
    expect((await stockAt('XESK')).bookLitres).toBe(before);
    expect(await blind()).toBe(0);
  });

  it('of a draw that a crew sent by phone: base enters it as the crew says it by radio, not on its own', async () => {
    const crew = await server.as('helicopter crew');
    const dispatcher = await server.as('dispatcher');
    const id = randomUUID();
    await crew.put(`/api/movements/${id}`, drawn('0447', 'XLOR', 20));
    const correct = (means: 'screen' | 'radio') =>
      dispatcher.put(`/api/movements/${randomUUID()}`, {
        kind: 'corrected',
        ...written('2027-06-14T06:10Z', means),
        corrects: id,
        reason: 'reported twice',
      });
    expect((await correct('screen')).status).toBe(403);
    expect((await correct('radio')).status).toBe(200);
  });

  it('of a hold takes two people of fuel quality, as a release does', async () => {
    const pilot = await server.as('pilot');
    const quality = await server.as('fuel quality');
    const other = await signInNew(server, 'quality-two', 'fuel quality');
    const id = randomUUID();
    await pilot.put(`/api/movements/${id}`, {
      kind: 'held',
      ...written(),
      of: { drum: '0492' },
      reason: 'rust',
    });
    const correction = { kind: 'corrected', ...written(), corrects: id, reason: 'wrong drum' };
    expect((await pilot.put(`/api/movements/${randomUUID()}`, correction)).status).toBe(403);
    const release = {
      kind: 'released',
      ...written('2027-06-14T06:01Z'),
      of: { drum: '0492' },
      reason: 'sample is dry',
    };
    const { body } = await quality.put<{ outcome: string; proposal: { id: string } }>(
      `/api/movements/${randomUUID()}`,
      release,
    );
    expect(body.outcome).toBe('proposed');
    expect((await drum('0492')).held).not.toBeNull();
    expect((await other.put(`/api/proposals/${body.proposal.id}/agreement`, {})).status).toBe(200);
    const { held, timeline } = await drum('0492');
    expect(held).toBeNull();
    expect(timeline.at(-1)?.movement).toMatchObject({ by: 'Demo fuel quality', second: 'New quality-two' });
  });
});

describe('the ledger', () => {
  it('can be asked for a span of time: the first moment in, the last one out', async () => {
    const manager = await server.as('operations manager');
    const at = (moment: string) => drawn('0440', 'XLOR', 1, written(moment, 'phone'));
    const moments = ['2027-06-14T04:00Z', '2027-06-14T04:30Z', '2027-06-14T05:00Z'];
    const pilot = await server.as('pilot');
    for (const moment of moments) await pilot.put(`/api/movements/${randomUUID()}`, at(moment));
    const { body } = await manager.get<{ items: { movement: { happenedAt: string } }[] }>(
      '/api/movements?drum=0440&from=2027-06-14T04:00:00Z&until=2027-06-14T05:00:00Z',
    );
    expect(body.items.map(({ movement }) => movement.happenedAt)).toEqual([moments[1], moments[0]]);
    expect((await manager.get('/api/movements?from=yesterday')).status).toBe(400);
  });
});

describe('a drum whose number cannot be read', () => {
  it('gets a provisional number that is joined to the real one', async () => {
    const pilot = await server.as('pilot');
    await pilot.put(`/api/movements/${randomUUID()}`, loaded('0493', 'XALD', { flight: 'F06' }));
    await pilot.put(`/api/movements/${randomUUID()}`, leftAt('P-1', 'XISK', { flight: 'F06' }));
    expect((await drum('0493')).where).toMatchObject({ kind: 'aboard' });
    const join = { kind: 'joined', ...written('2027-06-14T06:09Z'), provisional: 'P-1', drum: '0493' };
    await pilot.put(`/api/movements/${randomUUID()}`, join);
    const joined = await drum('P-1');
    expect([joined.number, joined.where]).toEqual(['0493', { kind: 'at', place: 'XISK' }]);
  });
});

describe('who may report', () => {
  const reports: readonly [MovementKind, Parameters<TestServer['as']>[0], number, object][] = [
    ['left at', 'storekeeper', 403, leftAt('0494', 'XLOR')],
    ['left at', 'storekeeper', 200, leftAt('0494', 'XALD')],
    ['left at', 'dispatcher', 403, leftAt('0495', 'XLOR')],
    ['left at', 'dispatcher', 200, leftAt('0495', 'XLOR', { means: 'radio' })],
    ['counted', 'accounts', 403, counted('XLOR', 2000)],
    ['drawn', 'fuel quality', 403, drawn('0495', 'XLOR', 10)],
    ['drawn', 'operations manager', 200, drawn('0495', 'XLOR', 10, { medevac: 'patient at XGAN' })],
    ['drawn', 'operations manager', 403, drawn('0495', 'XLOR', 10)],
    ['held', 'pilot', 403, { kind: 'held', ...written(), of: { batch: 'J27-041' }, reason: 'rust' }],
    ['released', 'dispatcher', 403, { kind: 'released', ...written(), of: { drum: '0495' }, reason: 'dry' }],
    ['counted', 'field leader', 403, counted('XLOR', 2000)],
  ];
  it.each(reports)('%s, %s: %i', async (_, role, status, body) => {
    const person = await server.as(role);
    expect((await person.put(`/api/movements/${randomUUID()}`, body)).status).toBe(status);
  });

  it('nobody who is not signed in', async () => {
    const stranger = server.stranger();
    expect((await stranger.put(`/api/movements/${randomUUID()}`, counted('XLOR', 2000))).status).toBe(401);
  });
});

const stockDrums = async (place: string): Promise<readonly string[]> => {
  const manager = await server.as('operations manager');
  const { body } = await manager.get<{ items: { number: string }[] }>(`/api/drums?place=${place}`);
  return body.items.map(({ number }) => number);
};

const sorted = (body: Reported) =>
  body.outcome === 'in the ledger'
    ? [body.movement, [...body.raised].sort((a, b) => (a.id < b.id ? -1 : 1))]
    : body;
