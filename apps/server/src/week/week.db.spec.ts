import { randomUUID } from 'node:crypto';
import type { CardAnswer, WeekAnswer } from '@drumline/contract';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { type FlightDesk, openFlightDesk } from '../testing/flight-desk.js';

let desk: FlightDesk;
beforeAll(async () => {
  desk = await openFlightDesk();
});
afterAll(() => desk.server.close());

const week = async (query = '') => (await desk.dispatcher.get<WeekAnswer>(`/api/week${query}`)).body;
const card = async (id: string) => (await desk.dispatcher.get<CardAnswer>(`/api/flights/${id}/card`)).body;

describe('the week board', () => {
  it('is Monday to Sunday, with the flights of the plan, what they cost and what they land', async () => {
    const { days, flights, cost, landings, flightsCosted, plan } = await week();
    expect(days.map(({ date }) => date)).toEqual([14, 15, 16, 17, 18, 19, 20].map((day) => `2027-06-${day}`));
    expect(days.filter(({ noFlying }) => noFlying).map(({ date }) => date)).toEqual(['2027-06-20']);
    expect(flights).toHaveLength(14);
    expect(flights.find(({ id }) => id === 'F05')).toMatchObject({
      state: 'offered',
      route: ['XALD', 'XLOR', 'XALD'],
      drums: 6,
      drumsPossible: 6,
    });
    expect(cost.total).toBe(cost.flight + cost.fuel + cost.handling);
    expect(flightsCosted).toBe(14);
    expect(landings).toContainEqual({ date: '2027-06-15', place: 'XLOR', drums: 6, limitDrums: 6 });
    expect(plan).toMatchObject({ number: 1, asOf: expect.stringMatching(/^2027-06-14/) });
  });

  it('shows flights that fly anyway with the drums they could take, and aircraft that are out', async () => {
    const { booked, aircraft } = await week();
    const spares = booked.map(({ id, spareDrums }) => [id, spareDrums]);
    // product.md, M25 and S1: X1 carries passengers on both legs, X2 takes drums XALD-XCIN, X3 3 drums XMER-XHAS.
    expect(spares).toContainEqual(['X1', 0]);
    expect(spares).toContainEqual(['X3', 3]);
    expect(booked.find(({ id }) => id === 'X1')).toMatchObject({ departs: null, heldHours: 2.2 });
    expect(booked.find(({ id }) => id === 'X2')!.spareDrums).toBeGreaterThan(0);
    expect(aircraft.find(({ tail }) => tail === 'A2')!.absences).toHaveLength(1);
  });

  it('counts what is short ahead in litre-days: XMAR a day before its sling, 25 L', async () => {
    const { tally } = await week();
    // product.md, section 5: with the reference plan only MAR dips below minimum, 375 of 400 L on day 3.
    expect(tally.belowCritical).toEqual({ litreDays: 0, first: null });
    expect(tally.belowMinimum.first).toEqual({ place: 'XMAR', date: '2027-06-16' });
    expect(tally.expectedDrums).toBeLessThan(tally.drums);
  });

  it('begins where it is asked to, and refuses days that are none', async () => {
    const next = await week('?from=2027-06-21&days=14');
    expect(next.days).toHaveLength(14);
    expect(next.flights).toEqual([]);
    expect((await desk.dispatcher.get('/api/week?from=soon')).status).toBe(400);
    expect((await desk.dispatcher.get('/api/week?days=90')).status).toBe(400);
  });

  it('shows an approval at once, and says for some seconds that drums have moved since its sums were made', async () => {
    const before = await week();
    expect(before.stockIsBehind).toBe(false);
    const [flight] = before.flights.filter(({ state }) => state === 'offered');
    await desk.act(desk.dispatcher, flight!.id, 'approve');
    const approved = await week();
    expect(approved.flights.find(({ id }) => id === flight!.id)!.state).toBe('approved');
    const happenedAt = approved.asOf;
    const count = { kind: 'counted', happenedAt, writtenAt: happenedAt, means: 'radio', place: 'XHAS' };
    const seen = { method: 'dip', seenFrom: 'ground', sealedDrums: 5, openDrums: 0, emptyDrums: 0 };
    const body = { ...count, ...seen, millilitres: 1_000_000 };
    expect((await desk.dispatcher.put(`/api/movements/${randomUUID()}`, body)).status).toBe(200);
    expect((await week()).stockIsBehind).toBe(true);
  });

  it("is the office's: a pilot has the own flights, a customer nothing", async () => {
    for (const role of ['pilot', 'field leader'] as const) {
      const person = await desk.server.as(role);
      expect((await person.get('/api/week')).status).toBe(403);
    }
  });
});

describe('the decision card', () => {
  it('has what the flight is for, what binds, who may fly it and what happens without it', async () => {
    const { today, ifDeclined, faults, drumNumbers } = await card('F05');
    expect(today!.planned.reason.protects).toMatchObject({ place: 'XLOR', date: '2027-06-15' });
    expect(today!.load).toMatchObject({ drums: 6, kg: 1080 });
    expect(today!.fewer).toBeNull();
    expect(faults).toEqual([]);
    expect(drumNumbers).toHaveLength(6);
    expect(ifDeclined!.caches[0]).toMatchObject({ place: 'XLOR', without: { belowMinimum: '2027-06-15' } });
    const fit = (await card('F06')).today!.crew;
    expect(fit.filter(({ whyNot }) => whyNot === null).map(({ id }) => id)).toEqual(['FW1']);
  });

  it('of a strip that went soft: 6 drums are over its landing limit, 4 go, with both costs', async () => {
    const report = { place: 'XLOR', state: 'soft', at: '2027-06-14T05:58Z', by: 'strip helper' };
    const untilDate = '2027-06-16';
    await desk.dispatcher.put(`/api/surface-reports/${randomUUID()}`, { ...report, untilDate });
    const { today, faults, weighed } = await card('F05');
    expect([Math.round(weighed!.kg), weighed!.lbOnLegs]).toEqual([1078, [2378]]);
    // product.md, T1: B from ALD 6 > 4 drums, 531 lb over with the drums as weighed (1,078 kg); at 180 kg each 534 lb: 2,381 lb
    // of drums in place of 2,378 lb.
    const [binding, dry] = today!.legs[0]!.limits;
    expect(binding).toMatchObject({
      name: 'strip landing limit',
      surface: 'soft',
      limitLb: 7600,
      binds: true,
    });
    expect(binding!.spareLb).toBe(-534);
    expect(dry).toMatchObject({ surface: 'dry', limitLb: 8300 });
    expect(today!.fewer).toMatchObject({ drums: 4, stops: [{ place: 'XLOR', drums: 4 }] });
    expect(today!.fewer!.cost.perLitre).toBeGreaterThan(today!.load.cost.perLitre!);
    expect(faults).toMatchObject([{ problem: expect.stringContaining('XLOR when soft accepts 7,600 lb') }]);
    expect(today!.heard[0]).toMatchObject({ place: 'XLOR', counts: 'soft', isStale: false });
    const { heardSince, flights } = await week();
    expect(heardSince).toMatchObject([{ place: 'XLOR', state: 'soft' }]);
    // Its box says what may go by the facts of today, not by those it was planned by.
    expect(flights.find(({ id }) => id === 'F05')).toMatchObject({
      needsDecision: expect.stringContaining('XLOR when soft'),
      ...{ drums: 6, drumsPossible: 4, binding: { name: 'strip landing limit', place: 'XLOR' } },
    });
  });
});
