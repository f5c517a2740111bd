import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { checkFlights, type Scenario, type StandingFlight } from '@drumline/planning';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { theProgram } from '../../audit/audit.service.js';
import { rootFolder } from '../../config.js';
import { ScenariosService } from '../../scenarios/scenarios.service.js';
import type { Client } from '../../testing/client.js';
import { createTestServer, type TestServer } from '../../testing/create-test-server.js';
import { offeredFlights } from '../../testing/offered-flights.js';
import { BoardService } from '../board/board.service.js';
import type { Flight } from '../store/flight.table.js';

const forty = Array.from({ length: 40 }, (_, index) => String(index + 1).padStart(2, '0'));

/** The demo with forty aeroplanes and forty pilots more, and hands enough at the strip. */
const crowded = (demo: Scenario): Scenario => ({
  ...demo,
  places: demo.places.map((place) =>
    place.code === 'XLOR' ? { ...place, landingCapacityDrumsPerDay: 400 } : place,
  ),
  aircraft: [
    ...demo.aircraft,
    ...forty.map((number) => ({ tail: `T${number}`, type: 'A', home: 'XMER', absences: [] })),
  ],
  pilots: [
    ...demo.pilots,
    ...forty.map((number) => ({ ...demo.pilots[0]!, id: `FP${number}`, daysOff: [], flown: [] })),
  ],
});

const flights = (date: string, from: string): readonly Omit<StandingFlight, 'state'>[] =>
  forty.map((number) => ({
    id: `${from}${number}`,
    date,
    aircraft: `T${number}`,
    pilot: `FP${number}`,
    from: 'XMER',
    stops: [{ place: 'XLOR', drums: 1 }],
    to: 'XMER',
  }));

let server: TestServer;
let people: readonly Client[];
beforeAll(async () => {
  server = await createTestServer({ content: 'accounts' });
  const demo = JSON.parse(await readFile(join(rootFolder, 'seeds', 'hollowtarn.json'), 'utf8')) as Scenario;
  await server.app
    .get(ScenariosService)
    .import(crowded(demo), { dryRun: false, clock: 'document' }, theProgram);
  people = [await server.as('operations manager'), await server.as('dispatcher')];
  await offeredFlights(server, [...flights('2027-06-15', 'L'), ...flights('2027-06-17', 'D')]);
});
afterAll(() => server.close());

const allAtOnce = async (from: string, path: string, body: object) =>
  Promise.all(
    forty.map((number, index) =>
      people[index % people.length]!.post<{ faults?: { problem: string }[] }>(
        `/api/flights/${from}${number}/${path}`,
        body,
        { headers: { 'If-Match': '"1"' } },
      ),
    ),
  );

describe('forty people at once', () => {
  it('approve flights that together overfill a cache: exactly those that fit are approved', async () => {
    const { scenario } = await server.app.get(BoardService).read();
    const asked = flights('2027-06-15', 'L').map(
      (flight): StandingFlight => ({ ...flight, state: 'approved' }),
    );
    const fit = asked.findIndex((_, index) => checkFlights(scenario, asked.slice(0, index + 1)).length > 0);
    expect(fit).toBeGreaterThan(3);
    expect(fit).toBeLessThan(40);

    const answers = await allAtOnce('L', 'approve', {});
    const done = answers.filter(({ status }) => status === 200);
    const refused = answers.filter(({ status }) => status === 422);
    expect(done).toHaveLength(fit);
    expect(refused).toHaveLength(40 - fit);
    for (const { body } of refused)
      expect(body.faults?.[0]?.problem).toMatch(/would stand there|can be filled|would need/);
    const { body } = await people[0]!.get<{ items: Flight[] }>('/api/flights?state=approved&limit=500');
    expect(body.items).toHaveLength(fit);
  }, 120_000);

  it('put one drum on forty flights: exactly one carries it', async () => {
    const [{ number } = { number: '' }] = (await server.app.get(BoardService).read()).scenario.drums
      .filter(({ place, content }) => place === 'XMER' && content === 'filled sealed')
      .slice(-1);
    const answers = await allAtOnce('D', 'amend', {
      stops: [{ place: 'XLOR', drums: 1, numbers: [number] }],
    });
    expect(answers.filter(({ status }) => status === 200)).toHaveLength(1);
    const rows: unknown[] = await server.database.query('select * from flight_loads where drum = $1', [
      number,
    ]);
    expect(rows).toHaveLength(1);
  }, 120_000);
});
