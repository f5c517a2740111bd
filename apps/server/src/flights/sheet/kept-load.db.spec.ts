import { randomUUID } from 'node:crypto';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { type FlightDesk, openFlightDesk } from '../../testing/flight-desk.js';

let desk: FlightDesk;
beforeAll(async () => {
  desk = await openFlightDesk();
});
afterAll(() => desk.server.close());

const whereIs = async (drum: string): Promise<object> =>
  (await desk.manager.get<{ where: object }>(`/api/drums/${drum}`)).body.where;

it('kept loading: reported on a phone and not entered at base, its drums are aboard once the flight is off', async () => {
  const flight = await desk.give('F05');
  const crew = await desk.crewOf('F05');
  const set = flight.loads.flatMap(({ drum, place }) => (drum === null ? [] : [{ drum, place }]));
  const stays = set[0]!.drum;
  const other = (await desk.flight('F08')).loads[0]!.drum!;
  const aboard = [...set.slice(1).map(({ drum }) => drum), other];
  const drums = aboard.map((drum) => ({ movement: randomUUID(), drum, to: set[0]!.place }));
  const totals = {
    load: { bySheetLb: 2378, byHandLb: 2378 },
    takeOff: { bySheetLb: 8528, byAircraftLb: 8168 },
  };
  const kept = await desk.report(crew, 'F05', 'load', {
    ...{ means: 'phone', version: flight.version, totals, drums, allTheSame: true },
  });
  expect([kept.status, kept.body.entered, kept.body.flight.state]).toEqual([200, false, 'given']);
  expect(await whereIs(other)).toMatchObject({ kind: 'at' });

  const off = await desk.report(crew, 'F05', 'take off', { means: 'phone' });
  expect([off.status, off.body.flight.state]).toEqual([200, 'away']);
  for (const drum of aboard) expect(await whereIs(drum)).toMatchObject({ kind: 'aboard', flight: 'F05' });
  expect(await whereIs(stays)).toMatchObject({ kind: 'at' });
  expect(off.body.flight.loads.map(({ drum }) => drum).sort()).toEqual([...aboard].sort());

  const left = await crew.put(`/api/movements/${randomUUID()}`, {
    ...{ kind: 'left at', flight: 'F05', leg: 1, place: set[0]!.place, drum: other, condition: 'sound' },
    ...{
      foundMillilitres: null,
      happenedAt: '2027-06-14T06:02Z',
      writtenAt: '2027-06-14T06:02Z',
      means: 'phone',
    },
  });
  expect((left.body as { raised: readonly { kind: string }[] }).raised.map(({ kind }) => kind)).toEqual([]);
});
