import { randomUUID } from 'node:crypto';
import type { CardAnswer } from '@drumline/contract';
import type { ClockAnswer } from '@drumline/contract/answers';
import { afterAll, beforeAll, describe, expect, it, vi } from 'vitest';
import { BoardService } from '../flights/board/board.service.js';
import { type FlightDesk, openFlightDesk, setClock } from '../testing/flight-desk.js';
import type { MorningAnswer } from './morning-answer.js';

let desk: FlightDesk;
beforeAll(async () => {
  desk = await openFlightDesk();
});
afterAll(() => desk.server.close());

const morning = async (query = '') => (await desk.dispatcher.get<MorningAnswer>(`/api/morning${query}`)).body;

describe('the morning', () => {
  it('has every offered flight, the first due first, with what follows if it is declined', async () => {
    const { flights, today, firstTakeOff } = await morning();
    expect(today).toBe('2027-06-14');
    expect(flights).toHaveLength(14);
    expect(flights.map(({ by }) => by)).toEqual(flights.map(({ by }) => by).toSorted());
    const f05 = flights.find(({ id }) => id === 'F05')!;
    expect(f05).toMatchObject({ by: '2027-06-14T17:00:00Z', drums: 6, protects: { place: 'XLOR' } });
    expect(f05.ifDeclined).toContain('XLOR');
    expect(firstTakeOff?.flight).toBe(flights[0]!.id);
  });

  it('ranks the flights of today for a single window by harm avoided in the hour', async () => {
    const { oneWindow, flights } = await morning();
    const ofToday = flights.filter(({ date }) => date === '2027-06-14').map(({ id }) => id);
    expect(oneWindow.map(({ flight }) => flight).toSorted()).toEqual(ofToday.toSorted());
    const worth = oneWindow.map(({ harmPerHour }) => harmPerHour);
    expect(worth).toEqual(worth.toSorted((one, other) => other - one));
  });

  it('knows each strip: its surface while a report is fresh, what is planned on when none is', async () => {
    const { strips } = await morning();
    expect(strips).toHaveLength(11);
    expect(strips.find(({ place }) => place === 'XGAN')).toMatchObject({
      counts: 'dry',
      tailwindLimitKt: 3,
      stripClass: 4,
      drumsADay: 4,
    });
    expect(strips.every(({ surface, reportedAt }) => surface === null || reportedAt !== null)).toBe(true);
  });

  it('tells what has come in since: a surface report with its speaker, the mark it leaves, a count from paper', async () => {
    await desk.dispatcher.put(`/api/surface-reports/${randomUUID()}`, {
      place: 'XLOR',
      state: 'soft',
      at: '2027-06-14T06:00Z',
      by: 'strip helper, by radio',
      untilDate: '2027-06-16',
    });
    await desk.dispatcher.put(`/api/movements/${randomUUID()}`, {
      kind: 'counted',
      place: 'XCIN',
      method: 'dip',
      seenFrom: 'ground',
      millilitres: 2_150_000,
      sealedDrums: 10,
      openDrums: 1,
      emptyDrums: 0,
      happenedAt: '2027-06-14T05:40Z',
      writtenAt: '2027-06-14T05:45Z',
      means: 'paper',
    });
    const { changed, flights, cases } = await morning();
    expect(changed).toContainEqual(
      expect.objectContaining({
        what: 'XLOR soft, to the end of Wed 16',
        source: 'strip helper, by radio; entered by Demo dispatcher',
      }),
    );
    expect(changed).toContainEqual(
      expect.objectContaining({
        what: 'XCIN counted, 2,150 L',
        source: 'Demo dispatcher, from paper',
        writtenAt: '2027-06-14T05:45Z',
      }),
    );
    expect(changed.map(({ what }) => what)).toContainEqual(
      expect.stringMatching(/F05.* needs? a decision: [A-Z].*\.$/),
    );
    expect(changed.map(({ at }) => at)).toEqual(
      changed
        .map(({ at }) => at)
        .toSorted()
        .toReversed(),
    );
    expect(flights.find(({ id }) => id === 'F05')!.needsDecision).not.toBeNull();
    // product.md, T5: 250 L short against 48 L tolerance.
    expect(cases).toMatchObject([
      { place: 'XCIN', countedLitres: 2150, bookLitres: 2400, toleranceLitres: 48 },
    ]);
    const later = await morning('?since=2027-06-14T20:00Z');
    expect(later.changed).toEqual([]);
  });

  it('says of a proposal when it was made by the clock of the territory, as of all its lines', async () => {
    interface Line {
      readonly id: string;
      readonly version: number;
      readonly data: { readonly takeoffLb: number };
    }
    const { body } = await desk.manager.get<{ items: readonly Line[] }>('/api/strip-limits');
    const { id, version, data } = body.items[0]!;
    const lower = { ...data, takeoffLb: data.takeoffLb - 10 };
    expect((await desk.manager.change(`/api/strip-limits/${id}`, version, lower)).status).toBeLessThan(300);
    const { proposals } = await morning();
    expect(proposals.map(({ proposedAt }) => proposedAt.slice(0, 13))).toEqual(['2027-06-14T06']);
  });

  it('says which caches were counted too long ago; nobody is late at the start', async () => {
    const before = (await morning()).notHeard;
    expect(before.crews).toEqual([]);
    // XKNA was counted on 3 June: more than a week ago.
    expect(before.caches.map(({ place }) => place)).toContain('XKNA');
  });

  it('says where fuel can be drawn now, the medevac reserve told apart', async () => {
    const { fuel } = await morning();
    const lor = fuel.find(({ place }) => place === 'XLOR')!;
    expect(lor.usableLitres).toBe(2200);
    expect(lor.reserveLitres).toBeGreaterThan(0);
  });

  it('is made once for what it is made from, and anew as soon as anybody writes anything', async () => {
    const made = vi.spyOn(BoardService.prototype, 'read');
    // A minute may go by in between; not twice.
    await vi.waitFor(async () => {
      const before = await morning();
      made.mockClear();
      expect(await morning()).toEqual(before);
      expect(made).not.toHaveBeenCalled();
    });
    const ofGan = async () => (await morning()).strips.find(({ place }) => place === 'XGAN')!;
    for (const [state, at] of [
      ['soft', '2027-06-14T05:58Z'],
      ['dry', '2027-06-14T05:59Z'],
    ]) {
      const report = { place: 'XGAN', state, at, by: 'J. Holm' };
      await desk.dispatcher.put(`/api/surface-reports/${randomUUID()}`, report);
      expect(await ofGan()).toMatchObject({ surface: state, by: 'J. Holm' });
    }
    expect(made).toHaveBeenCalled();
    made.mockRestore();
  });

  it('shows the handover that waits to the one who comes in, with what is not signed for, until it is taken over', async () => {
    const items = [
      { kind: 'open decision', words: 'F05 needs a decision.' },
      { kind: 'said', words: 'The helper at XESK is new.' },
    ];
    const path = `/api/handovers/${randomUUID()}`;
    expect((await morning()).handover).toBeNull();
    await desk.dispatcher.put(path, { items });
    const seen = async () => (await desk.manager.get<MorningAnswer>('/api/morning')).body.handover;
    expect(await seen()).toMatchObject({
      from: 'Demo dispatcher',
      items: items.map(() => ({ signed: null })),
    });
    await desk.manager.put(`${path}/items/2`, {});
    expect((await seen())!.items.map(({ signed }) => signed?.by)).toEqual([
      undefined,
      'Demo operations manager',
    ]);
    await desk.manager.put(`${path}/items/1`, {});
    await desk.manager.post(`${path}/close`, {});
    const after = await morning();
    expect([after.handover, after.handedOverAt === null]).toEqual([null, false]);
  });

  it('says of settings that were changed which, from what to what', async () => {
    const setUp = await desk.server.as('operations manager');
    const path = '/api/settings/current';
    const { version, data } = (await setUp.get<{ version: number; data: { offeredDays: number } }>(path))
      .body;
    const fewer = { ...data, offeredDays: data.offeredDays - 1 };
    expect((await setUp.change(path, version, fewer)).status).toBeLessThan(300);
    const said = (await morning()).changed.map(({ what }) => what);
    expect(said).toContain(`settings changed: offered days ${data.offeredDays} to ${fewer.offeredDays}`);
  });

  it("is the office's, and a moment that is none is refused", async () => {
    const pilot = await desk.server.as('pilot');
    expect((await pilot.get('/api/morning')).status).toBe(403);
    expect((await desk.dispatcher.get('/api/morning?since=yesterday')).status).toBe(400);
  });
});

describe('if declined', () => {
  it('is what follows by the facts of now, as on the card, not what followed when it was planned', async () => {
    for (const id of ['F02', 'F08']) await desk.act(desk.dispatcher, id, 'decline', { reason: 'weather' });
    const { flights } = await morning();
    const cards = await Promise.all(
      flights.map(async ({ id }) => (await desk.dispatcher.get<CardAnswer>(`/api/flights/${id}/card`)).body),
    );
    expect(flights.map(({ ifDeclined }) => ifDeclined)).toEqual(
      cards.map(({ ifDeclined }) => ifDeclined?.ifDeclined),
    );
    const f05 = cards.find(({ id }) => id === 'F05')!;
    expect(f05.ifDeclined?.ifDeclined).not.toBe(f05.planned.reason.ifDeclined);
  });
});

it('the clock of a drill is set to another hour: what was done before it keeps its own', async () => {
  const lines = async () => {
    const { changed, proposals } = await morning();
    return [
      ...changed.map(({ at, what }) => `${at} ${what}`),
      ...proposals.map(({ subject, proposedAt }) => `${proposedAt} ${subject}`),
    ];
  };
  const before = await lines();
  for (const kind of [
    /A plan was accepted$/,
    /settings changed: offered days/,
    /^2027-06-14T06:\d\d:.*limit/,
  ])
    expect(before).toContainEqual(expect.stringMatching(kind));
  await setClock(desk, '2027-06-14T16:50Z');
  expect((await lines()).filter((line) => !line.includes('clock starts')).toSorted()).toEqual(
    before.toSorted(),
  );
  const { asOf, changed } = await morning();
  expect(asOf).toMatch(/^2027-06-14T16:5/);
  expect(changed).toContainEqual(
    expect.objectContaining({
      what: expect.stringMatching(
        /^settings changed: clock starts at Mon 14, \d\d:\d\d to Mon 14, \d\d:\d\d$/,
      ),
    }),
  );
});

it('an approved flight that should be off stands until it is given or called off, and is the first take-off, late', async () => {
  const { id, date, departs } = (await morning()).flights.find((each) => each.date === '2027-06-14')!;
  await desk.act(desk.dispatcher, id, 'approve');
  const { flights, firstTakeOff } = await morning();
  const line = flights.find((each) => each.id === id);
  expect(line).toMatchObject({ state: 'approved', needsDecision: null, by: `${date}T${departs}:00Z` });
  expect(firstTakeOff).toMatchObject({ at: departs, lateMinutes: expect.any(Number) });
  expect(firstTakeOff!.lateMinutes).toBeGreaterThan(60);
  await desk.act(desk.dispatcher, id, 'call-off', { reason: 'too late' });
  expect((await morning()).flights.map((each) => each.id)).not.toContain(id);
});

it('a hold stays to be decided on until every place and crew has been called', async () => {
  const id = randomUUID();
  const minute = { happenedAt: '2027-06-14T06:00:00Z', writtenAt: '2027-06-14T06:00:00Z', means: 'screen' };
  const of = { batch: 'J27-041' };
  expect((await desk.manager.put(`/api/holds/${id}`, { ...minute, of, reason: 'water found' })).status).toBe(
    200,
  );
  const [open] = (await morning()).openCalls;
  expect(open).toMatchObject({ hold: id, of, drums: 44, called: 0 });
  expect(open!.toCall).toEqual(
    expect.arrayContaining(['XALD', 'XMER', 'XESK', 'XLOR', 'XKNA', 'XMAR', 'XFAL']),
  );
  await desk.manager.put(`/api/holds/${id}/calls/XALD`, {});
  expect((await morning()).openCalls).toMatchObject([
    { called: 1, toCall: open!.toCall.filter((each) => each !== 'XALD') },
  ]);
  const { fuel, bases } = await morning();
  expect(fuel.find(({ place }) => place === 'XMAR')).toMatchObject({
    usableLitres: 0,
    bookLitres: 600,
    heldLitres: 600,
  });
  expect(bases).toMatchObject([
    { place: 'XALD', heldDrums: 14 },
    { place: 'XMER', heldDrums: 10 },
  ]);
  expect(bases.every(({ usableLitres, usableDrums }) => usableLitres === usableDrums * 200)).toBe(true);
  for (const each of open!.toCall) await desk.manager.put(`/api/holds/${id}/calls/${each}`, {});
  expect((await morning()).openCalls).toEqual([]);
});

it('the clock of a drill runs on when other settings are saved; set to another hour it has been set once more', async () => {
  const path = '/api/settings/current';
  const manager = await desk.server.as('operations manager');
  const set = async () => (await manager.get<ClockAnswer>('/api/clock')).body.settings;
  const asOf = async () => Date.parse((await morning()).asOf);
  const [before, began] = [await set(), await asOf()];
  const { version, data } = (await manager.get<{ version: number; data: object }>(path)).body;
  expect((await manager.change(path, version, { ...data, title: 'Uplands' })).status).toBe(200);
  expect(await set()).toEqual(before);
  expect(await asOf()).toBeGreaterThanOrEqual(began);
  await setClock(desk, '2027-06-14T16:20Z');
  expect(await set()).toEqual([
    ...before,
    { setAt: expect.any(String), startsAt: '2027-06-14T16:20:00.000Z' },
  ]);
});
