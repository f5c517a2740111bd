import { randomUUID } from 'node:crypto';
import type { FillListAnswer, PickListAnswer, RetestComingAnswer } from '@drumline/contract';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { DrumNow } from '../stock/drums.service.js';
import { drawn, written } from '../stock/testing/movement-bodies.js';
import type { Client } from '../testing/client.js';
import { type FlightDesk, openFlightDesk } from '../testing/flight-desk.js';

let desk: FlightDesk;
let keeper: Client;
beforeAll(async () => {
  desk = await openFlightDesk();
  keeper = await desk.server.as('storekeeper');
});
afterAll(() => desk.server.close());

const items = async <Item>(path: string, who: Client = keeper): Promise<readonly Item[]> =>
  (await who.get<{ items: readonly Item[] }>(path)).body.items;
const pickLists = () => items<PickListAnswer>('/api/pick-lists');
const hold = (of: object, reason: string) =>
  desk.dispatcher.put(`/api/holds/${randomUUID()}`, { ...written(), of, reason });

describe('to pick', () => {
  it('nothing is set out for a flight that is only offered', async () => {
    expect(await pickLists()).toEqual([]);
    expect((await keeper.get('/api/pick-lists/F01')).status).toBe(404);
  });

  it('an approved flight has its drums by number, with batch, weight, retest date and planned use', async () => {
    expect((await desk.act(desk.dispatcher, 'F01', 'approve')).status).toBe(200);
    const { loads } = await desk.flight('F01');
    const [list] = await pickLists();
    expect(list).toMatchObject({ flight: 'F01', state: 'approved', version: 1 });
    expect(list?.stops.flatMap(({ drums }) => drums.map(({ number }) => number))).toEqual(
      loads.flatMap(({ drum }) => drum ?? []),
    );
    const [stop] = list!.stops;
    for (const drum of stop!.drums) {
      expect(drum).toMatchObject({ where: { kind: 'at', place: list!.from }, litres: 200, against: [] });
      expect(drum.grossKg).toBeGreaterThan(150);
      expect(drum.retestDue! >= stop!.plannedUse).toBe(true);
    }
    expect((await keeper.get<PickListAnswer>('/api/pick-lists/F01')).body).toEqual(list);
  });

  it('a drum that is held after it was picked says HOLD, by whom and why', async () => {
    const [list] = await pickLists();
    const { number } = list!.stops[0]!.drums[0]!;
    await hold({ drum: number }, 'seal loose');
    const [after] = await pickLists();
    const drum = after!.stops[0]!.drums.find((each) => each.number === number);
    expect(drum?.against).toEqual(['HOLD by Demo dispatcher: seal loose.']);
  });

  it('is not open to a pilot', async () => {
    const pilot = await desk.server.as('pilot');
    expect((await pilot.get('/api/pick-lists')).status).toBe(403);
    expect((await pilot.get('/api/fill-lists')).status).toBe(403);
  });
});

describe('to fill', () => {
  it('every base has what it fills from; only approved flights ask for drums', async () => {
    const lists = await items<FillListAnswer>('/api/fill-lists');
    expect(lists.map(({ place }) => place)).toEqual(['XALD', 'XMER']);
    expect(lists[0]).toMatchObject({ bulkLitres: 45_000, drums: 0, lines: [], short: [] });
    expect(lists[0]?.batches.length).toBeGreaterThan(0);
  });

  it('a flight whose drums nobody has filled yet is on the list of its base, to be filled the day before', async () => {
    const wanted = (
      await items<{ id: string; loads: { drum: string | null }[] }>('/api/flights?limit=100', desk.manager)
    ).map(({ id }) => id);
    let flight: string | undefined;
    for (const id of wanted) {
      const { loads, state } = await desk.flight(id);
      if (state === 'offered' && loads.some(({ drum }) => drum === null)) flight ??= id;
    }
    expect(flight).toBeDefined();
    expect((await desk.act(desk.dispatcher, flight!, 'approve')).status).toBe(200);
    const { date, fromPlace, loads } = await desk.flight(flight!);
    const base = (await items<FillListAnswer>('/api/fill-lists')).find(({ place }) => place === fromPlace)!;
    const drums = loads.filter(({ drum }) => drum === null).length;
    expect(base).toMatchObject({ drums, litres: drums * 200 });
    expect(base.lines.every((line) => line.flight === flight && line.fillBy < date)).toBe(true);
    const list = (await pickLists()).find((each) => each.flight === flight)!;
    expect(list.stops.reduce((sum, { toFill }) => sum + toFill, 0)).toBe(drums);
  });
});

describe('retest coming', () => {
  it('J26-118, due on day 9: 12 drums at four caches are not burned by then, and these draws come too late', async () => {
    const all = await items<RetestComingAnswer>('/api/retest-coming');
    const drums = all.filter(({ batch, unusedLitres }) => batch === 'J26-118' && unusedLitres > 0);
    const at = (place: string) => drums.filter((drum) => drum.place === place);
    expect(
      Object.fromEntries(['XBIR', 'XDUN', 'XHAS', 'XJUN'].map((place) => [place, at(place).length])),
    ).toEqual({
      XBIR: 6,
      XDUN: 2,
      XHAS: 1,
      XJUN: 3,
    });
    expect(drums).toHaveLength(12);
    for (const drum of drums) expect(drum).toMatchObject({ retestDue: '2027-06-22', isPast: false });
    for (const place of ['XBIR', 'XJUN'])
      expect(at(place)[0]).toMatchObject({ unusedLitres: 200, drawTooLate: { date: '2027-06-26' } });
  });

  it('a part-used drum that the next uplift empties is burned in time', async () => {
    const all = await items<RetestComingAnswer>('/api/retest-coming');
    expect(all.find(({ number }) => number === '0583')).toMatchObject({ litres: 60, unusedLitres: 0 });
    expect(all.find(({ number }) => number === '0407')).toMatchObject({
      unusedLitres: 110,
      drawTooLate: { date: '2027-06-24', for: 'A1 top-up' },
    });
  });

  it('a batch that is held is on the list of the held, not here', async () => {
    await hold({ batch: 'J26-118' }, 'recall');
    const all = await items<RetestComingAnswer>('/api/retest-coming');
    expect(all.filter(({ batch }) => batch === 'J26-118')).toEqual([]);
    const held = await items<DrumNow>('/api/drums?view=held&limit=500');
    expect(held.filter(({ batch }) => batch === 'J26-118')).toHaveLength(13);
  });
});

describe('the register', () => {
  it('shows open drums with what is left and since when, and empties', async () => {
    const [drum] = (await items<DrumNow>('/api/drums?place=XESK')).filter(
      ({ content }) => content === 'filled sealed',
    );
    const crew = await desk.server.as('helicopter crew');
    await crew.put(`/api/movements/${randomUUID()}`, drawn(drum!.number, 'XESK', 120));
    const open = await items<DrumNow>('/api/drums?view=open&place=XESK');
    expect(open.find(({ number }) => number === drum!.number)).toMatchObject({
      litres: 80,
      openedAt: '2027-06-14T06:08Z',
    });
    await crew.put(`/api/movements/${randomUUID()}`, drawn(drum!.number, 'XESK', 80));
    const empties = await items<DrumNow>('/api/drums?view=empties&place=XESK');
    expect(empties.map(({ number }) => number)).toContain(drum!.number);
    expect(
      (await items<DrumNow>('/api/drums?view=open&place=XESK')).map(({ number }) => number),
    ).not.toContain(drum!.number);
  });

  it('a drum’s timeline has the hold of its batch, with who and why', async () => {
    const [drum] = (await items<DrumNow>('/api/drums?view=held&limit=500')).filter(
      ({ batch }) => batch === 'J26-118',
    );
    const { body } = await keeper.get<{
      batchTimeline: { movement: object }[];
      timeline: { movement: object }[];
    }>(`/api/drums/${drum!.number}`);
    expect(body.timeline[0]?.movement).toMatchObject({
      kind: 'received',
      by: expect.any(String),
      happenedAt: expect.any(String),
      writtenAt: expect.any(String),
      receivedAt: expect.any(String),
      means: expect.any(String),
    });
    expect(body.batchTimeline.map(({ movement }) => movement)).toEqual([
      expect.objectContaining({ kind: 'held', by: 'Demo dispatcher', reason: 'recall' }),
    ]);
  });
});
