import { randomUUID } from 'node:crypto';
import { describeFlights } from '@drumline/planning';
import type { Raised } from '@drumline/stock';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { leftAt, written } from '../../stock/testing/movement-bodies.js';
import type { Client } from '../../testing/client.js';
import {
  type FlightDesk,
  openFlightDesk,
  type Refusal,
  type ShownFlight,
} from '../../testing/flight-desk.js';
import { BoardService } from './board.service.js';

let desk: FlightDesk;
let drums: readonly string[];
beforeAll(async () => {
  desk = await openFlightDesk();
  // F06 to XGAN, day 2: four drums, as in the second moment of truth.
  drums = await loadAndFly('F06', 'XGAN');
});
afterAll(() => desk.server.close());

const loadAndFly = async (id: string, place: string): Promise<readonly string[]> => {
  const flight = await desk.give(id);
  const at = '2027-06-14T05:59Z';
  await desk.dispatcher.put(`/api/surface-reports/${randomUUID()}`, {
    place,
    state: 'dry',
    at,
    by: 'crew of A1',
  });
  const named = flight.loads.flatMap(({ drum }) => drum ?? []);
  await desk.report(desk.dispatcher, id, 'load', {
    version: flight.version,
    totals: {
      load: { bySheetLb: 1585, byHandLb: 1585 },
      takeOff: { bySheetLb: 6500, byAircraftLb: 6500 },
    },
    drums: named.map((drum) => ({ movement: randomUUID(), drum, to: place })),
  });
  await desk.report(desk.dispatcher, id, 'take off', { happenedAt: '2027-06-14T06:02Z' });
  return named;
};
const send = (body: object, who: Client = desk.dispatcher) =>
  who.put(`/api/movements/${randomUUID()}`, { ...body, means: 'radio' });
const left = (flight: string, drum: string, place: string) => send(leftAt(drum, place, { flight }));
const home = (flight: string, drum: string, condition: string) =>
  send({ ...leftAt(drum, 'XMER', { flight, condition, leg: 2 }), kind: 'brought home' });
const raised = async (flight: string, state = 'open'): Promise<readonly Raised[]> => {
  const { body } = await desk.manager.get<{ items: Raised[] }>(`/api/raised?limit=500&state=${state}`);
  return body.items.filter((each) => each.flight === flight && each.kind === 'delivery not as planned');
};
const closing = { blockHours: 1.9, flightCost: 190_000, fuelCost: 196_000, handlingCost: 3_600 };
const close = (who: Client, id: string, rest: object = {}) =>
  desk.act(who, id, 'close', { ...closing, ...rest });

describe('every drum accounted for', () => {
  it('is not said of a flight that is away', async () => {
    const { status, body } = await desk.report(desk.dispatcher, 'F06', 'report');
    expect([status, body.detail]).toEqual([
      409,
      'F06 is away: to report, a flight has to be home, turned back or ended elsewhere.',
    ]);
  });

  it('nor with one still aboard, which is named', async () => {
    expect(drums).toHaveLength(4);
    for (const drum of drums.slice(0, 3)) await left('F06', drum, 'XGAN');
    await desk.report(desk.dispatcher, 'F06', 'land', { place: 'XMER', happenedAt: '2027-06-14T06:09Z' });
    const { status, body } = await desk.report(desk.dispatcher, 'F06', 'report');
    expect([status, body.faults.map(({ path, problem }) => [path, problem])]).toEqual([
      422,
      [['drums', `Drum ${drums[3]} is still aboard: say where it was left, or that it came home.`]],
    ]);
    expect((await desk.flight('F06')).state).toBe('home');
  });

  it('three left and one brought home with a broken seal, held: reported', async () => {
    await home('F06', drums[3]!, 'seal broken');
    const { status, body } = await desk.report(desk.dispatcher, 'F06', 'report');
    expect([status, body.flight.state]).toEqual([200, 'reported']);
    const { body: drum } = await desk.manager.get<{ held: object; where: object }>(`/api/drums/${drums[3]}`);
    expect(drum).toMatchObject({ where: { kind: 'at', place: 'XMER' }, held: { reason: 'seal broken' } });
    const again = await desk.report(desk.dispatcher, 'F06', 'report');
    expect([again.status, again.body.report.raised]).toEqual([200, []]);
  });

  it('a landing that was corrected away does not count', async () => {
    const named = await loadAndFly('F01', 'XKNA');
    for (const drum of named.slice(1)) await left('F01', drum, 'XKNA');
    const wrong = randomUUID();
    await desk.dispatcher.put(`/api/movements/${wrong}`, {
      ...leftAt(named[0]!, 'XKNA', { flight: 'F01' }),
      means: 'radio',
    });
    await desk.report(desk.dispatcher, 'F01', 'land', { place: 'XMER', happenedAt: '2027-06-14T06:09Z' });
    await send({ kind: 'corrected', ...written(), corrects: wrong, reason: 'another drum' });
    const { body } = await desk.report(desk.dispatcher, 'F01', 'report');
    expect(body.faults?.map(({ problem }) => problem)).toEqual([
      `Drum ${named[0]} is still aboard: say where it was left, or that it came home.`,
    ]);
  });

  it('one that was planned and that no report names is missing too: nobody reported the loading', async () => {
    const flight = await desk.give('F04');
    await desk.report(desk.dispatcher, 'F04', 'land', { place: 'XALD' });
    const { body } = await desk.report(desk.dispatcher, 'F04', 'report');
    expect(body.faults.map(({ problem }) => problem)).toEqual(
      flight.loads.map(
        ({ drum }) => `Drum ${drum} is on the load and no report names it: loaded, left or home?`,
      ),
    );
  });
});

describe('what was left against the plan', () => {
  it('three of four at XGAN is one thing to look at', async () => {
    expect((await raised('F06')).map(({ what }) => what)).toEqual(['F06: XGAN: 3 drums left, 4 planned.']);
  });

  it('drums at a place of no plan: the stock is right, and the dispatcher has one thing to look at', async () => {
    const named = await loadAndFly('F02', 'XLOR');
    const before = await bookAt('XCIN');
    await left('F02', named[0]!, 'XCIN');
    await left('F02', named[1]!, 'XCIN');
    await left('F02', named[2]!, 'XLOR');
    expect(await bookAt('XCIN')).toBe(before + 400);
    expect(await raised('F02')).toEqual([
      expect.objectContaining({
        id: 'delivery not as planned | F02',
        what: `F02: 2 drums left at XCIN, which is not on its plan: ${named[0]} and ${named[1]}.`,
      }),
    ]);
  });

  it('looked at, it is open again when it reads otherwise', async () => {
    const [one] = await raised('F02');
    const seen = { raised: one!.id, act: 'seen', words: 'strip was fogged in' };
    expect((await desk.dispatcher.put(`/api/raised-acts/${randomUUID()}`, seen)).status).toBe(200);
    expect(await raised('F02')).toEqual([]);
    await desk.report(desk.dispatcher, 'F02', 'land', { place: 'XMER', happenedAt: '2027-06-14T06:09Z' });
    expect((await raised('F02'))[0]?.what).toContain('XLOR: 1 drum left, 5 planned.');
  });
});

describe('the picture that a re-plan starts from', () => {
  const stops = async (id: string) => {
    const { scenario } = await desk.server.app.get(BoardService).read();
    // The planner can read it, flights that left nothing included.
    expect(describeFlights(scenario, scenario.flights, 'operator').flights.length).toBeGreaterThan(0);
    return scenario.flights.find((flight) => flight.id === id)?.stops;
  };
  const kna = async () => {
    const { scenario } = await desk.server.app.get(BoardService).read();
    const { caches } = describeFlights(scenario, scenario.flights, 'operator');
    return caches.find(({ place }) => place === 'XKNA')!.landed[1];
  };

  it('has what flights of today have left, not what they were to leave', async () => {
    expect(await stops('F01')).toEqual([{ place: 'XKNA', drums: 4 }]);
    expect(await kna()).toBe(800);
    const [aboard] = (await desk.flight('F01')).loads.flatMap(({ drum }) => drum ?? []);
    await home('F01', aboard!, 'sound');
    expect(await stops('F01')).toEqual([{ place: 'XKNA', drums: 3 }]);
    expect(await kna()).toBe(600);
    expect(await stops('F02')).toEqual([{ place: 'XLOR', drums: 3 }]);
  });

  it('has nothing landed by a flight that turned back, and its drums again once they are home', async () => {
    const named = await loadAndFly('F03', 'XESK');
    await desk.report(desk.dispatcher, 'F03', 'turn back', {
      place: 'XMER',
      happenedAt: '2027-06-14T06:09Z',
    });
    expect(await stops('F03')).toEqual([{ place: 'XESK', drums: 0 }]);
    for (const drum of named) await home('F03', drum, 'sound');
    const { scenario } = await desk.server.app.get(BoardService).read();
    const atMer = scenario.drums.filter(({ place }) => place === 'XMER').map(({ number }) => number);
    expect(atMer).toEqual(expect.arrayContaining([...named]));
    expect((await desk.report(desk.dispatcher, 'F03', 'report')).body.flight.state).toBe('reported');
  });
});

describe('closing', () => {
  it('takes hours and costs, by accounts or the operations manager', async () => {
    const accounts = await desk.server.as('accounts');
    expect((await close(desk.dispatcher, 'F06')).status).toBe(403);
    expect((await close(await desk.server.as('pilot'), 'F06')).status).toBe(403);
    expect((await close(accounts, 'F06', { blockHours: undefined })).status).toBe(422);
    const early = await close(accounts, 'F01');
    expect([early.status, early.body.detail]).toEqual([
      409,
      'F01 is home: to close, a flight has to be reported.',
    ]);
    const { status, body } = await close(accounts, 'F06');
    expect([status, body.state, body.closing]).toEqual([200, 'closed', closing]);
  });

  it('asks for the version that was read, and sent twice closes once', async () => {
    const accounts = await desk.server.as('accounts');
    expect((await accounts.post<Refusal>('/api/flights/F06/close', closing)).status).toBe(428);
    const { revision } = await desk.flight('F06');
    const headers = { 'If-Match': `"${revision - 1}"` };
    const again = await accounts.post<ShownFlight>('/api/flights/F06/close', closing, { headers });
    expect([again.status, again.body.revision]).toEqual([200, revision]);
  });

  it('leaves nothing of it to be looked at', async () => {
    expect(await raised('F06', 'all')).toEqual([]);
  });
});

const bookAt = async (place: string): Promise<number> =>
  (await desk.manager.get<{ bookLitres: number }>(`/api/stock/${place}`)).body.bookLitres;
