import { randomUUID } from 'node:crypto';
import type { MorningAnswer, WeekAnswer } from '@drumline/contract/answers';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { type FlightDesk, openFlightDesk } from '../../testing/flight-desk.js';
import type { TouchedAnswer } from './touched-flights.service.js';

let desk: FlightDesk;
beforeAll(async () => {
  desk = await openFlightDesk();
});
afterAll(() => desk.server.close());

const soft = {
  place: 'XLOR',
  state: 'soft',
  at: '2027-06-14T06:00Z',
  by: 'strip helper, by radio',
  untilDate: '2027-06-16',
} as const;
const touches = (changes: object = {}) =>
  desk.dispatcher.get<TouchedAnswer>(
    `/api/surface-reports/touches?${new URLSearchParams({ ...soft, ...changes })}`,
  );

describe('XLOR soft, before it is reported', () => {
  // product.md, T1: B from ALD 6 > 4 drums, landing limit short by 531 lb with the drums as weighed; 534 lb at 180 kg each.
  it('says which flights it touches, how many drums still go and what it breaks', async () => {
    const { body } = await touches();
    expect([body.before, body.after]).toEqual(['dry', 'soft']);
    const f05 = body.flights.find(({ flight }) => flight === 'F05')!;
    expect(f05).toMatchObject({ drums: 6, drumsThatGo: 4, aircraft: 'B1' });
    expect(f05.breaks).toContain('Unload 534 lb (2 drums).');
    expect(body.flights.map(({ flight }) => flight)).toContain('F08');
  });

  it('touches nothing where the strip is dry already, and writes nothing', async () => {
    const { body } = await touches({ state: 'dry' });
    expect(body.flights).toEqual([]);
    expect((await desk.flight('F05')).needsDecision).toBeNull();
  });

  // product.md, T1: F05 on Tue 15 and F08 on Wed 16 need a decision; a report without a last day reaches today only.
  it('without a last day says which flights of later days it would touch if it lasts', async () => {
    const { untilDate, ...today } = soft;
    const query = (report: object) => new URLSearchParams(report as Record<string, string>);
    const read = async (report: object) =>
      (await desk.dispatcher.get<TouchedAnswer>(`/api/surface-reports/touches?${query(report)}`)).body;
    const { flights, ifItLasts } = await read(today);
    expect(flights.map(({ flight }) => flight)).toEqual(['F02']);
    expect(ifItLasts).toEqual([
      { flight: 'F05', date: '2027-06-15' },
      { flight: 'F08', date: '2027-06-16' },
    ]);
    expect((await read({ ...today, untilDate })).ifItLasts).toEqual([]);
    expect((await read({ ...today, state: 'damp' })).ifItLasts).toEqual([]);
  });

  it('of a place that nobody knows is said', async () => {
    expect((await touches({ place: 'XZZZ' })).status).toBe(404);
  });

  it('once reported, marks the flights at once', async () => {
    await desk.dispatcher.put(`/api/surface-reports/${randomUUID()}`, soft);
    expect((await desk.flight('F05')).needsDecision).toContain('XLOR when soft accepts 7,600 lb landing');
    expect((await desk.flight('F08')).needsDecision).not.toBeNull();
    expect((await desk.flight('F06')).needsDecision).toBeNull();
  });

  it('a report of an earlier time is outranked by it; one of the same minute is not', async () => {
    const earlier = (await touches({ state: 'dry', at: '2027-06-14T05:45Z' })).body;
    expect([earlier.outrankedBy, earlier.before, earlier.after]).toEqual([soft, 'soft', 'soft']);
    expect((await touches({ state: 'dry' })).body.outrankedBy).toBeNull();
  });
});

describe('a booked flight to a strip that closes', () => {
  // The demo's X2, XALD-XCIN-XMER-XALD on Tue 15, two passengers aboard.
  const closed = { ...soft, place: 'XCIN', state: 'closed', at: '2027-06-14T06:00Z' } as const;
  const needs = 'XCIN is reported closed. Wait for a report that it is open.';
  const onWeek = async () => {
    const { booked } = (await desk.dispatcher.get<WeekAnswer>('/api/week')).body;
    return booked.filter(({ needsDecision }) => needsDecision !== null);
  };
  const onMorning = async () => (await desk.dispatcher.get<MorningAnswer>('/api/morning')).body.booked;

  it('is named before the report is kept, with its passengers', async () => {
    expect((await touches(closed)).body.booked).toEqual([
      expect.objectContaining({ flight: 'X2', date: '2027-06-15', passengers: 2, breaks: needs }),
    ]);
    expect([await onWeek(), await onMorning()]).toEqual([[], []]);
  });

  it('needs a decision on Week and Morning while it is closed, and no longer when it is open', async () => {
    await desk.dispatcher.put(`/api/surface-reports/${randomUUID()}`, closed);
    const needsDecision = `X2, Tue 15 Jun, XCIN: ${needs}`;
    expect(await onWeek()).toEqual([expect.objectContaining({ id: 'X2', needsDecision })]);
    // Before the day pack of Tue 15 is printed.
    expect(await onMorning()).toEqual([
      expect.objectContaining({ id: 'X2', needsDecision, by: '2027-06-14T17:00:00Z' }),
    ]);
    const open = { ...closed, state: 'dry' };
    await desk.dispatcher.put(`/api/surface-reports/${randomUUID()}`, open);
    expect([await onWeek(), await onMorning()]).toEqual([[], []]);
  });
});

describe('a closed strip, whichever it is', () => {
  it('is told with its flights before it is reported; Morning and their cards go on after it', async () => {
    for (const [place, flight] of [
      ['XESK', 'F07'],
      ['XGAN', 'F06'],
      ['XLOR', 'F05'],
    ] as const) {
      const closed = { ...soft, place, state: 'closed' };
      const { body } = await touches(closed);
      expect(body.flights).toContainEqual(expect.objectContaining({ flight, drumsThatGo: 0 }));
      await desk.dispatcher.put(`/api/surface-reports/${randomUUID()}`, closed);
      expect((await desk.flight(flight)).needsDecision).toContain(`${place} is reported closed`);
      const pages = [`/api/flights/${flight}/card`, '/api/morning', '/api/week'].map((path) =>
        desk.dispatcher.get(path),
      );
      expect((await Promise.all(pages)).map(({ status }) => status)).toEqual([200, 200, 200]);
    }
  });
});
