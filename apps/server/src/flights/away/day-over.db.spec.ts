import type { CardAnswer, WeekAnswer } from '@drumline/contract';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { MorningAnswer } from '../../morning/morning-answer.js';
import { type FlightDesk, openFlightDesk, setClock } from '../../testing/flight-desk.js';

let desk: FlightDesk;
let before: WeekAnswer;
beforeAll(async () => {
  desk = await openFlightDesk();
  before = await week();
  await desk.act(desk.dispatcher, 'F01', 'approve');
  await desk.give('F02');
  await setClock(desk, '2027-06-15T06:52Z');
});
afterAll(() => desk.server.close());

const week = async () => (await desk.dispatcher.get<WeekAnswer>('/api/week')).body;
const morning = async () => (await desk.dispatcher.get<MorningAnswer>('/api/morning')).body;
const ofMonday = () => before.flights.filter(({ date }) => date === '2027-06-14').map(({ id }) => id);
const over = 'Mon 14 June 2027 is over; today is Tue 15 June 2027.';

describe('flights of a day that is over and of which nothing was heard', () => {
  it('are asked about on Morning, whatever their state', async () => {
    const { didTheyFly, flights, notHeard } = await morning();
    expect(didTheyFly.map(({ id }) => id).toSorted()).toEqual(ofMonday().toSorted());
    expect(didTheyFly.find(({ id }) => id === 'F01')).toMatchObject({
      state: 'approved',
      date: '2027-06-14',
    });
    expect(flights.map(({ date }) => date)).not.toContain('2027-06-14');
    expect(notHeard.crews).toContainEqual(expect.objectContaining({ flight: 'F02', what: 'not loaded' }));
  });

  it('are not approved or given any more, and the card says why before anybody presses', async () => {
    for (const [id, act] of [
      ['F01', 'give'],
      ['F03', 'approve'],
    ] as const) {
      const { status, body } = await desk.act(desk.dispatcher, id, act);
      expect(status).toBe(422);
      expect(body.faults.map(({ problem }) => problem)).toContain(over);
      const card = (await desk.dispatcher.get<CardAnswer>(`/api/flights/${id}/card`)).body;
      expect(card.faults.map(({ problem }) => problem)).toEqual([over]);
    }
  });

  it('stand for nothing: neither money nor drums landed are counted', async () => {
    const { flights, flightsCosted, landings, plan } = await week();
    expect(flightsCosted).toBe(before.flightsCosted - ofMonday().length);
    expect(landings.filter(({ date }) => date === '2027-06-14')).toEqual([]);
    expect(
      flights
        .filter(({ unheard }) => unheard)
        .map(({ id }) => id)
        .toSorted(),
    ).toEqual(ofMonday().toSorted());
    expect(plan?.isAsAccepted).toBe(false);
  });

  it('can be put on another day, called off, or reported flown', async () => {
    const tuesday = { date: '2027-06-15', departs: null };
    const { body } = await desk.dispatcher.post<{ faults: { problem: string }[] }>(
      '/api/flights/F03/amend/check',
      tuesday,
    );
    expect(body.faults.map(({ problem }) => problem)).not.toContain(over);
    expect((await desk.act(desk.dispatcher, 'F02', 'call-off', { reason: 'weather' })).status).toBe(200);
    await desk.report(desk.dispatcher, 'F01', 'take off', {
      happenedAt: '2027-06-14T07:02Z',
      writtenAt: '2027-06-14T07:02Z',
    });
    const { didTheyFly, notHeard } = await morning();
    expect(didTheyFly.map(({ id }) => id)).not.toContain('F01');
    expect(didTheyFly.map(({ id }) => id)).not.toContain('F02');
    expect(notHeard.crews).toContainEqual(expect.objectContaining({ flight: 'F01', what: 'not back' }));
    expect((await week()).flightsCosted).toBe(before.flightsCosted - ofMonday().length + 1);
  });
});
