import { randomUUID } from 'node:crypto';
import type {
  CacheAnswer,
  ProjectionAnswer,
  ProjectionChangeAnswer,
  ProjectionsAnswer,
} from '@drumline/contract';
import type { Scenario } from '@drumline/planning';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { counted, drawn, leftAt, loaded, written } from '../stock/testing/movement-bodies.js';
import { type FlightDesk, openFlightDesk } from '../testing/flight-desk.js';

let desk: FlightDesk;
beforeAll(async () => {
  desk = await openFlightDesk();
});
afterAll(() => desk.server.close());

const all = async (query = ''): Promise<ProjectionsAnswer> =>
  (await desk.manager.get<ProjectionsAnswer>(`/api/projections${query}`)).body;
const cacheAt = async (place: string): Promise<CacheAnswer> =>
  (await all()).items.find((each) => each.place === place)!;
const report = async (body: object): Promise<void> => {
  const storekeeper = await desk.server.as('helicopter crew');
  expect((await storekeeper.put(`/api/movements/${randomUUID()}`, body)).status).toBe(200);
};
const sealedAt = async (place: string): Promise<string> => {
  const { body } = await desk.manager.get<{ items: { number: string; content: string }[] }>(
    `/api/drums?place=${place}`,
  );
  return body.items.find(({ content }) => content === 'filled sealed')!.number;
};

describe('the caches on the first morning', () => {
  it('without deliveries fall below their minimum on the days that the demo gives', async () => {
    const { items, dates } = await all();
    const firstDay = (place: string) =>
      items.find((each) => each.place === place)?.projections.noDeliveries.belowMinimumDay;
    expect(['XLOR', 'XESK', 'XGAN', 'XISK', 'XFAL', 'XKNA', 'XMAR'].map(firstDay)).toEqual([
      2, 4, 6, 8, 9, 0, 3,
    ]);
    expect([dates[0], dates.length]).toEqual(['2027-06-14', 14]);
  });

  it('each has levels, stock, the age of its last count and how far it is to be trusted', async () => {
    const lor = await cacheAt('XLOR');
    expect(lor).toMatchObject({ place: 'XLOR', minimumLitres: 1200, capacityDrums: expect.any(Number) });
    expect(lor.stock).toMatchObject({ bookLitres: 2200, usableLitres: 2200, level: 'enough' });
    expect(lor.stock).toMatchObject({ lastCount: null, confidence: 'low', why: ['It was never counted.'] });
    expect(lor.projections.approved.usableLitres[0]).toBe(2200);
    const kna = await cacheAt('XKNA');
    expect(kna.stock.lastCount).toMatchObject({ countedLitres: 720, verdict: 'accepted' });
    expect(kna.stock.lastCount?.ageHours).toBeCloseTo(254, 0);
    expect(kna.stock).toMatchObject({
      confidence: 'medium',
      why: ['The last count is more than 7 days old.'],
    });
  });

  it('offered flights are told from approved ones', async () => {
    const before = await cacheAt('XLOR');
    const offered = before.deliveries.find(({ state }) => state === 'offered')!;
    expect(before.projections.approved).toEqual(before.projections.noDeliveries);
    expect(before.projections.offered.usableLitres.at(-1)).toBeGreaterThan(
      before.projections.approved.usableLitres.at(-1)!,
    );
    expect((await desk.act(desk.dispatcher, offered.flight, 'approve')).status).toBe(200);
    const after = await cacheAt('XLOR');
    const landed = after.deliveries.find(({ flight }) => flight === offered.flight)!;
    expect(landed).toMatchObject({ state: 'approved', drums: offered.drums, litres: offered.drums * 200 });
    expect(after.projections.approved.usableLitres.at(-1)).toBe(
      before.projections.approved.usableLitres.at(-1)! + landed.litres,
    );
    expect(after.projections.noDeliveries).toEqual(before.projections.noDeliveries);
  });

  it('a suggested minimum rises with the service level', async () => {
    const suggested = async (level: number) =>
      (await all(`?serviceLevel=${level}`)).items.find(({ place }) => place === 'XLOR')!.suggestedMinimum
        .litres;
    expect(await suggested(99)).toBeGreaterThan(await suggested(90));
    expect((await desk.manager.get('/api/projections?serviceLevel=80')).status).toBe(400);
  });

  it('one cache alone, and a place that is none', async () => {
    const { status, body } = await desk.manager.get<ProjectionAnswer>('/api/projections/XMAR');
    expect([status, body.place, body.dates.length]).toEqual([200, 'XMAR', 14]);
    expect((await desk.manager.get('/api/projections/XALD')).status).toBe(404);
  });

  it('are not open to a customer’s people', async () => {
    const leader = await desk.server.as('field leader');
    expect((await leader.get('/api/projections')).status).toBe(403);
  });
});

describe('a change of the programme, asked about before it is made', () => {
  interface Kept<Data> {
    readonly id: string;
    readonly data: Data;
  }
  const find = async <Data>(path: string, is: (data: Data) => boolean): Promise<Kept<Data>> => {
    const { body } = await desk.manager.get<{ items: Kept<Data>[] }>(path);
    return body.items.find(({ data }) => is(data))!;
  };
  const consequence = async (change: object) => {
    const answer = await desk.manager.post<ProjectionChangeAnswer>('/api/projections/consequence', change);
    expect(answer.status).toBe(200);
    return answer.body;
  };

  it('3 h more at MAR on day 3: 39 L are left that evening for 375 L, and nothing has been changed', async () => {
    const task = await find<Scenario['helicopterTasks'][number]>(
      '/api/helicopter-tasks',
      ({ place, date }) => place === 'XMAR' && date === '2027-06-16',
    );
    const { items, programmes, slingRemedies } = await consequence({
      kind: 'helicopter-tasks',
      id: task.id,
      data: { ...task.data, hours: 5, litres: 561 },
    });
    expect(items.map(({ place }) => place)).toEqual(['XMAR']);
    const { before, after } = items[0]!;
    expect([before.levels.usableLitres[3], after.levels.usableLitres[3]]).toEqual([375, 39]);
    expect([before.levels.belowMinimumDay, after.levels.belowCriticalDay]).toEqual([3, 3]);
    expect((await cacheAt('XMAR')).projections.offered.usableLitres[3]).toBe(375);
    const [p1] = programmes;
    expect([programmes.length, p1!.after.programme]).toEqual([1, 'P1']);
    expect([p1!.after.hours - p1!.before.hours, p1!.after.litres - p1!.before.litres]).toEqual([3, 336]);
    // At what the flights ahead deliver for to ESK, from where MAR is slung to, and 8 % on it.
    const flights = await Promise.all(['F03', 'F04', 'F07'].map((id) => desk.flight(id)));
    const drums = (flight: (typeof flights)[number]) =>
      flight.stops.reduce((sum, stop) => sum + stop.drums, 0);
    const inAll = flights.reduce((sum, flight) => sum + drums(flight), 0);
    const perLitre =
      flights.reduce((sum, flight) => sum + drums(flight) * flight.planned.cost.perLitre!, 0) / inAll;
    expect(p1!.after.recharge! - p1!.before.recharge!).toBeCloseTo(336 * perLitre * 1.08, -1);
    // On Wednesday H1 flies 5.0 h at MAR and 2.5 h at ESK already: the sling, 2 lifts of 15 NM, has to fly on Tuesday.
    expect(slingRemedies).toEqual([
      expect.objectContaining({
        ...{ place: 'XMAR', shortOn: '2027-06-16', shortLitres: 39, minimumLitres: 400, criticalLitres: 200 },
        notOn: [
          {
            date: '2027-06-16',
            why: 'H1 would fly 8.8 h, 7.0 h a day by demo operations manual, crew, revision 6',
          },
        ],
        move: expect.objectContaining({
          ...{ date: '2027-06-15', effect: 'removes' },
          fed: expect.objectContaining({
            before: { date: '2027-06-16', litres: 39 },
            after: { date: '2027-06-16', litres: 1239 },
          }),
        }),
      }),
    ]);
    const { source, work, hoursThen } = slingRemedies[0]!.move!;
    expect(source.after.litres).toBeGreaterThanOrEqual(1200);
    expect(source.before.litres - source.after.litres).toBe(1200);
    expect(work).toMatchObject({ lifts: 2, hours: expect.closeTo(1.33, 2) });
    expect(hoursThen).toBeCloseTo(3.5 + 1.33, 2);
  });

  it('the sling brought forward a day lifts MAR by six drums on day 3 and takes them from ESK', async () => {
    const sling = await find<Scenario['slings'][number]>('/api/slings', ({ to }) => to === 'XMAR');
    const { items } = await consequence({
      kind: 'slings',
      id: sling.id,
      data: { ...sling.data, date: '2027-06-16' },
    });
    const [esk, mar] = ['XESK', 'XMAR'].map((place) => items.find((each) => each.place === place)!);
    expect(mar!.after.levels.usableLitres[3]).toBe(375 + 1200);
    expect(esk!.after.levels.usableLitres[3]).toBe(esk!.before.levels.usableLitres[3]! - 1200);
  });

  it('a higher minimum is passed on an earlier day', async () => {
    const cache = await find<Scenario['caches'][number]>('/api/caches', ({ place }) => place === 'XMAR');
    const { items } = await consequence({
      kind: 'caches',
      id: 'XMAR',
      data: { ...cache.data, minimumLitres: 700 },
    });
    expect(
      items.map(({ place, after }) => [place, after.minimumLitres, after.levels.belowMinimumDay]),
    ).toEqual([['XMAR', 700, 0]]);
  });
});

describe('the sling that would come in time', () => {
  it('is proposed with the line of the programme that holds it, and moved by the act that there is', async () => {
    const { slingRemedies } = await all();
    const mar = slingRemedies.find(({ place }) => place === 'XMAR')!;
    expect(mar).toMatchObject({
      shortLitres: 375,
      move: { date: '2027-06-16', effect: 'removes' },
      kept: { data: { date: '2027-06-17', drums: 6 } },
    });
    const { id, version, data } = mar.kept!;
    const move = (who: typeof desk.manager, date: string, at: number) =>
      who.put(`/api/slings/${id}`, { ...data, date }, { headers: { 'If-Match': `"${at}"` } });
    const crew = await desk.server.as('helicopter crew');
    expect((await move(crew, mar.move!.date, version)).status).toBe(403);
    expect((await move(desk.dispatcher, mar.move!.date, version)).status).toBe(200);
    const after = await all();
    expect(after.slingRemedies.filter(({ place }) => place === 'XMAR')).toEqual([]);
    expect(after.items.find(({ place }) => place === 'XMAR')!.projections.offered.usableLitres[3]).toBe(1575);
    await move(desk.dispatcher, data.date, version + 1);
  });
});

describe('a planned sling', () => {
  const lastLevels = async () => {
    const [esk, mar] = [await cacheAt('XESK'), await cacheAt('XMAR')];
    return [esk, mar].map(({ projections }) => projections.noDeliveries.usableLitres.at(-1));
  };
  const slings = async () => (await cacheAt('XMAR')).slings.map(({ date, drums }) => [date, drums]);
  const set = async (drum: string) => {
    const id = randomUUID();
    const crew = await desk.server.as('helicopter crew');
    const body = { kind: 'slung', ...written('2027-06-14T06:04Z', 'phone'), helicopter: 'H1' };
    const answer = await crew.put(`/api/movements/${id}`, { ...body, drum, from: 'XESK', to: 'XMAR' });
    expect(answer.status).toBe(200);
    return id;
  };

  it('flown three days early and lift by lift, leads to the same levels and is not counted out again', async () => {
    const before = await lastLevels();
    expect(await slings()).toEqual([['2027-06-17', 6]]);
    const lifted: string[] = [];
    for (let lift = 0; lift < 2; lift += 1) {
      const at = await desk.manager.get<{ items: { number: string; content: string }[] }>(
        '/api/drums?place=XESK&limit=500',
      );
      const sealed = at.body.items.filter(({ content }) => content === 'filled sealed').slice(0, 3);
      for (const { number } of sealed) lifted.push(await set(number));
      expect(await lastLevels()).toEqual(before);
      expect(await slings()).toEqual(lift === 0 ? [['2027-06-17', 3]] : []);
    }
    const page = await desk.manager.get<Scenario>('/api/scenario');
    expect(page.body.slings.some(({ to }) => to === 'XMAR')).toBe(false);
    // Taken back, it is to be flown again.
    for (const corrects of lifted)
      await report({ kind: 'corrected', ...written(), corrects, reason: 'said for another day' });
    expect(await slings()).toEqual([['2027-06-17', 6]]);
  });
});

describe('a drum of an approved flight', () => {
  it('that is set down is stock, and no longer to come', async () => {
    const before = await cacheAt('XLOR');
    const flight = before.deliveries.find(({ state }) => state === 'approved')!;
    const { loads } = await desk.flight(flight.flight);
    const drum = loads.find((load) => load.place === 'XLOR' && load.drum !== null)!.drum!;
    const { from } = (await desk.flight(flight.flight)).planned;
    await report(loaded(drum, from, { flight: flight.flight }));
    await report(leftAt(drum, 'XLOR', { flight: flight.flight }));
    const after = await cacheAt('XLOR');
    const left = after.deliveries.find((each) => each.flight === flight.flight);
    expect(left?.drums).toBe(flight.drums - 1);
    expect(after.stock.bookLitres).toBe(before.stock.bookLitres + 200);
    expect(after.projections.approved.usableLitres.at(-1)).toBe(
      before.projections.approved.usableLitres.at(-1),
    );
  });
});

describe('a draw for a task of today', () => {
  const taskLitres = async (): Promise<number> => {
    const { body } = await desk.manager.get<Scenario>('/api/scenario');
    return body.helicopterTasks.find(({ date, place }) => date === '2027-06-14' && place === 'XESK')!.litres;
  };
  const drawId = randomUUID();

  it('counts once: the evening is as low as it was foreseen, and the task has less left', async () => {
    const before = await cacheAt('XESK');
    expect(await taskLitres()).toBe(450);
    const crew = await desk.server.as('helicopter crew');
    await crew.put(`/api/movements/${drawId}`, drawn(await sealedAt('XESK'), 'XESK', 150));
    const after = await cacheAt('XESK');
    expect(after.stock.bookLitres).toBe(before.stock.bookLitres - 150);
    expect(after.projections.noDeliveries.usableLitres.slice(1)).toEqual(
      before.projections.noDeliveries.usableLitres.slice(1),
    );
    expect(await taskLitres()).toBe(300);
    expect(after.draws[0]).toMatchObject({ date: '2027-06-14', for: 'P1', helicopter: 'H1', litres: 300 });
  });

  it('for another programme is beyond the task', async () => {
    await report(drawn(await sealedAt('XESK'), 'XESK', 50, { programme: 'P3' }));
    expect(await taskLitres()).toBe(300);
  });

  it('for a medevac is beyond the task', async () => {
    await report(drawn(await sealedAt('XESK'), 'XESK', 50, { medevac: 'fall at the ridge' }));
    expect(await taskLitres()).toBe(300);
  });

  it('that is taken back is to be drawn again', async () => {
    const at = { happenedAt: '2027-06-14T06:10Z', writtenAt: '2027-06-14T06:10Z', means: 'screen' };
    await report({ kind: 'corrected', ...at, corrects: drawId, reason: 'wrong drum' });
    expect(await taskLitres()).toBe(450);
  });
});

describe('a count', () => {
  it('below the book beyond the tolerance leaves the figure in doubt', async () => {
    await report(counted('XCIN', 2150));
    const cin = await cacheAt('XCIN');
    expect(cin.stock).toMatchObject({ bookLitres: 2400, usableLitres: 2150, confidence: 'low' });
    expect(cin.stock.why).toContain('Count and book differ, and no entry explains it.');
    expect(cin.projections.noDeliveries.usableLitres[0]).toBe(2150);
  });
});
