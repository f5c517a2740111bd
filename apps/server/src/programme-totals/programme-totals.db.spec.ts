import { randomUUID } from 'node:crypto';
import type { ProgrammeTotalsAnswer } from '@drumline/contract';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { drawn, leftAt, loaded } from '../stock/testing/movement-bodies.js';
import { type FlightDesk, openFlightDesk } from '../testing/flight-desk.js';

let desk: FlightDesk;
beforeAll(async () => {
  desk = await openFlightDesk();
});
afterAll(() => desk.server.close());

const june = 'from=2027-06-01&until=2027-06-30';
const totals = async (days = june) =>
  (await desk.manager.get<ProgrammeTotalsAnswer>(`/api/programme-totals?${days}`)).body.items;
const totalOf = async (code: string, days = june) =>
  (await totals(days)).find(({ programme }) => programme === code)!;
const report = async (body: object): Promise<string> => {
  const id = randomUUID();
  const crew = await desk.server.as('helicopter crew');
  expect((await crew.put(`/api/movements/${id}`, body)).status).toBe(200);
  return id;
};
const sealedAt = async (place: string): Promise<string> => {
  const { body } = await desk.manager.get<{ items: { number: string; content: string }[] }>(
    `/api/drums?place=${place}`,
  );
  return body.items.find(({ content }) => content === 'filled sealed')!.number;
};

describe('the month of the programmes', () => {
  it('what is planned is the sum of the tasks, and nothing is flown yet', async () => {
    const p2 = await totalOf('P2');
    // By the seed: 4.0, 2.0, 2.0, 4.0, 3.0, 1.0 and 3.5 h.
    expect(p2).toMatchObject({
      plannedHours: 19.5,
      plannedLitres: 2185,
      flownHours: 0,
      drawnLitres: 0,
      charged: 0,
    });
  });

  it('litres are those of the ledger, at an agreed price or none; a draw that is taken back is none', async () => {
    await report(drawn(await sealedAt('XESK'), 'XESK', 100, { programme: 'P2' }));
    const wrong = await report(drawn(await sealedAt('XESK'), 'XESK', 40, { programme: 'P2' }));
    expect(await totalOf('P2')).toMatchObject({ drawnLitres: 140, charged: 140 * 520 });
    const at = { happenedAt: '2027-06-14T06:10Z', writtenAt: '2027-06-14T06:10Z', means: 'screen' };
    await report({ kind: 'corrected', ...at, corrects: wrong, reason: 'wrong programme' });
    const p2 = await totalOf('P2');
    expect(p2).toMatchObject({ drawnLitres: 100, charged: 52_000 });
    expect(p2.flownHours).toBeCloseTo(100 / 112, 5);
    expect((await totalOf('P2', 'from=2027-07-01&until=2027-07-31')).drawnLitres).toBe(0);
  });

  it('at delivered cost a litre costs what its drum’s flight cost, with the margin; fuel that stood there has none', async () => {
    const flight = await desk.give('F05');
    const drum = flight.loads.find((load) => load.drum !== null)!.drum!;
    await report(loaded(drum, flight.fromPlace));
    await report(leftAt(drum, 'XLOR'));
    await report(drawn(drum, 'XLOR', 200, { programme: 'P1' }));
    await report(drawn(await sealedAt('XISK'), 'XISK', 30, { programme: 'P1' }));
    const perLitre = flight.planned.cost.perLitre!;
    // Product.md, S7: F05 is 3.59 cr/L.
    expect(perLitre / 100).toBeCloseTo(3.59, 1);
    expect(await totalOf('P1')).toMatchObject({
      drawnLitres: 230,
      litresWithoutCost: 30,
      charged: Math.round(200 * perLitre * 1.08),
    });
  });

  it('is the office’s: no crew and no customer reads it, and days are days', async () => {
    for (const role of ['pilot', 'field leader'] as const) {
      const who = await desk.server.as(role);
      expect((await who.get(`/api/programme-totals?${june}`)).status).toBe(403);
    }
    expect((await desk.manager.get('/api/programme-totals?from=June&until=July')).status).toBe(400);
  });
});
