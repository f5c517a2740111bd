import { randomUUID } from 'node:crypto';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { Page } from '../../http/page.js';
import type { Answer, Client } from '../../testing/client.js';
import { createTestServer, type TestServer } from '../../testing/create-test-server.js';
import type { RaisedNow } from '../raised/raised.service.js';
import { counted, drawn, leftAt, written } from '../testing/movement-bodies.js';

let server: TestServer;
let dispatcher: Client;
let crew: Client;
let store: Client;
beforeAll(async () => {
  server = await createTestServer();
  dispatcher = await server.as('dispatcher');
  crew = await server.as('helicopter crew');
  store = await server.as('storekeeper');
});
afterAll(() => server.close());

const report = (who: Client, movement: object, id: string = randomUUID()): Promise<Answer> =>
  who.put(`/api/movements/${id}`, movement);
const raised = async (kind: string, state = 'open'): Promise<readonly RaisedNow[]> => {
  const { body } = await dispatcher.get<Page<RaisedNow>>(`/api/raised?state=${state}&limit=500`);
  return body.items.filter((each) => each.kind === kind);
};
const filledByRadio = (drum: string, rest: object = {}) => ({
  kind: 'filled',
  ...written('2027-06-14T06:04Z', 'radio'),
  drum,
  place: 'XALD',
  batch: 'J27-041',
  millilitres: 200_000,
  tareKg: 19.7,
  grossKg: 179.1,
  ...rest,
});

describe('a crew that names what nobody has set up', () => {
  it('is not refused: the draw is kept, and the office is told of aircraft and programme', async () => {
    const { status } = await report(crew, drawn('0447', 'XESK', 40, { into: 'H9', programme: 'P7' }));
    expect(status).toBe(200);
    expect(await raised('not in the territory')).toMatchObject([
      {
        drum: '0447',
        what: expect.stringContaining('by phone, names aircraft H9 and programme P7'),
        isSeen: false,
      },
    ]);
  });

  it('is settled when a person has seen it, like whatever else is raised', async () => {
    const [thing] = await raised('not in the territory');
    await dispatcher.put(`/api/raised-acts/${randomUUID()}`, {
      raised: thing!.id,
      act: 'seen',
      words: 'A hired helicopter, one day only.',
    });
    expect(await raised('not in the territory')).toEqual([]);
    expect(await raised('not in the territory', 'seen')).toMatchObject([{ isSeen: true }]);
  });

  it('at a place that nobody knows', async () => {
    expect((await report(crew, leftAt('0448', 'XNEW'))).status).toBe(200);
    expect(await raised('not in the territory')).toMatchObject([{ drum: '0448', place: 'XNEW' }]);
  });

  it('is raised until the name is set up', async () => {
    const ofDrum = async () => (await raised('not in the territory')).filter(({ drum }) => drum === '0446');
    await report(crew, drawn('0446', 'XESK', 30, { into: 'H8' }));
    expect(await ofDrum()).toHaveLength(1);
    const setUp = await server.as('set-up');
    const { body } = await setUp.get<{ data: object }>('/api/helicopters/H1');
    expect((await setUp.make('/api/helicopters/H8', { ...body.data, id: 'H8' })).status).toBe(200);
    expect(await ofDrum()).toEqual([]);
  });
});

describe('a batch that nobody has set up', () => {
  it('filled into a drum is raised, and gone once the filling is taken back', async () => {
    const id = randomUUID();
    expect((await report(store, filledByRadio('0911', { batch: 'J72-041' }), id)).status).toBe(200);
    expect(await raised('unknown batch')).toMatchObject([
      { drum: '0911', whatNext: expect.stringContaining('Do not use the drum before.') },
    ]);
    await report(store, {
      kind: 'corrected',
      ...written('2027-06-14T06:09Z', 'radio'),
      corrects: id,
      reason: 'J27-041 it was',
    });
    expect(await raised('unknown batch')).toEqual([]);
  });

  it('held by radio holds nothing, and the office is told so at once', async () => {
    const quality = await server.as('fuel quality');
    const hold = (of: object) =>
      report(quality, { kind: 'held', ...written('2027-06-14T06:05Z', 'radio'), of, reason: 'water' });
    expect((await hold({ batch: 'J72-999' })).status).toBe(200);
    expect(await raised('holds nothing')).toMatchObject([
      { drum: null, what: expect.stringContaining('J72-999, which no drum has: it holds nothing') },
    ]);
    await hold({ drum: '9999' });
    expect((await raised('holds nothing')).filter(({ drum }) => drum !== null)).toMatchObject([
      { drum: '9999', whatNext: expect.stringContaining('may still be in use') },
    ]);
  });
});

it('a hold that holds nothing comes before whatever came in since that can hurt nobody', async () => {
  await report(crew, drawn('0447', 'XGAN', 20));
  const { items } = (await dispatcher.get<Page<RaisedNow>>('/api/raised?limit=500')).body;
  const first = items.filter(({ mayHurt }) => mayHurt);
  expect(items.slice(0, first.length)).toEqual(first);
  expect(first.map(({ kind }) => kind)).toContain('holds nothing');
  expect(items.at(first.length)).toBeDefined();
});

describe('figures that no drum can have', () => {
  const figures = async (drum: string) =>
    (await raised('impossible figures')).filter((each) => each.drum === drum).map(({ what }) => what);

  it('by radio or phone are kept and raised: 0 kg, litres beyond the drum, no density of jet fuel', async () => {
    const weighed = {
      kind: 'weighed',
      ...written('2027-06-14T06:06Z', 'radio'),
      drum: '0449',
      place: 'XALD',
    };
    expect((await report(store, { ...weighed, grossKg: 0 })).status).toBe(200);
    expect(await figures('0449')).toEqual([expect.stringContaining('it weighs 0 kg')]);
    expect((await report(store, filledByRadio('0912', { millilitres: 240_000, grossKg: 211 }))).status).toBe(
      200,
    );
    expect(await figures('0912')).toEqual([expect.stringContaining('240 L in one drum, which holds 216 L')]);
    expect((await report(store, filledByRadio('0913', { grossKg: 219.7 }))).status).toBe(200);
    expect(await figures('0913')).toEqual([expect.stringContaining('have 1,000 kg/m3')]);
    expect((await report(crew, drawn('0450', 'XESK', 400))).status).toBe(200);
    expect(await figures('0450')).toEqual([expect.stringContaining('400 L in one drum')]);
  });

  it('of a fill that weighs other than its batch are raised', async () => {
    const unlike = async () => (await raised('unlike its batch')).map(({ drum }) => drum);
    const heavy = filledByRadio('0915', { temperatureC: 15, grossKg: 184.1 });
    expect((await report(store, heavy)).status).toBe(200);
    expect(await unlike()).toEqual(['0915']);
    expect((await report(store, filledByRadio('0916', { temperatureC: 15 }))).status).toBe(200);
    expect(await unlike()).toEqual(['0915']);
  });

  it('of the demo and of plain fillings raise nothing', async () => {
    expect((await report(store, filledByRadio('0914'))).status).toBe(200);
    expect(await figures('0914')).toEqual([]);
    expect(await raised('impossible figures', 'all')).toHaveLength(4);
  });
});

describe('a count that its own drums contradict', () => {
  it('is raised with its place until two people have closed its case', async () => {
    const count = randomUUID();
    const ofXcin = async (state: string) =>
      (await raised('impossible figures', state)).filter(({ place }) => place === 'XCIN');
    expect((await report(store, counted('XCIN', 2150), count)).status).toBe(200);
    expect(await ofXcin('open')).toMatchObject([
      {
        what: 'XCIN count by Demo storekeeper, on screen, cannot be so: it found 2,150 L, and 12 sealed drums hold 2,400 L.',
      },
    ]);
    const closing = { cause: 'spill', words: 'bung of 0552 found open' };
    const [first, second] = [await server.as('operations manager'), await server.as('fuel quality')];
    await first.put(`/api/cases/${count}/closing`, closing);
    expect(await ofXcin('open')).toHaveLength(1);
    expect((await second.put(`/api/cases/${count}/closing`, closing)).body).toMatchObject({
      state: 'in force',
    });
    expect(await ofXcin('all')).toEqual([]);
  });
});
