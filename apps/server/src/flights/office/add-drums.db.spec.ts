import type { AddDrumsAnswer, LoadAnswer } from '@drumline/contract';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { Client } from '../../testing/client.js';
import { createTestServer, type TestServer } from '../../testing/create-test-server.js';
import type { Refusal, ShownFlight } from '../../testing/flight-desk.js';

let server: TestServer;
let [manager, dispatcher]: Client[] = [];
beforeAll(async () => {
  server = await createTestServer();
  manager = await server.as('operations manager');
  dispatcher = await server.as('dispatcher');
});
afterAll(() => server.close());

const isNew = { headers: { 'If-None-Match': '*' } };
const check = async (id: string, wanted: object) =>
  (await dispatcher!.post<AddDrumsAnswer>(`/api/booked-flights/${id}/drums/check`, wanted)).body;
const add = (id: string, wanted: object) =>
  dispatcher!.post<ShownFlight & Refusal>(`/api/booked-flights/${id}/drums`, wanted);

describe('two drums on X1, which carries 4 passengers', () => {
  it('are refused with the rule and its reference; X2, X3 and X5 could take some', async () => {
    const { faults, instead } = await check('X1', { place: 'XISK', drums: 2 });
    expect(faults.map(({ problem }) => problem)).toEqual([
      'XMER-XISK: 4 passengers and 2 drums are refused (demo operations manual, cargo, revision 2). Only an approval of the authority on file sets this aside.',
    ]);
    expect(instead.map(({ words }) => words)).toEqual(
      expect.arrayContaining([
        'X3 XMER-XHAS, 3 drums',
        expect.stringMatching(/^X2 XALD-XCIN/),
        expect.stringMatching(/^X5 XALD-XMER/),
      ]),
    );
    expect((await add('X1', { place: 'XISK', drums: 2 })).status).toBe(422);
  });
});

describe('drums on X3, which carries mail', () => {
  it('are offered with the oldest fit drums, and not twice', async () => {
    const { status, body } = await add('X3', { place: 'XHAS', drums: 3 });
    expect([status, body.state, body.stops]).toEqual([200, 'offered', [{ place: 'XHAS', drums: 3 }]]);
    expect(body.loads.every(({ drum }) => drum !== null)).toBe(true);
    expect((await add('X3', { place: 'XHAS', drums: 1 })).status).toBe(409);
  });
});

describe('an approval of the authority', () => {
  it('filed by two people and cited lets 2 drums fly beside 2 passengers; its number is on the sheet', async () => {
    await manager!.put('/api/booked-flights/X9', staffFlight, isNew);
    const wanted = { place: 'XCIN', drums: 2, approval: 'CA 17' };
    expect((await check('X9', wanted)).faults[0]?.problem).toContain('no approval CA 17 is on file');
    const filed = await manager!.put<{ proposal: { id: string } }>(
      '/api/authority-approvals/CA%2017',
      approval,
      isNew,
    );
    expect(filed.status).toBe(202);
    expect((await check('X9', wanted)).faults[0]?.problem).toContain('no approval CA 17 is on file');
    const second = await server.as('fuel quality');
    await second.put(`/api/proposals/${filed.body.proposal.id}/agreement`, undefined);
    expect((await check('X9', wanted)).faults).toEqual([]);
    expect((await check('X9', { ...wanted, drums: 3 })).faults[0]?.problem).toContain(
      'covers 2 drums at most',
    );
    const { body: booked } = await manager!.get<{ version: number }>('/api/booked-flights/X9');
    await manager!.change('/api/booked-flights/X9', booked.version, { ...staffFlight, approval: 'CA 17' });
    const added = await add('X9', { place: 'XCIN', drums: 2 });
    expect([added.status, added.body.faults]).toEqual([200, undefined]);
    const { body } = await dispatcher!.get<LoadAnswer>('/api/flights/X9/sheet');
    expect(body.why).toBeNull();
    expect(body.load!.sheet.legs[0]!.passengersAndDrums.words).toMatch(
      /by approval CA 17 of .*door side free/,
    );
    expect(body.load!.faults).toEqual([]);
  });
});

const empty = { passengers: 0, passengersKg: 0, freightKg: 0 };
const staffFlight = {
  id: 'X9',
  date: '2027-06-16',
  aircraft: 'B1',
  configuration: 'drums',
  purpose: 'field staff',
  legs: [
    { from: 'XALD', to: 'XCIN', passengers: 2, passengersKg: 180, freightKg: 0 },
    { from: 'XCIN', to: 'XALD', ...empty },
  ],
  heldHours: 3,
};
const approval = {
  number: 'CA 17',
  authority: 'civil aviation authority',
  scope: 'fuel drums beside field staff',
  legs: [['XALD', 'XCIN']],
  aircraft: ['B1'],
  mostDrums: 2,
  mostPassengers: 2,
  conditions: 'drums behind the passengers, door side free',
  from: '2027-06-01',
  until: '2027-09-30',
};
