import { randomUUID } from 'node:crypto';
import type { MyDay } from '@drumline/contract';
import { makeLoadSheet } from '@drumline/loading';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { type FlightDesk, openFlightDesk } from '../../testing/flight-desk.js';

let desk: FlightDesk;
let day: MyDay;
beforeAll(async () => {
  desk = await openFlightDesk();
  await desk.give('F01');
  day = (await (await desk.crewOf('F01')).get<MyDay>('/api/my-day')).body;
});
afterAll(() => desk.server.close());

describe('the day of a crew, for its phone', () => {
  it('has its given flights only, each with the whole sheet, totals and code square included', () => {
    expect(day.flights.map(({ id }) => id)).toEqual(['F01']);
    const [flight] = day.flights;
    expect(flight).toMatchObject({ state: 'given', version: 1 });
    const { sheet } = flight!;
    expect(sheet!.square).toMatch(/^F\d+ V\d+ /);
    expect(sheet!.legs[0]!.totals.loadLb).toBeGreaterThan(1000);
    expect(sheet!.drums.map(({ number }) => number).sort()).toEqual([...flight!.stops[0]!.drums].sort());
  });

  it('has with each sheet what it is made from, so that a phone can make it again with another drum', () => {
    const [{ sheet, request }] = day.flights as [MyDay['flights'][number]];
    expect(makeLoadSheet(request!)).toEqual(sheet);
  });

  it('says who else has reported the same drum, and takes it back when they correct it', async () => {
    const [first, second] = [await desk.crewOf('F01'), desk.dispatcher];
    const drum = day.flights[0]!.stops[0]!.drums[0]!;
    const left = (by: string) => ({
      kind: 'left at',
      drum,
      place: day.flights[0]!.stops[0]!.place,
      flight: 'F01',
      leg: 1,
      condition: 'sound',
      foundMillilitres: null,
      happenedAt: '2027-06-14T06:00Z',
      writtenAt: '2027-06-14T06:00Z',
      means: 'radio',
      by,
    });
    const [mine, theirs] = [randomUUID(), randomUUID()];
    expect((await first.put(`/api/movements/${mine}`, { ...left('A. Pilot'), means: 'phone' })).status).toBe(
      200,
    );
    const same = async () => (await first.get<MyDay>('/api/my-day')).body.sameReports;
    expect(await same()).toEqual([]);
    expect((await second.put(`/api/movements/${theirs}`, left('H. Wing'))).status).toBe(200);
    expect(await same()).toEqual([{ movement: mine, by: 'H. Wing', writtenAt: '2027-06-14T06:00:00.000Z' }]);
    const { drum: _, place: _place, condition: _condition, ...written } = left('H. Wing');
    const { flight: _flight, leg: _leg, foundMillilitres: _found, ...rest } = written;
    const corrected = { ...rest, kind: 'corrected', corrects: theirs, reason: 'another drum' };
    expect((await second.put(`/api/movements/${randomUUID()}`, corrected)).status).toBe(200);
    expect(await same()).toEqual([]);
  });

  it('says the territory’s time and the server’s own, which in a demo are days apart', () => {
    expect(day.at.slice(0, 10)).toBe('2027-06-14');
    expect(Math.abs(Date.parse(day.serverAt) - Date.now())).toBeLessThan(60_000);
  });

  it('has every drum of the book with its place, so that a number read at a strip can be judged there', () => {
    expect(day.drums).toHaveLength(186);
    expect(day.drums.find(({ number }) => number === '0523')).toMatchObject({ place: 'XMER', held: null });
  });

  it('says of a held drum why', async () => {
    const { status } = await desk.manager.put('/api/movements/7d3bb0a6-0c2f-4a29-9a02-6d6f3c1d0f01', {
      kind: 'held',
      of: { drum: '0523' },
      reason: 'water in the sample',
      happenedAt: '2027-06-14T06:01Z',
      writtenAt: '2027-06-14T06:02Z',
      means: 'screen',
    });
    expect(status).toBe(200);
    const again = (await (await desk.crewOf('F01')).get<MyDay>('/api/my-day')).body;
    expect(again.drums.find(({ number }) => number === '0523')?.held).toBe('water in the sample');
  });

  it('of somebody who is no crew has no flights; a customer has no day', async () => {
    expect((await desk.dispatcher.get<MyDay>('/api/my-day')).body.flights).toEqual([]);
    expect((await (await desk.server.as('field leader')).get('/api/my-day')).status).toBe(403);
  });
});
