import { randomUUID } from 'node:crypto';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { type FlightDesk, openFlightDesk } from '../testing/flight-desk.js';

let desk: FlightDesk;
beforeAll(async () => {
  desk = await openFlightDesk();
});
afterAll(() => desk.server.close());

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

  const landed = await report('land', { place: toPlace, happenedAt: '2027-06-14T06:02Z' });
  expect(landed.status).toBe(200);
  const home = { kind: 'at', place: toPlace };
  expect(await drumNow(drum)).toMatchObject({ where: home, held: { reason: 'seal broken' } });
  expect((await listed(`place=${toPlace}`)).map(({ number }) => number)).toContain(drum);
});

interface Shown {
  readonly number: string;
  readonly where: object;
}

const drumNow = async (number: string): Promise<Shown> =>
  (await desk.manager.get<Shown>(`/api/drums/${number}`)).body;

const listed = async (query: string): Promise<readonly Shown[]> =>
  (await desk.manager.get<{ items: readonly Shown[] }>(`/api/drums?limit=500&${query}`)).body.items;
