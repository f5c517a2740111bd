import { randomUUID } from 'node:crypto';
import type { Raised } from '@drumline/stock';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { Client } from '../../testing/client.js';
import { type FlightDesk, openFlightDesk, type Refusal, reportBody } from '../../testing/flight-desk.js';
import type { AwayFlight } from '../away/away-flights.service.js';
import type { Flight, FlightPast } from '../store/flight.table.js';
import type { FlightReport } from '../store/flight-report.table.js';
import type { ReportAnswer } from './flight-reports.service.js';

let desk: FlightDesk;
beforeAll(async () => {
  desk = await openFlightDesk();
  for (const id of ['F01', 'F02', 'F03', 'F04']) await desk.give(id);
});
afterAll(() => desk.server.close());

const put = (who: Client, id: string, body: object) =>
  who.put<ReportAnswer & Refusal>(`/api/flight-reports/${id}`, body);
const phone = { means: 'phone' };
const reportsOf = async (flight: string) =>
  (await desk.manager.get<{ items: FlightReport[] }>(`/api/flight-reports?flight=${flight}`)).body.items;
const away = async (who: Client = desk.dispatcher) =>
  (await who.get<{ items: AwayFlight[] }>('/api/flights/away')).body.items;

describe('a report from a phone', () => {
  it('asks for no version: it was written hours before it is sent', async () => {
    const crew = await desk.crewOf('F01');
    const { status, body } = await desk.report(crew, 'F01', 'take off', {
      ...phone,
      happenedAt: '2027-06-14T05:10Z',
      writtenAt: '2027-06-14T05:20Z',
    });
    expect([status, body.flight.state, body.flight.offAt]).toEqual([200, 'away', '2027-06-14T05:10:00.000Z']);
    expect(body.report).toMatchObject({ raised: ['F01: it took off before its totals were agreed.'] });
    expect(body.report.data).toMatchObject({ means: 'phone', writtenAt: '2027-06-14T05:20Z' });
  });

  it('sent five times at once is one report, answered the same each time', async () => {
    const crew = await desk.crewOf('F02');
    const id = randomUUID();
    const answers = await Promise.all(
      [1, 2, 3, 4, 5].map(() => put(crew, id, reportBody('F02', 'take off', phone))),
    );
    expect(answers.map(({ status }) => status)).toEqual([200, 200, 200, 200, 200]);
    for (const { body } of answers) expect(body).toEqual(answers[0]!.body);
    expect(await reportsOf('F02')).toHaveLength(1);
  });

  it('with the id of another report is refused', async () => {
    const [known] = await reportsOf('F02');
    const other = reportBody('F02', 'take off', { ...phone, happenedAt: '2027-06-14T05:59Z' });
    expect((await put(await desk.crewOf('F02'), known!.id, other)).status).toBe(409);
  });

  it('of a flight that is not there is refused, and so is one by nobody, or by a customer', async () => {
    expect((await desk.report(desk.dispatcher, 'F99', 'take off')).status).toBe(404);
    expect((await desk.report(desk.server.stranger(), 'F01', 'land', { place: 'XMER' })).status).toBe(401);
    const leader = await desk.server.as('field leader');
    expect((await desk.report(leader, 'F01', 'land', { place: 'XMER' })).status).toBe(403);
  });
});

describe('the author of a report', () => {
  it('stays the author when the session is over and somebody else signs in on the phone', async () => {
    const id = randomUUID();
    const pilot = (await desk.flight('F02')).pilot!;
    const written = reportBody('F02', 'land', {
      ...phone,
      by: `Crew ${pilot}`,
      place: 'XMER',
      happenedAt: '2027-06-14T06:09Z',
    });
    const crew = await desk.crewOf('F02');
    await crew.post('/api/sign-out', undefined);
    expect((await put(crew, id, written)).status).toBe(401);
    const other = await desk.server.as('helicopter crew');
    const { status, body } = await put(other, id, written);
    expect([status, body.flight.state]).toEqual([200, 'home']);
    expect(body.report).toMatchObject({
      author: `Crew ${pilot}`,
      sentBy: 'Demo helicopter crew',
      raised: [],
    });
    const again = await put(await desk.crewOf('F02'), id, written);
    expect(again.body.report).toEqual(body.report);
    const history = await desk.manager.get<{ items: FlightPast[] }>('/api/flights/F02/history');
    expect(history.body.items.at(-1)).toMatchObject({ act: 'land', reason: `reported by Crew ${pilot}` });
  });

  it('who names nobody is whoever sends it first, also when another sends it again', async () => {
    const id = randomUUID();
    const written = reportBody('F03', 'take off', phone);
    const first = await put(await desk.crewOf('F03'), id, written);
    const again = await put(await desk.server.as('helicopter crew'), id, written);
    expect(again.body.report).toEqual(first.body.report);
    expect(again.body.report.author).toBe(`Crew ${(await desk.flight('F03')).pilot}`);
  });

  it('who is not its crew is kept and raised; to refuse a flight is its crew’s alone', async () => {
    const other = await desk.server.as('helicopter crew');
    const { status, body } = await desk.report(other, 'F04', 'take off', phone);
    expect([status, body.flight.state]).toEqual([200, 'away']);
    expect(body.report.raised.at(-1)).toContain('F04: Demo helicopter crew reports it and is not its crew;');
    expect((await desk.report(other, 'F04', 'refuse', phone)).status).toBe(403);
  });

  it('is the dispatcher by radio or from paper only', async () => {
    expect(
      (await desk.report(desk.dispatcher, 'F01', 'land', { place: 'XMER', means: 'screen' })).status,
    ).toBe(403);
  });
});

describe('a report out of its turn', () => {
  it('from a second phone says nothing new', async () => {
    const before = await desk.flight('F03');
    const { body } = await desk.report(desk.dispatcher, 'F03', 'take off', {
      happenedAt: '2027-06-14T06:04Z',
    });
    expect(body.report.raised).toEqual([]);
    expect(await desk.flight('F03')).toEqual(before);
  });

  it('that gives another time is kept, the first time stands, and somebody has to look', async () => {
    const { body } = await desk.report(desk.dispatcher, 'F03', 'take off', {
      happenedAt: '2027-06-14T05:30Z',
    });
    expect(body.report.raised).toEqual([
      'F03: "take off" is reported at Mon 14, 06:01 and at Mon 14, 05:30; the first stands.',
    ]);
    const raised = await desk.manager.get<{ items: Raised[] }>('/api/raised?limit=500');
    expect(raised.body.items).toContainEqual(
      // It is away, and when it is overdue is reckoned from its take-off.
      expect.objectContaining({ kind: 'load or problem', flight: 'F03', what: body.report.raised[0] }),
    );
  });

  it('a landing before its take-off: both are kept, and both times are there', async () => {
    await desk.give('F06');
    const landed = await desk.report(desk.dispatcher, 'F06', 'land', {
      place: 'XMER',
      happenedAt: '2027-06-14T06:08Z',
    });
    expect(landed.body.report.raised).toEqual(['F06: no take-off was reported.']);
    const off = await desk.report(desk.dispatcher, 'F06', 'take off', { happenedAt: '2027-06-14T05:00Z' });
    expect(off.body.report.raised).toEqual([
      'F06 is home: "take off" by Demo dispatcher came in after that.',
    ]);
    expect(off.body.flight).toMatchObject({
      state: 'home',
      offAt: '2027-06-14T05:00:00.000Z',
      landedAt: '2027-06-14T06:08:00.000Z',
    });
  });

  it('of a flight that base has called off meanwhile is kept and raised: somebody may be flying it', async () => {
    await desk.give('F07');
    await desk.act(desk.dispatcher, 'F07', 'call-off', { reason: 'cloud on the pass' });
    const { status, body } = await desk.report(desk.dispatcher, 'F07', 'take off');
    expect([status, body.flight.state]).toEqual([200, 'called off']);
    expect(body.report.raised).toEqual([
      'F07 is called off: "take off" by Demo dispatcher came in after that.',
    ]);
  });

  it('forty at once are all kept', async () => {
    await desk.give('F09');
    const sent = Array.from({ length: 40 }, () => desk.report(desk.dispatcher, 'F09', 'take off'));
    expect(new Set((await Promise.all(sent)).map(({ status }) => status))).toEqual(new Set([200]));
    expect(await reportsOf('F09')).toHaveLength(40);
  });
});

describe('a problem that a crew has', () => {
  it('moves nothing, and is there to be looked at', async () => {
    const before = await desk.flight('F04');
    const { status, body } = await desk.report(await desk.crewOf('F04'), 'F04', 'problem', {
      ...phone,
      what: 'cannot unload',
      words: 'drum jammed in R2L',
    });
    expect([status, body.flight.state, body.flight.revision]).toEqual([200, before.state, before.revision]);
    expect(body.report.raised).toEqual([
      `F04: Crew ${before.pilot} has a problem: cannot unload. "drum jammed in R2L"`,
    ]);
  });
});

describe('who may report what was flown', () => {
  const may: readonly (readonly [Parameters<FlightDesk['server']['as']>[0], number])[] = [
    ['operations manager', 403],
    ['dispatcher', 200],
    ['pilot', 200],
    ['helicopter crew', 200],
    ['storekeeper', 403],
    ['fuel quality', 403],
    ['accounts', 403],
    ['engineering', 403],
    ['set-up', 403],
    ['field leader', 403],
  ];
  it.each(may)('%s: %i', async (role, status) => {
    const who = await desk.server.as(role);
    for (const kind of ['take off', 'land', 'turn back', 'end elsewhere']) {
      const place = kind === 'take off' ? {} : { place: 'XMER' };
      expect([kind, (await desk.report(who, 'F11', kind, place)).status]).toEqual([kind, status]);
    }
    const reads = (await who.get('/api/flight-reports')).status;
    expect(reads).toBe(role === 'field leader' ? 403 : 200);
  });
});

describe('a report that is kept', () => {
  it('is never changed or taken away: the database refuses both', async () => {
    expect((await reportsOf('F09')).length).toBeGreaterThan(0);
    const denied = /permission denied/;
    const { database } = desk.server;
    await expect(database.query('delete from flight_reports')).rejects.toThrow(denied);
    await expect(database.query('update flight_reports set author = author')).rejects.toThrow(denied);
  });
});

describe('who is away', () => {
  it('is expected back its block time and turn-round after it was off, and then overdue', async () => {
    const [first] = (await away()).filter(({ flight }) => flight === 'F01');
    const { planned } = await desk.flight('F01'); // by an aeroplane of type A: 35 minutes on the ground
    const minutes = Math.ceil(planned.blockHours * 60 - 1e-6) + 35;
    const expected = new Date(Date.parse('2027-06-14T05:10Z') + minutes * 60_000);
    expect(first).toMatchObject({
      offAt: '2027-06-14T05:10:00.000Z',
      expectedBackAt: `${expected.toISOString().slice(0, 19)}Z`,
      overdueAt: `${new Date(expected.getTime() + 30 * 60_000).toISOString().slice(0, 19)}Z`,
    });
  });

  it('says in the circuit, overdue, or down and well', async () => {
    await desk.give('F10');
    await desk.report(desk.dispatcher, 'F10', 'take off', { happenedAt: '2027-06-14T01:00Z' });
    const words = new Map((await away()).map(({ flight, word }) => [flight, word]));
    expect(words.get('F10')).toBe('overdue');
    expect(words.get('F03')).toBe('in the circuit');
    expect(words.get('F02')).toBe('down and well');
  });

  it('shows a pilot the own flights only', async () => {
    const crew = await desk.crewOf('F02');
    const { pilot } = await desk.flight('F02');
    expect(new Set((await away(crew)).map((each) => each.pilot))).toEqual(new Set([pilot]));
    expect((await (await desk.server.as('field leader')).get('/api/flights/away')).status).toBe(403);
  });
});

describe('turned back, and ended elsewhere', () => {
  it('are states of their own, with the place where it came down', async () => {
    const back = await desk.report(desk.dispatcher, 'F09', 'turn back', { place: 'XMER' });
    expect(back.body.flight).toMatchObject({ state: 'turned back', landedAt: '2027-06-14T06:01:00.000Z' });
    const elsewhere = await desk.report(desk.dispatcher, 'F10', 'end elsewhere', { place: 'XCIN' });
    expect(elsewhere.body.flight.state).toBe('ended elsewhere');
    const list = await desk.manager.get<{ items: Flight[] }>('/api/flights?state=ended%20elsewhere');
    expect(list.body.items.map(({ id }) => id)).toEqual(['F10']);
  });
});
