import { randomUUID } from 'node:crypto';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { type FlightDesk, openFlightDesk } from '../../testing/flight-desk.js';

let desk: FlightDesk;
beforeAll(async () => {
  desk = await openFlightDesk();
});
afterAll(() => desk.server.close());

it('a count at base finds what stands there: neither while the drum rides home nor after it is down is it a difference', async () => {
  const { toPlace, loads } = await desk.give('F01');
  const drum = loads[0]!.drum!;
  const moment = (clock: string) => ({
    happenedAt: `2027-06-14T${clock}Z`,
    writtenAt: `2027-06-14T${clock}Z`,
    means: 'radio',
    by: 'FW1',
  });
  const onFlight = (kind: string, rest: object) =>
    desk.dispatcher.put(`/api/movements/${randomUUID()}`, {
      ...{ kind, flight: 'F01', leg: 1, drum, place: toPlace, condition: 'sound', foundMillilitres: null },
      ...rest,
    });
  expect((await onFlight('loaded', { bound: 'out', ...moment('05:40') })).status).toBe(200);
  await desk.report(desk.dispatcher, 'F01', 'take off', moment('05:42'));
  expect((await onFlight('brought home', moment('05:50'))).status).toBe(200);
  const { bookLitres } = await base(toPlace);
  await desk.dispatcher.put(`/api/movements/${randomUUID()}`, {
    ...{ kind: 'counted', place: toPlace, method: 'dip', seenFrom: 'ground', ...moment('05:55') },
    ...{ millilitres: bookLitres * 1000, sealedDrums: 40, openDrums: 0, emptyDrums: 0 },
  });
  const seen = async () => {
    const { body } = await desk.manager.get<{ lastCount: object }>(`/api/stock/${toPlace}`);
    const { items } = (await desk.manager.get<{ items: readonly { place: string }[] }>('/api/cases')).body;
    return { lastCount: body.lastCount, cases: items.filter(({ place }) => place === toPlace) };
  };
  expect(await seen()).toMatchObject({ lastCount: { verdict: 'accepted' }, cases: [] });
  await desk.report(desk.dispatcher, 'F01', 'land', { ...moment('05:58'), place: toPlace });
  expect((await base(toPlace)).bookLitres).toBe(bookLitres + 200);
  expect(await seen()).toMatchObject({ lastCount: { verdict: 'accepted' }, cases: [] });
});

// product.md, T2: "1 drum aboard then home, held".
it('a drum brought back is aboard the flight until it is down, then home; held all the while', async () => {
  const { loads, version, toPlace } = await desk.give('F02');
  const drums = loads.map(({ drum, place }) => ({ movement: randomUUID(), drum, to: place }));
  const totals = {
    load: { bySheetLb: 2378, byHandLb: 2378 },
    takeOff: { bySheetLb: 8528, byAircraftLb: 8528 },
  };
  const report = (kind: string, rest: object = {}) =>
    desk.report(desk.dispatcher, 'F02', kind, { by: 'FW1', ...rest });
  await report('load', { version, totals, drums });
  await report('take off');
  const stood = await base(toPlace);
  const drum = drums[0]!.drum!;
  const back = await desk.dispatcher.put(`/api/movements/${randomUUID()}`, {
    ...{ kind: 'brought home', flight: 'F02', leg: 2, place: toPlace, drum, condition: 'seal broken' },
    ...{ foundMillilitres: null, happenedAt: '2027-06-14T06:02Z', writtenAt: '2027-06-14T06:02Z' },
    ...{ means: 'radio', by: 'FW1' },
  });
  expect(back.status).toBeLessThan(300);

  const away = { kind: 'aboard', flight: 'F02' };
  expect(await drumNow(drum)).toMatchObject({ where: away, held: { reason: 'seal broken' } });
  expect((await listed(`last=${drum}`)).find(({ number }) => number === drum)!.where).toMatchObject(away);
  expect((await listed(`place=${toPlace}`)).map(({ number }) => number)).not.toContain(drum);
  expect(await base(toPlace)).toEqual(stood);
  await expectEachCountedOnce(drums.map((each) => each.drum));

  const landed = await report('land', { place: toPlace, happenedAt: '2027-06-14T06:02Z' });
  expect(landed.status).toBe(200);
  const home = { kind: 'at', place: toPlace };
  expect(await drumNow(drum)).toMatchObject({ where: home, held: { reason: 'seal broken' } });
  expect((await listed(`place=${toPlace}`)).map(({ number }) => number)).toContain(drum);
  const { bookLitres, drums: standing } = await base(toPlace);
  expect([bookLitres, standing]).toEqual([stood.bookLitres + 200, [...stood.drums, drum].sort()]);
});

it('written in the minute in which it was loaded, it is home and not aboard: loaded comes before brought home', async () => {
  const drum = (await listed('place=XMER')).at(-1)!.number;
  const send = (id: string, body: object) =>
    desk.dispatcher.put(`/api/movements/${id}`, {
      ...{ flight: 'F09', leg: 1, drum, condition: 'sound', foundMillilitres: null, place: 'XMER' },
      ...{ happenedAt: '2027-06-14T06:02Z', writtenAt: '2027-06-14T06:02Z', means: 'paper', by: 'FW1' },
      ...body,
    });
  const [first, second] = [randomUUID(), randomUUID()].sort();
  expect((await send(second!, { kind: 'loaded', bound: 'out' })).status).toBeLessThan(300);
  expect((await send(first!, { kind: 'brought home' })).status).toBeLessThan(300);
  const movements = await desk.server.database.query(
    'select kind from drum_steps join movements on movements.id = movement where drum_steps.drum = $1 order by step desc limit 2',
    [drum],
  );
  expect(movements).toEqual([{ kind: 'brought home' }, { kind: 'loaded' }]);
});

it('a number that no book has, told of at a place, is in no figure of the place, no empty, and one of all drums', async () => {
  const at = { happenedAt: '2027-06-14T05:00Z', writtenAt: '2027-06-14T05:00Z', means: 'radio' };
  const opened = { kind: 'opened', drum: '7777', place: 'XLOR', by: 'strip helper' };
  const answer = await desk.dispatcher.put(`/api/movements/${randomUUID()}`, { ...opened, ...at });
  expect(answer.status).toBe(200);
  await expectEachCountedOnce(['7777']);
  expect((await listed('view=empties')).map(({ number }) => number)).not.toContain('7777');
});

interface Shown {
  readonly number: string;
  readonly where: object;
}

const drumNow = async (number: string): Promise<Shown> =>
  (await desk.manager.get<Shown>(`/api/drums/${number}`)).body;

/** What base has by its book, as the pages and the map show it. */
const base = async (place: string) => {
  const { body } = await desk.manager.get<{
    readonly bookLitres: number;
    readonly drums: readonly { readonly number: string }[];
  }>(`/api/stock/${place}`);
  return { bookLitres: body.bookLitres, drums: body.drums.map(({ number }) => number).sort() };
};

/** What stands at places and what is at none are all the drums there are. */
const expectEachCountedOnce = async (aboard: readonly (string | null)[]) => {
  type Standing = {
    readonly items: readonly Record<'sealedDrums' | 'partUsedDrums' | 'emptyDrums', number>[];
  };
  const { items } = (await desk.manager.get<Standing>('/api/stock')).body;
  const standing = items.reduce(
    (sum, { sealedDrums, partUsedDrums, emptyDrums }) => sum + sealedDrums + partUsedDrums + emptyDrums,
    0,
  );
  const elsewhere = await listed('view=elsewhere');
  expect(elsewhere.map(({ number }) => number)).toEqual(expect.arrayContaining([...aboard]));
  expect(standing + elsewhere.length).toBe((await listed('')).length);
};

const listed = async (query: string): Promise<readonly Shown[]> =>
  (await desk.manager.get<{ items: readonly Shown[] }>(`/api/drums?limit=500&${query}`)).body.items;
