import { randomUUID } from 'node:crypto';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import {
  type FlightDesk,
  openFlightDesk,
  type Refusal,
  type ShownFlight,
} from '../../testing/flight-desk.js';
import type { Flight } from '../store/flight.table.js';

let desk: FlightDesk;
beforeAll(async () => {
  desk = await openFlightDesk();
  for (const id of ['F01', 'F02']) await desk.act(desk.dispatcher, id, 'approve');
});
afterAll(() => desk.server.close());

describe('amending', () => {
  it('says what breaks and changes nothing: a seventh drum is more than XLOR unloads in a day', async () => {
    const before = await desk.flight('F05');
    const { status, body } = await desk.act(desk.dispatcher, 'F05', 'amend', {
      stops: [{ place: 'XLOR', drums: 7 }],
    });
    expect(status).toBe(422);
    expect(body.faults.map(({ problem }) => problem).join(' ')).toMatch(/unload 6 a day/);
    expect(await desk.flight('F05')).toEqual(before);
    const checked = await desk.dispatcher.post<Refusal>('/api/flights/F05/amend/check', {
      stops: [{ place: 'XLOR', drums: 7 }],
    });
    expect(checked.body.faults.length).toBe(body.faults.length);
  });

  it('to fewer drums keeps the named ones, raises the version and keeps the old one', async () => {
    const before = await desk.flight('F05');
    const { body } = await desk.act(desk.dispatcher, 'F05', 'amend', {
      stops: [{ place: 'XLOR', drums: 4 }],
    });
    expect(body.version).toBe(before.version + 1);
    expect(body.loads.map(({ drum }) => drum)).toEqual(before.loads.slice(0, 4).map(({ drum }) => drum));
    expect(body.planned.drums).toBe(4);
    const { body: history } = await desk.manager.get<{ items: { act: string; data: ShownFlight }[] }>(
      '/api/flights/F05/history',
    );
    expect(history.items.map((past) => past.act)).toEqual(['offer', 'amend']);
    expect(history.items[0]?.data.loads).toHaveLength(6);
  });

  it('with nothing changed takes drums that were filled since, and keeps those it has', async () => {
    const all = await Promise.all(
      ['F06', 'F07', 'F08', 'F09', 'F10', 'F11', 'F13', 'F14'].map((id) => desk.flight(id)),
    );
    const before = all.find(({ loads }) => loads.some(({ drum }) => drum === null))!;
    const storekeeper = await desk.server.as('storekeeper');
    const at = '2027-06-14T05:30Z';
    const { status } = await storekeeper.put(`/api/movements/${randomUUID()}`, {
      kind: 'filled',
      happenedAt: at,
      writtenAt: at,
      means: 'screen',
      drum: '9601',
      place: before.fromPlace,
      batch: 'J27-041',
      millilitres: 200_000,
      tareKg: 19.7,
      grossKg: 180.5,
    });
    expect(status).toBe(200);
    const { body } = await desk.act(desk.dispatcher, before.id, 'amend', {});
    const numbers = (flight: ShownFlight) => flight.loads.flatMap(({ drum }) => drum ?? []);
    expect(numbers(body)).toEqual([...numbers(before), '9601']);
    expect([body.version, body.loads.length]).toEqual([before.version + 1, before.loads.length]);
  });

  it('sent again is answered like the first; another one on the same version is told who was first', async () => {
    const { revision } = await desk.flight('F12');
    const amend = (drums: number) =>
      desk.dispatcher.post<ShownFlight & Refusal>(
        '/api/flights/F12/amend',
        { stops: [{ place: 'XLOR', drums }] },
        { headers: { 'If-Match': `"${revision}"` } },
      );
    const first = await amend(3);
    expect([first.status, first.body.planned.drums]).toEqual([200, 3]);
    const again = await amend(3);
    expect([again.status, again.body.revision]).toEqual([200, first.body.revision]);
    const other = await amend(2);
    expect(other.status).toBe(412);
    expect(other.body.detail).toContain('Read it again');
    expect((await desk.flight('F12')).planned.drums).toBe(3);
  });

  it('to another off time is checked like the rest; where the aircraft is not back, the first free time is proposed', async () => {
    interface Check extends Refusal {
      readonly departs: string | null;
    }
    const board = await desk.dispatcher.get<{ items: ShownFlight[] }>('/api/flights?limit=100');
    const offered = board.body.items.filter(({ state }) => state === 'offered');
    const [one, other] = offered.flatMap((each) => {
      const beside = board.body.items.find(
        ({ id, aircraft, date }) => id !== each.id && aircraft === each.aircraft && date === each.date,
      );
      return beside === undefined ? [] : [each, beside];
    });
    const check = async (amendment: object) =>
      (await desk.dispatcher.post<Check>(`/api/flights/${one!.id}/amend/check`, amendment)).body;
    const problems = ({ faults }: Check) => faults.map(({ problem }) => problem).join(' ');
    expect(problems(await check({ departs: '03:00' }))).toContain('the first departure is at');
    const asBefore = await check({ departs: one!.departs });
    expect([asBefore.faults, asBefore.departs]).toEqual([[], one!.departs]);
    const taken = await check({ departs: other!.departs });
    expect(problems(taken)).toContain('would fly both at once');
    expect(taken.departs).toMatch(/^\d\d:\d\d$/);
    expect(taken.departs).not.toBe(other!.departs);
    expect((await check({ departs: taken.departs })).faults).toEqual([]);
  });

  it('refuses a drum that another flight carries, and names that flight', async () => {
    const [taken] = (await desk.flight('F01')).loads;
    const { status, body } = await desk.act(desk.dispatcher, 'F06', 'amend', {
      stops: [{ place: 'XGAN', drums: 4, numbers: [taken!.drum] }],
    });
    expect(status).toBe(422);
    expect(body.faults[0]?.problem).toBe('It is on F01 (approved).');
  });

  it('refuses an aircraft or a pilot that is not there, and a pilot who may not fly it', async () => {
    const unknown = await desk.act(desk.dispatcher, 'F06', 'amend', { aircraft: 'Z9', pilot: 'FW99' });
    expect(unknown.body.faults.map(({ path }) => path)).toEqual(['aircraft', 'pilot']);
    const unfit = await desk.act(desk.dispatcher, 'F06', 'amend', { pilot: 'FW2' });
    expect(unfit.status).toBe(422);
    expect(unfit.body.faults.map(({ problem }) => problem).join(' ')).toContain('FW2');
  });

  it('of the pilot is the dispatcher’s: the table gives the operations desk.manager a look at crews', async () => {
    expect((await desk.act(desk.manager, 'F06', 'amend', { pilot: null })).status).toBe(403);
  });
});

describe('letting go, holding, calling off', () => {
  it('lets several go in one named action, all or none', async () => {
    const [one, two] = [await desk.flight('F01'), await desk.flight('F02')];
    const letGo = (flights: readonly { id: string; revision: number }[]) =>
      desk.dispatcher.post<{ items: Flight[] }>('/api/flights/let-go', { flights, reason: 'strip is soft' });
    const stale = await letGo([
      { id: 'F01', revision: one.revision },
      { id: 'F02', revision: two.revision + 5 },
    ]);
    expect(stale.status).toBe(412);
    expect((await desk.flight('F01')).state).toBe('approved');
    const { status, body } = await letGo([
      { id: 'F01', revision: one.revision },
      { id: 'F02', revision: two.revision },
    ]);
    expect(status).toBe(200);
    expect(body.items.map(({ state }) => state)).toEqual(['offered', 'offered']);
    expect((await desk.flight('F01')).loads).toEqual([]);
  });

  it('approved again, it names drums again', async () => {
    const { body } = await desk.act(desk.dispatcher, 'F01', 'approve');
    expect(body.loads.map(({ drum }) => drum)).toEqual(['0523', '0524', '0525', '0526']);
  });

  it('gives a flight to its pilot, who reports it; flown, it is not called off', async () => {
    const given = await desk.act(desk.dispatcher, 'F01', 'give');
    expect(given.body).toMatchObject({ state: 'given', pilot: expect.any(String) });
    const pilot = await desk.server.as('pilot');
    const isOwn = given.body.pilot === 'FW1';
    expect((await desk.report(pilot, 'F01', 'refuse')).status).toBe(isOwn ? 200 : 403);
    expect((await desk.report(pilot, 'F01', 'take off')).status).toBe(200);
    const landed = await desk.report(desk.dispatcher, 'F01', 'land', { place: 'XMER' });
    expect(landed.body.flight).toMatchObject({ state: 'home' });
    const gone = await desk.act(desk.dispatcher, 'F01', 'call-off', { reason: 'too late for that' });
    expect(gone.status).toBe(409);
    expect((gone.body as unknown as Refusal).detail).toContain('F01 is home');
  });

  it('holds an offered flight in place, and a settled one not', async () => {
    const { revision } = await desk.flight('F03');
    const held = await desk.dispatcher.put<ShownFlight>(
      '/api/flights/F03/hold',
      {},
      { headers: { 'If-Match': `"${revision}"` } },
    );
    expect(held.body.heldInPlace).toBe(true);
    const id = randomUUID();
    await desk.manager.put(`/api/plans/${id}`, { endTarget: 'operator', seconds: 1 });
    const { body } = await desk.manager.get<{ flights: { id: string; state: string }[] }>(
      `/api/plans/${id}/scenario`,
    );
    expect(body.flights.find((each) => each.id === 'F03')?.state).toBe('approved');
    expect(body.flights.find((each) => each.id === 'F04')?.state).toBe('offered');
  });
});
