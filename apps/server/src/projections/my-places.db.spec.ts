import { randomUUID } from 'node:crypto';
import type { MyPlaces, ProjectionsAnswer } from '@drumline/contract';
import { openingStock, orderOfUse, projectCaches } from '@drumline/stock';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { counted, drawn, written } from '../stock/testing/movement-bodies.js';
import { type FlightDesk, openFlightDesk } from '../testing/flight-desk.js';

let desk: FlightDesk;
beforeAll(async () => {
  desk = await openFlightDesk();
  await desk.give('F01');
});
afterAll(() => desk.server.close());

const mine = async () =>
  (await (await desk.server.as('helicopter crew')).get<MyPlaces>('/api/my-places')).body;
const inOffice = async () => (await desk.manager.get<ProjectionsAnswer>('/api/projections')).body.items;
const report = async (body: object): Promise<string> => {
  const id = randomUUID();
  const crew = await desk.server.as('helicopter crew');
  const { status, body: said } = await crew.put(`/api/movements/${id}`, body);
  expect([status, said]).toEqual([200, expect.objectContaining({ outcome: 'in the ledger' })]);
  return id;
};
const onPhone = async () =>
  projectCaches((await mine()).outlook).map(({ place, book, usable }) => [place, usable, book]);
const asTheOfficeHasIt = async () =>
  (await inOffice()).map(({ place, projections: { approved } }) => [
    place,
    approved.usableLitres,
    approved.bookLitres,
  ]);

describe('the places of a helicopter crew, for its phone', () => {
  it('has the tasks and slings of its own helicopter, and what its drums are to be opened by', async () => {
    const places = await mine();
    expect(places.helicopter).toEqual(expect.objectContaining({ id: 'H1', drumsPerLift: 3 }));
    expect(places.tasks[0]).toMatchObject({
      date: '2027-06-14',
      programme: 'P1',
      place: 'XESK',
      litres: 450,
    });
    expect(new Set(places.tasks.map(({ helicopter }) => helicopter))).toEqual(new Set(['H1']));
    expect(places.slings.map(({ from, to, drums }) => [from, to, drums])).toContainEqual(['XESK', 'XMAR', 6]);
    const { picture } = places.outlook;
    const [first] = orderOfUse('XESK', picture, places.today);
    expect(first?.drum.number).toBeDefined();
  });

  it('the phone works out what the office shows, the approved flights with it', async () => {
    expect(await onPhone()).toEqual(await asTheOfficeHasIt());
  });

  it('also after a draw, a rejected drum, a medevac draw and a count, each reported by the crew itself', async () => {
    const { outlook, today } = await mine();
    const [first, second, third] = orderOfUse('XESK', outlook.picture, today).map(({ drum }) => drum.number);
    const before = openingStock(['XESK'], outlook.picture, today).get('XESK')!;
    const ids = [
      await report(drawn(first!, 'XESK', 50)),
      await report({
        kind: 'held',
        ...written('2027-06-14T06:09Z', 'phone'),
        of: { drum: second },
        reason: 'rejected before pumping: water found',
      }),
      await report(drawn(third!, 'XESK', 25, { medevac: 'fall at the ridge' })),
      await report(counted('XESK', before.bookLitres, { seenFrom: 'air', method: 'drums seen' })),
    ];
    const after = await mine();
    expect(after.known).toEqual(expect.arrayContaining(ids));
    const now = openingStock(['XESK'], { ...after.outlook.picture, asOf: after.at }, today).get('XESK')!;
    expect(now.usableLitres).toBe(before.usableLitres - 50 - 200 - 25);
    expect(await onPhone()).toEqual(await asTheOfficeHasIt());
  });

  it('a sling, and one that was dropped, may be reported by the crew', async () => {
    const { outlook, today } = await mine();
    const fit = orderOfUse('XESK', outlook.picture, today).filter(
      ({ fitness, drum }) => fitness === 'fit' && drum.content === 'filled sealed',
    );
    const [one, other] = fit.map(({ drum }) => drum.number);
    const at = written('2027-06-14T06:12Z', 'phone');
    await report({ kind: 'slung', ...at, drum: one, helicopter: 'H1', from: 'XESK', to: 'XMAR' });
    await report({ kind: 'lost', ...at, drum: other, place: 'XESK' });
    const then = (await mine()).outlook.picture.drums;
    expect(then.find(({ number }) => number === one)?.place).toBe('XMAR');
    expect(then.find(({ number }) => number === other)).toBeUndefined();
  });

  it('somebody who flies no helicopter has the caches and no tasks; a customer has nothing', async () => {
    const { body } = await desk.manager.get<MyPlaces>('/api/my-places');
    expect([body.helicopter, body.tasks, body.slings]).toEqual([null, [], []]);
    expect(body.outlook.caches.length).toBeGreaterThan(5);
    expect((await (await desk.server.as('field leader')).get('/api/my-places')).status).toBe(403);
  });
});
