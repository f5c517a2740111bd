import { randomUUID } from 'node:crypto';
import type { ProjectionsAnswer } from '@drumline/contract';
import type { MorningAnswer } from '@drumline/contract/answers';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { counted, drawn } from '../stock/testing/movement-bodies.js';
import { type FlightDesk, openFlightDesk, setClock } from '../testing/flight-desk.js';

// Product.md, section 5: on Monday H2 is to draw 795 L at LOR for P3, and H1 450 L at ESK. It is Tuesday.
let desk: FlightDesk;
beforeAll(async () => {
  desk = await openFlightDesk();
});
afterAll(() => desk.server.close());

const notReported = async (place: string) =>
  (await desk.manager.get<ProjectionsAnswer>('/api/projections')).body.items.find(
    (each) => each.place === place,
  )!.notReported;
const report = async (body: object): Promise<void> => {
  const crew = await desk.server.as('helicopter crew');
  expect((await crew.put(`/api/movements/${randomUUID()}`, body)).status).toBe(200);
};
const at = (moment: string) => ({ happenedAt: moment, writtenAt: moment });

it('a draw planned on a day that is over is said until it is reported, or the place is counted', async () => {
  expect(await notReported('XLOR')).toEqual([]);
  const { body: listed } = await desk.manager.get<{ items: { number: string; content: string }[] }>(
    '/api/drums?place=XLOR',
  );
  const number = listed.items.find(({ content }) => content === 'filled sealed')!.number;
  await report({ ...drawn(number, 'XLOR', 150), ...at('2027-06-14T09:00Z'), into: 'H2', programme: 'P3' });
  await setClock(desk, '2027-06-15T06:53Z');

  expect(await notReported('XLOR')).toEqual([
    { date: '2027-06-14', place: 'XLOR', helicopter: 'H2', programme: 'P3', litres: 645 },
  ]);
  expect(await notReported('XESK')).toMatchObject([{ helicopter: 'H1', litres: 450 }]);
  const { body: morning } = await desk.manager.get<MorningAnswer>('/api/morning');
  expect(morning.notHeard.draws.map(({ place, litres }) => [place, litres])).toEqual(
    expect.arrayContaining([
      ['XLOR', 645],
      ['XESK', 450],
    ]),
  );
  expect(morning.fuel.find(({ place }) => place === 'XLOR')).toMatchObject({ notReportedLitres: 645 });

  await report({ ...counted('XESK', 1950), ...at('2027-06-15T06:50Z') });
  expect(await notReported('XESK')).toEqual([]);
});
