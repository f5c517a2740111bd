import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { PlanAcceptance } from '../plans/plan-run.table.js';
import type { Client } from '../testing/client.js';
import { type FlightDesk, openFlightDesk, type Refusal, type ShownFlight } from '../testing/flight-desk.js';
import type { Consequence } from './office/consequence.js';
import type { Flight } from './store/flight.table.js';

let desk: FlightDesk;
beforeAll(async () => {
  desk = await openFlightDesk();
});
afterAll(() => desk.server.close());

describe('accepting a plan', () => {
  it('is not for a pilot', async () => {
    const pilot = await desk.server.as('pilot');
    expect((await pilot.post(`/api/plans/${desk.planId}/accept`, {})).status).toBe(403);
  });

  it('offers the flights of the week, each with the oldest fit drums by number and the rest to be filled', async () => {
    const { status, body } = await desk.dispatcher.post<PlanAcceptance>(
      `/api/plans/${desk.planId}/accept`,
      {},
    );
    expect(status).toBe(200);
    expect(body.flights.map(({ flight: id }) => id)).toEqual(expect.arrayContaining(['F01', 'F05', 'F14']));
    expect(body.changed).toEqual([]);
    const list = await desk.manager.get<{ items: Flight[] }>('/api/flights?limit=500');
    expect(list.body.items.map(({ id }) => id)).not.toContain('F15');
    expect(new Set(list.body.items.map(({ state }) => state))).toEqual(new Set(['offered']));
    const all = await Promise.all(list.body.items.map(({ id }) => desk.flight(id)));
    const fromMer = all
      .filter(({ fromPlace }) => fromPlace === 'XMER')
      .sort((one, other) => `${one.date} ${one.departs}`.localeCompare(`${other.date} ${other.departs}`));
    // XMER has 0523 to 0532 of J27-012 and 0569 to 0582 of J27-041: the earlier retest date goes to the earlier flights.
    const named = fromMer.flatMap(({ loads }) => loads.flatMap(({ drum }) => drum ?? []));
    expect(named).toEqual([...named].sort());
    expect(named.slice(0, 10)).toContain('0523');
    expect(named).toHaveLength(24);
    expect(fromMer.flatMap(({ loads }) => loads).filter(({ drum }) => drum === null).length).toBeGreaterThan(
      0,
    );
    const drums = all.flatMap(({ loads }) => loads.flatMap(({ drum }) => drum ?? []));
    expect(drums).toHaveLength(new Set(drums).size);
  });

  it('asked for again is the same acceptance', async () => {
    const before = await desk.flight('F01');
    const again = await desk.dispatcher.post<PlanAcceptance>(`/api/plans/${desk.planId}/accept`, {});
    expect(again.status).toBe(200);
    expect(await desk.flight('F01')).toEqual(before);
  });
});

describe('approving', () => {
  it('by two people at the same moment: one wins, the other is told who and when', async () => {
    const { revision } = await desk.flight('F01');
    const approve = (who: Client) =>
      who.post<Refusal>('/api/flights/F01/approve', {}, { headers: { 'If-Match': `"${revision}"` } });
    const answers = await Promise.all([approve(desk.manager), approve(desk.dispatcher)]);
    expect(answers.map(({ status }) => status).sort()).toEqual([200, 412]);
    const { detail } = answers.find(({ status }) => status === 412)!.body;
    expect(detail).toMatch(
      /^(Demo dispatcher|Demo operations manager) was first: approve at 2027-06-14T06:\d\dZ\. F01 is approved now\./,
    );
  });

  it('sent twice by one person because the answer got lost changes nothing', async () => {
    const { revision } = await desk.flight('F02');
    const approve = () =>
      desk.dispatcher.post<ShownFlight>(
        '/api/flights/F02/approve',
        {},
        { headers: { 'If-Match': `"${revision}"` } },
      );
    const answers = [await approve(), await approve()];
    expect(answers.map(({ status }) => status)).toEqual([200, 200]);
    expect(answers[0]?.body.revision).toBe(answers[1]?.body.revision);
  });

  it('asks which version was read', async () => {
    expect((await desk.dispatcher.post('/api/flights/F03/approve', {})).status).toBe(428);
  });

  it('is for the office: a pilot sees the own flights only, a field leader none', async () => {
    const pilot = await desk.server.as('pilot');
    expect((await desk.act(pilot, 'F03', 'approve')).status).toBe(403);
    const own = await pilot.get<{ items: Flight[] }>('/api/flights?limit=500');
    expect(own.body.items.every(({ pilot: name }) => name === 'FW1')).toBe(true);
    const foreign = (await desk.manager.get<{ items: Flight[] }>('/api/flights?limit=500')).body.items.find(
      ({ pilot: name }) => name !== 'FW1',
    )!;
    expect((await pilot.get(`/api/flights/${foreign.id}`)).status).toBe(403);
    const leader = await desk.server.as('field leader');
    expect((await leader.get('/api/flights')).status).toBe(403);
    expect((await desk.server.stranger().get('/api/flights')).status).toBe(401);
  });
});

describe('declining', () => {
  it('F05 states the first day of XLOR below minimum before it is done', async () => {
    const { body } = await desk.dispatcher.get<Consequence>('/api/flights/F05/consequence');
    const lor = body.caches.find(({ place }) => place === 'XLOR');
    expect(lor?.withIt.belowMinimum).toBeNull();
    expect(lor?.without.belowMinimum).toMatch(/^2027-06-/);
    expect(body.ifDeclined).toContain('XLOR');
    expect((await desk.flight('F05')).state).toBe('offered');
  });

  it('takes a reason, and hands the drums back', async () => {
    expect((await desk.act(desk.dispatcher, 'F14', 'decline')).status).toBe(422);
    const before = await desk.flight('F14');
    const { status, body } = await desk.act(desk.dispatcher, 'F14', 'decline', {
      reason: 'no crew that day',
    });
    expect(status).toBe(200);
    expect(body).toMatchObject({ state: 'declined', reason: 'no crew that day', loads: [] });
    const [number] = before.loads.flatMap(({ drum }) => drum ?? []);
    if (number !== undefined)
      expect(
        await desk.server.database.query('select * from flight_loads where drum = $1', [number]),
      ).toEqual([]);
  });
});
