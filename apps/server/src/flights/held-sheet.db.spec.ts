import { randomUUID } from 'node:crypto';
import type { LoadAnswer } from '@drumline/contract';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { type FlightDesk, openFlightDesk } from '../testing/flight-desk.js';

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
