import { randomUUID } from 'node:crypto';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { PlanAcceptance } from '../plans/plan-run.table.js';
import type { Answer, Client } from '../testing/client.js';
import { createTestServer, type TestServer } from '../testing/create-test-server.js';
import { solvedRun } from '../testing/hand-plan.js';
import { BoardService } from './board.service.js';
import type { Consequence } from './consequence.js';
import type { Flight } from './flight.table.js';
import { RecheckFlightsService } from './recheck-flights.service.js';

type Shown = Flight & { readonly loads: readonly { readonly place: string; readonly drum: string | null }[] };
interface Refusal {
  readonly detail: string;
  readonly faults: readonly { readonly path: string; readonly problem: string }[];
}

let server: TestServer;
let manager: Client;
let dispatcher: Client;
let planId: string;

beforeAll(async () => {
  server = await createTestServer();
  manager = await server.as('operations manager');
  dispatcher = await server.as('dispatcher');
  planId = await solvedRun(server);
});
afterAll(() => server.close());

const flight = async (id: string): Promise<Shown> => (await manager.get<Shown>(`/api/flights/${id}`)).body;

/** The act from the revision as it is now. */
const act = async (
  who: Client,
  id: string,
  path: string,
  body: object = {},
): Promise<Answer<Shown & Refusal>> => {
  const { revision } = await flight(id);
  return who.post(`/api/flights/${id}/${path}`, body, { headers: { 'If-Match': `"${revision}"` } });
};

describe('accepting a plan', () => {
  it('is not for a pilot', async () => {
    const pilot = await server.as('pilot');
    expect((await pilot.post(`/api/plans/${planId}/accept`, {})).status).toBe(403);
  });

  it('offers the flights of the week, each with the oldest fit drums by number and the rest to be filled', async () => {
    const { status, body } = await dispatcher.post<PlanAcceptance>(`/api/plans/${planId}/accept`, {});
    expect(status).toBe(200);
    expect(body.flights.map(({ flight: id }) => id)).toEqual(expect.arrayContaining(['F01', 'F05', 'F14']));
    expect(body.changed).toEqual([]);
    const list = await manager.get<{ items: Flight[] }>('/api/flights?limit=500');
    expect(list.body.items.map(({ id }) => id)).not.toContain('F15');
    expect(new Set(list.body.items.map(({ state }) => state))).toEqual(new Set(['offered']));
    const all = await Promise.all(list.body.items.map(({ id }) => flight(id)));
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
    const before = await flight('F01');
    const again = await dispatcher.post<PlanAcceptance>(`/api/plans/${planId}/accept`, {});
    expect(again.status).toBe(200);
    expect(await flight('F01')).toEqual(before);
  });
});

describe('approving', () => {
  it('by two people at the same moment: one wins, the other is told who and when', async () => {
    const { revision } = await flight('F01');
    const approve = (who: Client) =>
      who.post<Refusal>('/api/flights/F01/approve', {}, { headers: { 'If-Match': `"${revision}"` } });
    const answers = await Promise.all([approve(manager), approve(dispatcher)]);
    expect(answers.map(({ status }) => status).sort()).toEqual([200, 412]);
    const { detail } = answers.find(({ status }) => status === 412)!.body;
    expect(detail).toMatch(
      /^(dispatcher|operations-manager) was first: approve at 2027-06-14T06:\d\dZ\. F01 is approved now\./,
    );
  });

  it('sent twice by one person because the answer got lost changes nothing', async () => {
    const { revision } = await flight('F02');
    const approve = () =>
      dispatcher.post<Shown>('/api/flights/F02/approve', {}, { headers: { 'If-Match': `"${revision}"` } });
    const answers = [await approve(), await approve()];
    expect(answers.map(({ status }) => status)).toEqual([200, 200]);
    expect(answers[0]?.body.revision).toBe(answers[1]?.body.revision);
  });

  it('asks which version was read', async () => {
    expect((await dispatcher.post('/api/flights/F03/approve', {})).status).toBe(428);
  });

  it('is for the office: a pilot sees the own flights only, a field leader none', async () => {
    const pilot = await server.as('pilot');
    expect((await act(pilot, 'F03', 'approve')).status).toBe(403);
    const own = await pilot.get<{ items: Flight[] }>('/api/flights?limit=500');
    expect(own.body.items.every(({ pilot: name }) => name === 'FW1')).toBe(true);
    const foreign = (await manager.get<{ items: Flight[] }>('/api/flights?limit=500')).body.items.find(
      ({ pilot: name }) => name !== 'FW1',
    )!;
    expect((await pilot.get(`/api/flights/${foreign.id}`)).status).toBe(403);
    const leader = await server.as('field leader');
    expect((await leader.get('/api/flights')).status).toBe(403);
    expect((await server.stranger().get('/api/flights')).status).toBe(401);
  });
});

describe('declining', () => {
  it('F05 states the first day of XLOR below minimum before it is done', async () => {
    const { body } = await dispatcher.get<Consequence>('/api/flights/F05/consequence');
    const lor = body.caches.find(({ place }) => place === 'XLOR');
    expect(lor?.withIt.belowMinimum).toBeNull();
    expect(lor?.without.belowMinimum).toMatch(/^2027-06-/);
    expect(body.ifDeclined).toContain('XLOR');
    expect((await flight('F05')).state).toBe('offered');
  });

  it('takes a reason, and hands the drums back', async () => {
    expect((await act(dispatcher, 'F14', 'decline')).status).toBe(422);
    const before = await flight('F14');
    const { status, body } = await act(dispatcher, 'F14', 'decline', { reason: 'no crew that day' });
    expect(status).toBe(200);
    expect(body).toMatchObject({ state: 'declined', reason: 'no crew that day', loads: [] });
    const [number] = before.loads.flatMap(({ drum }) => drum ?? []);
    if (number !== undefined)
      expect(await server.database.query('select * from flight_loads where drum = $1', [number])).toEqual([]);
  });
});

describe('amending', () => {
  it('says what breaks and changes nothing: a seventh drum is more than XLOR unloads in a day', async () => {
    const before = await flight('F05');
    const { status, body } = await act(dispatcher, 'F05', 'amend', { stops: [{ place: 'XLOR', drums: 7 }] });
    expect(status).toBe(422);
    expect(body.faults.map(({ problem }) => problem).join(' ')).toMatch(/unload 6 a day/);
    expect(await flight('F05')).toEqual(before);
    const checked = await dispatcher.post<Refusal>('/api/flights/F05/amend/check', {
      stops: [{ place: 'XLOR', drums: 7 }],
    });
    expect(checked.body.faults.length).toBe(body.faults.length);
  });

  it('to fewer drums keeps the named ones, raises the version and keeps the old one', async () => {
    const before = await flight('F05');
    const { body } = await act(dispatcher, 'F05', 'amend', { stops: [{ place: 'XLOR', drums: 4 }] });
    expect(body.version).toBe(before.version + 1);
    expect(body.loads.map(({ drum }) => drum)).toEqual(before.loads.slice(0, 4).map(({ drum }) => drum));
    expect(body.planned.drums).toBe(4);
    const { body: history } = await manager.get<{ items: { act: string; data: Shown }[] }>(
      '/api/flights/F05/history',
    );
    expect(history.items.map((past) => past.act)).toEqual(['offer', 'amend']);
    expect(history.items[0]?.data.loads).toHaveLength(6);
  });

  it('refuses a drum that another flight carries, and names that flight', async () => {
    const [taken] = (await flight('F01')).loads;
    const { status, body } = await act(dispatcher, 'F06', 'amend', {
      stops: [{ place: 'XGAN', drums: 4, numbers: [taken!.drum] }],
    });
    expect(status).toBe(422);
    expect(body.faults[0]?.problem).toBe('It is on F01 (approved).');
  });

  it('refuses an aircraft or a pilot that is not there, and a pilot who may not fly it', async () => {
    const unknown = await act(dispatcher, 'F06', 'amend', { aircraft: 'Z9', pilot: 'FW99' });
    expect(unknown.body.faults.map(({ path }) => path)).toEqual(['aircraft', 'pilot']);
    const unfit = await act(dispatcher, 'F06', 'amend', { pilot: 'FW2' });
    expect(unfit.status).toBe(422);
    expect(unfit.body.faults.map(({ problem }) => problem).join(' ')).toContain('FW2');
  });

  it('of the pilot is the dispatcher’s: the table gives the operations manager a look at crews', async () => {
    expect((await act(manager, 'F06', 'amend', { pilot: null })).status).toBe(403);
  });
});

describe('letting go, holding, calling off', () => {
  it('lets several go in one named action, all or none', async () => {
    const [one, two] = [await flight('F01'), await flight('F02')];
    const letGo = (flights: readonly { id: string; revision: number }[]) =>
      dispatcher.post<{ items: Flight[] }>('/api/flights/let-go', { flights, reason: 'strip is soft' });
    const stale = await letGo([
      { id: 'F01', revision: one.revision },
      { id: 'F02', revision: two.revision + 5 },
    ]);
    expect(stale.status).toBe(412);
    expect((await flight('F01')).state).toBe('approved');
    const { status, body } = await letGo([
      { id: 'F01', revision: one.revision },
      { id: 'F02', revision: two.revision },
    ]);
    expect(status).toBe(200);
    expect(body.items.map(({ state }) => state)).toEqual(['offered', 'offered']);
    expect((await flight('F01')).loads).toEqual([]);
  });

  it('approved again, it names drums again', async () => {
    const { body } = await act(dispatcher, 'F01', 'approve');
    expect(body.loads.map(({ drum }) => drum)).toEqual(['0523', '0524', '0525', '0526']);
  });

  it('gives a flight to its pilot, who alone reports it', async () => {
    const given = await act(dispatcher, 'F01', 'give');
    expect(given.body).toMatchObject({ state: 'given', pilot: expect.any(String) });
    const pilot = await server.as('pilot');
    const isOwn = given.body.pilot === 'FW1';
    expect((await act(pilot, 'F01', 'reports/take-off')).status).toBe(isOwn ? 200 : 403);
    const landed = await act(dispatcher, 'F01', 'reports/land');
    expect(landed.body).toMatchObject({ state: 'home' });
    const gone = await act(dispatcher, 'F01', 'call-off', { reason: 'too late for that' });
    expect(gone.status).toBe(409);
    expect((gone.body as unknown as Refusal).detail).toContain('F01 is home');
  });

  it('holds an offered flight in place, and a settled one not', async () => {
    const { revision } = await flight('F03');
    const held = await dispatcher.put<Shown>(
      '/api/flights/F03/hold',
      {},
      { headers: { 'If-Match': `"${revision}"` } },
    );
    expect(held.body.heldInPlace).toBe(true);
    const id = randomUUID();
    await manager.put(`/api/plans/${id}`, { endTarget: 'operator', seconds: 1 });
    const { body } = await manager.get<{ flights: { id: string; state: string }[] }>(
      `/api/plans/${id}/scenario`,
    );
    expect(body.flights.find((each) => each.id === 'F03')?.state).toBe('approved');
    expect(body.flights.find((each) => each.id === 'F04')?.state).toBe('offered');
  });
});

describe('a re-plan', () => {
  it('leaves approved flights byte for byte, and calls off what was offered and is not in it', async () => {
    await act(dispatcher, 'F04', 'approve');
    const rowOf = (id: string) => server.database.query('select * from flights where id = $1', [id]);
    const [approved, flown, held] = await Promise.all([rowOf('F04'), rowOf('F01'), rowOf('F03')]);
    const again = await solvedRun(server, (plan) => ({
      ...plan,
      flights: plan.flights.filter(({ id }) => !['F01', 'F03', 'F04', 'F10', 'F14'].includes(id)),
    }));
    const { status, body } = await manager.post<PlanAcceptance>(`/api/plans/${again}/accept`, {});
    expect(status).toBe(200);
    expect(body.calledOff).toEqual(['F10']);
    expect(await Promise.all([rowOf('F04'), rowOf('F01'), rowOf('F03')])).toEqual([approved, flown, held]);
    expect((await flight('F10')).reason).toContain('takes its place');
  });

  it('keeps an amendment that was made while it was looked for', async () => {
    const again = await solvedRun(server, (plan) => ({
      ...plan,
      flights: plan.flights.filter(({ id }) => !['F01', 'F03', 'F04', 'F14'].includes(id)),
    }));
    const amended = await act(dispatcher, 'F09', 'amend', { stops: [{ place: 'XISK', drums: 2 }] });
    expect(amended.status).toBe(200);
    const { status, body } = await manager.post<PlanAcceptance>(`/api/plans/${again}/accept`, {});
    expect(status).toBe(200);
    expect(body.changed).toContain('flight, changed: F09.');
    expect((await flight('F09')).stops).toEqual([{ place: 'XISK', drums: 2 }]);
  });
});

describe('a flight of today that has landed', () => {
  it('counts once: its drums are back at the base on the morning of the day, whatever the ledger says by now', async () => {
    const { loads, stops } = await flight('F01');
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
    const sent = await dispatcher.put(`/api/movements/${randomUUID()}`, report);
    expect(sent).toMatchObject({ status: expect.toSatisfy((status: number) => status < 300) });
    const { scenario } = await server.app.get(BoardService).read();
    expect(scenario.drums.find(({ number }) => number === drum)?.place).toBe('XMER');
  });
});

describe('facts that change', () => {
  it('a closed strip: the plan is refused with what breaks and what changed since; its flights need a decision', async () => {
    const again = await solvedRun(server, (plan) => ({
      ...plan,
      flights: plan.flights.filter(({ id }) => !['F01', 'F03', 'F04', 'F14'].includes(id)),
    }));
    const report = {
      place: 'XLOR',
      state: 'closed',
      at: '2027-06-14T06:00Z',
      untilDate: '2027-06-20',
      by: 'strip helper',
    };
    expect((await dispatcher.put(`/api/surface-reports/${randomUUID()}`, report)).status).toBe(200);
    const { status, body } = await manager.post<Refusal>(`/api/plans/${again}/accept`, {});
    expect(status).toBe(422);
    expect(body.detail).toContain('surface report, new: XLOR closed');
    expect(body.faults.map(({ problem }) => problem)).toContain('XLOR is reported closed.');

    const marked = await server.app.get(RecheckFlightsService).recheck();
    expect(marked).toEqual(expect.arrayContaining(['F02', 'F05', 'F08']));
    expect((await flight('F05')).needsDecision).toContain('XLOR is reported closed.');
    expect((await act(dispatcher, 'F05', 'approve')).status).toBe(422);
    const list = await manager.get<{ items: Flight[] }>('/api/flights?needsDecision=true');
    expect(list.body.items.map(({ id }) => id)).toEqual(expect.arrayContaining(marked as string[]));
  });

  it('everything that was done is in the audit, with the person', async () => {
    const { body } = await manager.get<{ items: { did: string; subject: string; person: string }[] }>(
      '/api/audit?limit=500',
    );
    expect(body.items).toContainEqual(
      expect.objectContaining({ did: 'let go', subject: 'flight F01', person: 'dispatcher' }),
    );
    expect(body.items).toContainEqual(
      expect.objectContaining({ did: 'accepted', subject: `plan ${planId}` }),
    );
  });
});
