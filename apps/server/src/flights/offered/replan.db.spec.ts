import { randomUUID } from 'node:crypto';
import type { PlanDifferencesAnswer } from '@drumline/contract';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { PlanAcceptance } from '../../plans/plan-run.table.js';
import { type FlightDesk, openFlightDesk, type Refusal } from '../../testing/flight-desk.js';
import { solvedRun } from '../../testing/hand-plan.js';
import { BoardService } from '../board/board.service.js';
import { RecheckFlightsService } from '../marks/recheck-flights.service.js';
import type { Flight } from '../store/flight.table.js';

let desk: FlightDesk;
beforeAll(async () => {
  desk = await openFlightDesk();
  // F01 has been flown this morning, F03 is held in place.
  for (const path of ['approve', 'give']) await desk.act(desk.dispatcher, 'F01', path);
  await desk.report(desk.dispatcher, 'F01', 'take off');
  await desk.report(desk.dispatcher, 'F01', 'land', { place: 'XMER' });
  const { revision } = await desk.flight('F03');
  await desk.dispatcher.put('/api/flights/F03/hold', {}, { headers: { 'If-Match': `"${revision}"` } });
});
afterAll(() => desk.server.close());

/** The differences and the acceptance of a plan tell one story: what is the same keeps its number, and none is told twice. */
const saysWhatWasDone = async (plan: string, { flights, calledOff }: PlanAcceptance) => {
  const { body } = await desk.manager.get<PlanDifferencesAnswer>(`/api/plans/${plan}/differences`);
  const { removed, added, same, moved, drumsChanged } = body;
  const numbers = new Map(flights.map(({ planned, flight }) => [planned, flight]));
  expect(same.length).toBeGreaterThan(0);
  for (const { before, after } of same) expect(numbers.get(after.id) ?? after.id).toBe(before.id);
  const told = [...[...same, ...moved, ...drumsChanged].map(({ before }) => before), ...removed, ...added];
  expect(new Set(told.map(({ id }) => id)).size).toBe(told.length);
  expect(removed.map(({ id }) => id)).toEqual(expect.arrayContaining([...calledOff]));
};

describe('a re-plan', () => {
  it('leaves approved flights byte for byte, and calls off what was offered and is not in it', async () => {
    await desk.act(desk.dispatcher, 'F04', 'approve');
    const rowOf = (id: string) => desk.server.database.query('select * from flights where id = $1', [id]);
    const [approved, flown, held] = await Promise.all([rowOf('F04'), rowOf('F01'), rowOf('F03')]);
    const again = await solvedRun(desk.server, (plan) => ({
      ...plan,
      flights: plan.flights.filter(({ id }) => !['F01', 'F03', 'F04', 'F10'].includes(id)),
    }));
    const { status, body } = await desk.manager.post<PlanAcceptance>(`/api/plans/${again}/accept`, {});
    expect(status).toBe(200);
    expect(body.calledOff).toEqual(['F10']);
    await saysWhatWasDone(again, body);
    expect(flown).toMatchObject([{ state: 'home' }]);
    expect(held).toMatchObject([{ state: 'offered', held_in_place: true }]);
    expect(await Promise.all([rowOf('F04'), rowOf('F01'), rowOf('F03')])).toEqual([approved, flown, held]);
    expect((await desk.flight('F10')).reason).toContain('takes its place');
  });

  it('keeps an amendment that was made while it was looked for', async () => {
    const again = await solvedRun(desk.server, (plan) => ({
      ...plan,
      flights: plan.flights.filter(({ id }) => !['F01', 'F03', 'F04'].includes(id)),
    }));
    const amended = await desk.act(desk.dispatcher, 'F09', 'amend', { stops: [{ place: 'XISK', drums: 2 }] });
    expect(amended.status).toBe(200);
    const { status, body } = await desk.manager.post<PlanAcceptance>(`/api/plans/${again}/accept`, {});
    expect(status).toBe(200);
    expect(body.changed).toContain('flight, changed: F09.');
    expect((await desk.flight('F09')).stops).toEqual([{ place: 'XISK', drums: 2 }]);
  });

  it('leaves drums on a booked flight that were put on it while it was looked for', async () => {
    const again = await solvedRun(desk.server, (plan) => ({
      ...plan,
      flights: plan.flights.filter(({ id }) => !['F01', 'F03', 'F04', 'X3'].includes(id)),
    }));
    const put = await desk.dispatcher.post('/api/booked-flights/X3/drums', { place: 'XHAS', drums: 1 });
    expect(put.status).toBe(200);
    const { status, body } = await desk.manager.post<PlanAcceptance>(`/api/plans/${again}/accept`, {});
    expect([status, body.calledOff]).toEqual([200, []]);
    expect(body.changed).toContain('flight, new: X3.');
    expect(await desk.flight('X3')).toMatchObject({
      state: 'offered',
      lastAct: 'add drums',
      stops: [{ place: 'XHAS', drums: 1 }],
    });
  });
});

describe('a flight of today that has landed', () => {
  it('counts once: its drums are back at the base on the morning of the day, whatever the ledger says by now', async () => {
    const { loads, stops } = await desk.flight('F01');
    const [{ drum } = { drum: null }] = loads;
    const now = '2027-06-14T06:01Z';
    const report = {
      kind: 'left at',
      drum,
      place: stops[0]!.place,
      flight: 'F01',
      leg: 1,
      condition: 'sound',
      foundMillilitres: null,
      happenedAt: now,
      writtenAt: now,
      means: 'radio',
      witnesses: [],
    };
    const sent = await desk.dispatcher.put(`/api/movements/${randomUUID()}`, report);
    expect(sent).toMatchObject({ status: expect.toSatisfy((status: number) => status < 300) });
    const { scenario } = await desk.server.app.get(BoardService).read();
    expect(scenario.drums.find(({ number }) => number === drum)?.place).toBe('XMER');
  });
});

describe('facts that change', () => {
  it('a closed strip: the plan is refused with what breaks and what changed since; its flights need a decision', async () => {
    const again = await solvedRun(desk.server, (plan) => ({
      ...plan,
      flights: plan.flights.filter(({ id }) => !['F01', 'F03', 'F04'].includes(id)),
    }));
    const report = {
      place: 'XLOR',
      state: 'closed',
      at: '2027-06-14T06:00Z',
      untilDate: '2027-06-20',
      by: 'strip helper',
    };
    expect((await desk.dispatcher.put(`/api/surface-reports/${randomUUID()}`, report)).status).toBe(200);
    const { status, body } = await desk.manager.post<Refusal>(`/api/plans/${again}/accept`, {});
    expect(status).toBe(422);
    expect(body.detail).toContain('surface report, new: XLOR closed');
    expect(body.faults.map(({ problem }) => problem)).toContain('XLOR is reported closed.');

    expect((await desk.flight('F05')).needsDecision).toContain('XLOR is reported closed.');
    expect((await desk.act(desk.dispatcher, 'F05', 'approve')).status).toBe(422);
    const list = await desk.manager.get<{ items: Flight[] }>('/api/flights?needsDecision=true');
    expect(list.body.items.map(({ id }) => id)).toEqual(expect.arrayContaining(['F02', 'F05', 'F08']));
    // The report has marked them: the round that looks for what else has broken finds nothing new.
    expect(await desk.server.app.get(RecheckFlightsService).recheck()).toEqual([]);
  });

  it('everything that was done is in the audit, with the person', async () => {
    const { body } = await desk.manager.get<{ items: { did: string; subject: string; person: string }[] }>(
      '/api/audit?limit=500',
    );
    expect(body.items).toContainEqual(
      expect.objectContaining({ did: 'approved', subject: 'flight F04', person: 'dispatcher' }),
    );
    expect(body.items).toContainEqual(
      expect.objectContaining({ did: 'accepted', subject: `plan ${desk.planId}` }),
    );
  });
});
