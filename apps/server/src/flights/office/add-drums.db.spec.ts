import type { BookedLoadAnswer, LoadAnswer } from '@drumline/contract';
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
const look = async (id: string, asked: Readonly<Record<string, string | number>> = {}) => {
  const query = new URLSearchParams(Object.entries(asked).map(([name, value]) => [name, String(value)]));
  return (await dispatcher!.get<BookedLoadAnswer>(`/api/booked-flights/${id}/load?${query}`)).body;
};
const add = (id: string, wanted: object) =>
  dispatcher!.post<ShownFlight & Refusal>(`/api/booked-flights/${id}/drums`, wanted);

describe('two drums on X1, which carries 4 passengers', () => {
  it('are refused with the rule and its reference; X2, X3 and X5 could take some', async () => {
    const { faults, instead } = await look('X1', { place: 'XISK', drums: 2 });
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

describe('before anybody adds drums', () => {
  it('X1 is shown with its passengers by leg, and none goes beside them, by the rule', async () => {
    const { asked, planned, legs, landings, notKnown, cost } = await look('X1');
    expect(asked).toEqual({ place: 'XISK', drums: 0 });
    expect(planned!.bars[0]!.load.map(({ name, kg }) => `${name}, ${Math.round(kg)} kg`)).toEqual([
      '4 passengers, 360 kg',
      'freight, 120 kg',
    ]);
    const rule =
      'XMER-XISK: 4 passengers and 1 drum are refused (demo operations manual, cargo, revision 2).';
    expect([legs[0]!.drums, landings.map(({ drums }) => drums)]).toEqual([0, [0]]);
    for (const { by } of [legs[0]!, landings[0]!]) expect(by).toContain(rule);
    expect(notKnown[0]).toBe('XMER-XISK: balance not checked: the seats of the passengers are not given.');
    expect(cost).toBeNull();
  });

  // The demo's own figure for X3 (`already_planned_flights`): 3 drums of spare payload outward.
  it('X3 is shown with the 3 that it takes, the strip limit that keeps off a fourth, and what follows', async () => {
    const { asked, planned, drawn, legs, landings, stand, cost, caches, faults } = await look('X3');
    expect([asked, drawn, faults]).toEqual([{ place: 'XHAS', drums: 3 }, 3, []]);
    expect(legs).toEqual([
      { from: 'XMER', to: 'XHAS', drums: 3, by: 'XHAS strip landing limit' },
      { from: 'XHAS', to: 'XMER', drums: 5, by: 'drum positions' },
    ]);
    expect(landings).toEqual([{ place: 'XHAS', drums: 3, by: 'XHAS strip landing limit' }]);
    const [out] = planned!.bars;
    expect(out!.load).toMatchObject([{ name: '3 drums', kg: 540, isDrum: true }, { name: 'freight' }]);
    expect(out!.relax).toMatch(/^A 4th drum takes 92 lb more under XHAS strip landing limit/);
    expect(stand).toEqual({ base: 'XMER', free: 24, take: ['0523', '0524', '0525'], toFill: 0 });
    // 600 L at 2.45 cr, three times 9 cr for handling, and nothing for a flight that flies anyway (S1).
    expect(cost).toMatchObject({ flight: 0, fuel: 147_000, handling: 2_700 });
    expect(caches.map(({ place, withIt, without }) => [place, withIt.endLitres - without.endLitres])).toEqual(
      [['XHAS', 600]],
    );
  });

  it('a fourth is refused by its limits with their pounds, and the picture stays at what stands aboard', async () => {
    const fourth = await look('X3', { place: 'XHAS', drums: 4 });
    expect([fourth.drawn, fourth.cost, fourth.caches]).toEqual([3, null, []]);
    expect(fourth.faults.map(({ problem }) => problem)).toContainEqual(
      expect.stringMatching(
        /^XHAS accepts 6,900 lb landing; this load lands at 6,99\d lb at 180 kg a drum\.$/,
      ),
    );
    expect((await look('X3', { place: 'XHAS', drums: 30 })).stand.toFill).toBe(6);
  });

  it('whoever sees the programme sees it; a storekeeper does not', async () => {
    const engineer = await server.as('engineering');
    expect((await engineer.get('/api/booked-flights/X3/load')).status).toBe(200);
    const storekeeper = await server.as('storekeeper');
    expect((await storekeeper.get('/api/booked-flights/X3/load')).status).toBe(403);
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
    expect((await look('X9', wanted)).faults[0]?.problem).toContain('no approval CA 17 is on file');
    const filed = await manager!.put<{ proposal: { id: string } }>(
      '/api/authority-approvals/CA%2017',
      approval,
      isNew,
    );
    expect(filed.status).toBe(202);
    expect((await look('X9', wanted)).faults[0]?.problem).toContain('no approval CA 17 is on file');
    const second = await server.as('fuel quality');
    await second.put(`/api/proposals/${filed.body.proposal.id}/agreement`, undefined);
    expect((await look('X9', wanted)).faults).toEqual([]);
    expect((await look('X9', { ...wanted, drums: 3 })).faults[0]?.problem).toContain(
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
