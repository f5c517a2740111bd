import type { TouchedByChangeAnswer } from '@drumline/contract';
import type { Scenario } from '@drumline/planning';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { Client } from '../../testing/client.js';
import { type FlightDesk, openFlightDesk } from '../../testing/flight-desk.js';

interface Entry<T> {
  readonly version: number;
  readonly data: T;
}
type Tail = Scenario['aircraft'][number];

let desk: FlightDesk;
let engineering: Client;
beforeAll(async () => {
  desk = await openFlightDesk();
  engineering = await desk.server.as('engineering');
});
afterAll(() => desk.server.close());

const brokenDown = async (tail: string, from: string, until: string) => {
  const { version, data } = (await engineering.get<Entry<Tail>>(`/api/aircraft/${tail}`)).body;
  const absences = [...data.absences, { from, until, reason: 'starter generator' }];
  return { version, data: { ...data, absences } };
};
const touchedBy = async (who: Client, change: object) =>
  (await who.post<TouchedByChangeAnswer>('/api/touched-flights', change)).body;

describe('an aircraft that breaks down', () => {
  it('is taken out by engineering, hand plan and all: flights that stand are named before, and marked at once', async () => {
    const { version, data } = await brokenDown('A1', '2027-06-14', '2027-06-16');
    const touched = await touchedBy(engineering, { kind: 'aircraft', id: 'A1', data });
    const ids = touched.flights.map(({ flight }) => flight);
    const standing = await desk.manager.get<{ items: { id: string; aircraft: string; date: string }[] }>(
      '/api/flights?limit=100',
    );
    const ofTail = standing.body.items.filter(
      ({ aircraft, date }) => aircraft === 'A1' && date <= '2027-06-16',
    );
    expect(ids.length).toBeGreaterThan(1);
    expect(ids).toEqual(expect.arrayContaining(ofTail.map(({ id }) => id)));
    expect(touched.booked.map(({ flight, breaks }) => [flight, breaks])).toEqual([
      ['X1', expect.stringContaining('A1 is away: starter generator.')],
    ]);
    expect((await desk.flight(ids[0]!)).needsDecision).toBeNull();

    expect((await engineering.change('/api/aircraft/A1', version, data)).status).toBe(200);
    for (const id of ids)
      expect((await desk.flight(id)).needsDecision).toContain('A1 is away: starter generator.');
    const pages = ['/api/week', '/api/morning', '/api/scenario', '/api/projections'];
    const answers = await Promise.all(pages.map((path) => desk.manager.get(path)));
    expect(answers.map(({ status }) => status)).toEqual([200, 200, 200, 200]);
  });

  it('so is one with a booked flight and nothing else; it is told which', async () => {
    const { version, data } = await brokenDown('C1', '2027-06-15', '2027-06-15');
    const touched = await touchedBy(engineering, { kind: 'aircraft', id: 'C1', data });
    expect(touched.booked.map(({ flight }) => flight)).toEqual(['X2']);
    expect((await engineering.change('/api/aircraft/C1', version, data)).status).toBe(200);
    expect((await desk.manager.get('/api/week')).status).toBe(200);
  });
});

describe('other news', () => {
  it('a pilot who is sick: the flights that name him are told before, and marked at once', async () => {
    const { pilot, date } = await desk.flight('F05');
    const path = `/api/pilots/${pilot}`;
    const { version, data } = (await desk.manager.get<Entry<Scenario['pilots'][number]>>(path)).body;
    const sick = { ...data, daysOff: [...data.daysOff, date] };
    const touched = await touchedBy(desk.manager, { kind: 'pilots', id: pilot, data: sick });
    expect(touched.flights.map(({ flight }) => flight)).toContain('F05');
    expect((await desk.manager.change(path, version, sick)).status).toBe(200);
    expect((await desk.flight('F05')).needsDecision).toContain(pilot);
  });

  it('a strip limit taken out: the flights there are told, and two people may sign it', async () => {
    const touched = await touchedBy(desk.manager, { kind: 'strip-limits', id: 'XLOR-B', data: null });
    expect(touched.flights.map(({ breaks }) => breaks)).toEqual(
      expect.arrayContaining([expect.stringContaining('Type B is not approved at XLOR.')]),
    );
    const { version } = (await desk.manager.get<Entry<object>>('/api/strip-limits/XLOR-B')).body;
    const { status } = await desk.manager.send('DELETE', '/api/strip-limits/XLOR-B', undefined, {
      headers: { 'If-Match': `"${version}"` },
    });
    expect(status).toBe(202);
  });
});
