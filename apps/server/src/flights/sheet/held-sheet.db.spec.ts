import { randomUUID } from 'node:crypto';
import type { LoadAnswer } from '@drumline/contract';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { type FlightDesk, openFlightDesk } from '../../testing/flight-desk.js';

let desk: FlightDesk;
beforeAll(async () => {
  desk = await openFlightDesk();
  await desk.give('F01');
});
afterAll(() => desk.server.close());

const sheetOf = async (id: string) =>
  (await desk.dispatcher.get<LoadAnswer>(`/api/flights/${id}/sheet`)).body.load!;

it('a hold stands on the load sheet at each of its drums and in the bar, before anybody has decided', async () => {
  const before = await sheetOf('F01');
  expect(before.sheet.heldWords).toBeNull();
  const { batch } = before.sheet.drums[0]!;
  const minute = '2027-06-14T06:00Z';
  const held = await desk.manager.put(`/api/movements/${randomUUID()}`, {
    ...{ kind: 'held', happenedAt: minute, writtenAt: minute, means: 'screen' },
    ...{ of: { batch }, reason: 'water' },
  });
  expect(held.status).toBe(200);
  const { sheet, bars } = await sheetOf('F01');
  const numbers = sheet.drums.filter((drum) => drum.batch === batch).map(({ number }) => number);
  expect(sheet.drums.filter(({ onHold }) => onHold).map(({ number }) => number)).toEqual(numbers);
  expect(sheet.heldWords).toBe(`Batch ${batch} is held: water. Aboard: ${numbers.join(', ')}.`);
  expect(sheet.checkCode).not.toBe(before.sheet.checkCode);
  const inBar = bars[0]!.load.filter(({ onHold }) => onHold).map(({ name }) => name);
  expect(inBar.toSorted()).toEqual(numbers.toSorted());
});

it('as many fit drums of its base, the oldest first, are offered in their place, and one amendment takes them', async () => {
  const answer = async () => (await desk.dispatcher.get<LoadAnswer>('/api/flights/F01/sheet')).body;
  // Every other drum of the base is on an offered flight: none is free, and it says on which.
  const { route, insteadOfHeld: none } = await answer();
  expect(none!.fit).toEqual([]);
  const { body } = await desk.dispatcher.get<{ items: { id: string; state: string }[] }>(
    '/api/flights?limit=500',
  );
  const offered = body.items.flatMap(({ id, state }) => (state === 'offered' ? [id] : []));
  expect(none!.setAside.length).toBeGreaterThan(0);
  expect(offered).toEqual(expect.arrayContaining(none!.setAside.map(({ flight }) => flight)));
  for (const { flight, drums } of none!.setAside) {
    const ofBase = (await desk.dispatcher.get<LoadAnswer>(`/api/flights/${flight}/sheet`)).body;
    expect(ofBase.route[0]).toBe(route[0]);
    expect(drums).toBeLessThanOrEqual(ofBase.stops.flatMap((stop) => stop.drums).length);
  }
  for (const id of offered) await desk.act(desk.dispatcher, id, 'decline', { reason: 'weather' });
  const { load, insteadOfHeld } = await answer();
  const { held, fit, setAside, stops } = insteadOfHeld!;
  expect(setAside).toEqual([]);
  const onHold = load!.sheet.drums.filter((drum) => drum.onHold).map(({ number }) => number);
  expect(held.toSorted()).toEqual(onHold.toSorted());
  expect(fit).toHaveLength(held.length);
  const amended = await desk.act(desk.dispatcher, 'F01', 'amend', { stops });
  expect([amended.status, amended.body.faults]).toEqual([200, undefined]);
  const after = await answer();
  expect([after.load!.sheet.heldWords, after.insteadOfHeld, after.needsDecision]).toEqual([null, null, null]);
  expect(after.load!.sheet.drums.map(({ number }) => number)).toEqual(expect.arrayContaining([...fit]));
});
