import { randomUUID } from 'node:crypto';
import type { CardAnswer, ProjectionAnswer } from '@drumline/contract';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { signInNew } from '../../stock/testing/sign-in-new.js';
import type { Client } from '../../testing/client.js';
import { type FlightDesk, openFlightDesk, type ShownFlight } from '../../testing/flight-desk.js';

let desk: FlightDesk;
let quality: readonly [Client, Client];
/** Flights of the week, by number. */
let before: ReadonlyMap<string, ShownFlight>;
beforeAll(async () => {
  desk = await openFlightDesk();
  quality = [
    await desk.server.as('fuel quality'),
    await signInNew(desk.server, 'quality-two', 'fuel quality'),
  ];
  await desk.give('F01');
  await desk.act(desk.dispatcher, 'F05', 'approve');
  before = await week();
});
afterAll(() => desk.server.close());

const week = async (): Promise<ReadonlyMap<string, ShownFlight>> => {
  const { body } = await desk.manager.get<{ items: { id: string }[] }>('/api/flights?limit=500');
  const all = await Promise.all(body.items.map(({ id }) => desk.flight(id)));
  return new Map(all.map((flight) => [flight.id, flight]));
};
const batchOf = async (drum: string): Promise<string> =>
  (await desk.manager.get<{ batch: string }>(`/api/drums/${drum}`)).body.batch;
const withBatch = async (batch: string): Promise<string[]> => {
  const found = await Promise.all(
    [...before.values()].map(async ({ id, loads }) => {
      const batches = await Promise.all(loads.flatMap(({ drum }) => (drum === null ? [] : [batchOf(drum)])));
      return batches.includes(batch) ? [id] : [];
    }),
  );
  return found.flat().sort();
};
const marked = async (): Promise<string[]> =>
  [...(await week()).values()].filter(({ needsDecision }) => needsDecision !== null).map(({ id }) => id);

const at = (minute: string) => ({
  happenedAt: `2027-06-14T06:${minute}Z`,
  writtenAt: `2027-06-14T06:${minute}Z`,
  means: 'screen',
});
const hold = (of: object, minute = '00') =>
  desk.manager.put(`/api/movements/${randomUUID()}`, { kind: 'held', ...at(minute), of, reason: 'water' });
const release = async (of: object, minute: string) => {
  const body = { kind: 'released', ...at(minute), of, reason: 'sample is dry' };
  const asked = await quality[0].put<{ proposal: { id: string } }>(`/api/movements/${randomUUID()}`, body);
  return quality[1].put(`/api/proposals/${asked.body.proposal.id}/agreement`, {});
};

describe('a hold of a batch', () => {
  it('marks every flight with a drum of it, at once and with the drums; the others stay as they are', async () => {
    const ids = await withBatch('J27-041');
    expect(ids.length).toBeGreaterThan(1);
    expect(ids.length).toBeLessThan(before.size);
    expect((await hold({ batch: 'J27-041' })).status).toBe(200);
    expect(await marked()).toEqual(ids);
    const one = await desk.flight(ids[0]!);
    expect(one.needsDecision).toMatch(/^Batch J27-041 is held: water\. Set aside for it: (\d{4}, )*\d{4}\.$/);
    expect(one.version).toBe(before.get(one.id)!.version);
    const [audit] = (await desk.manager.get<{ items: { did: string; person: string }[] }>('/api/audit')).body
      .items;
    expect(audit).toMatchObject({ did: 'marked', person: 'operations-manager' });
  });

  it('litres of held drums are in no level: delivery and card say so alike', async () => {
    const [id] = await marked();
    const { stops, loads } = await desk.flight(id!);
    const { place, drums } = stops[0]!;
    const picked = loads.flatMap(({ drum }) => (drum === null ? [] : [drum]));
    const batches = await Promise.all(picked.map(batchOf));
    const heldDrums = batches.filter((batch) => batch === 'J27-041').length;
    const { body } = await desk.manager.get<ProjectionAnswer>(`/api/projections/${place}`);
    expect(body.deliveries.find(({ flight }) => flight === id)).toMatchObject({
      drums,
      heldDrums,
      litres: (drums - heldDrums) * body.fillLitres,
    });
    const { body: card } = await desk.manager.get<CardAnswer>(`/api/flights/${id}/card`);
    expect(card.today!.planned.stops[0]).toMatchObject({ drums, heldDrums });
    expect(card.today!.planned.reason.text).toContain('on HOLD');
  });

  it('keeps such a flight from being given, and from being kept as it is', async () => {
    const [id] = await marked();
    const kept = await desk.act(desk.dispatcher, id!, 'keep', { reason: 'it will be dry' });
    expect([kept.status, kept.body.faults[0]?.problem]).toEqual([422, 'It is held: water.']);
  });

  it('of the same batch again changes nothing; the release takes the marks away', async () => {
    const ids = await marked();
    const revisions = await Promise.all(ids.map(async (id) => (await desk.flight(id)).revision));
    await hold({ batch: 'J27-041' }, '01');
    expect(await Promise.all(ids.map(async (id) => (await desk.flight(id)).revision))).toEqual(revisions);
    expect((await release({ batch: 'J27-041' }, '02')).status).toBe(200);
    expect(await marked()).toEqual([]);
    expect((await desk.flight(ids[0]!)).loads).toEqual(before.get(ids[0]!)!.loads);
  });
});

describe('a hold of one drum', () => {
  it('on a flight that needs a decision already says both, and the release leaves what was there', async () => {
    const { loads } = await desk.flight('F01');
    await desk.act(desk.dispatcher, 'F01', 'mark', { reason: 'Strip helper is sick.' });
    const [first, second] = loads.flatMap(({ drum }) => drum ?? []);
    await hold({ drum: first }, '03');
    expect((await desk.flight('F01')).needsDecision).toBe(
      `Drum ${first} is held: water. Strip helper is sick.`,
    );
    await hold({ drum: second }, '04');
    await release({ drum: first }, '05');
    expect((await desk.flight('F01')).needsDecision).toBe(
      `Drum ${second} is held: water. Strip helper is sick.`,
    );
    await release({ drum: second }, '06');
    expect((await desk.flight('F01')).needsDecision).toBe('Strip helper is sick.');
  });

  it('by a crew that finds a seal broken marks the flight that was to take it', async () => {
    const flight = await desk.flight('F05');
    const [drum] = flight.loads.flatMap((each) => each.drum ?? []);
    const pilot = await desk.server.as('pilot');
    await pilot.put(`/api/movements/${randomUUID()}`, {
      kind: 'left at',
      ...at('07'),
      drum,
      place: 'XALD',
      flight: 'F77',
      leg: 1,
      condition: 'seal broken',
      foundMillilitres: null,
    });
    expect((await desk.flight('F05')).needsDecision).toBe(`Drum ${drum} is held: seal broken.`);
  });

  it('that somebody takes off the flight leaves no mark behind for the release to find', async () => {
    const { body } = await desk.act(desk.dispatcher, 'F05', 'amend', {});
    expect([body.needsDecision, body.holdMark]).toEqual([null, null]);
  });
});

describe('a hold and a loading at the same moment', () => {
  it('do not wait for each other: either the drum is held first and stays, or it is aboard and the hold says so', async () => {
    const flight = await desk.give('F02');
    const drums = flight.loads.flatMap(({ drum, place }) =>
      drum === null ? [] : [{ movement: randomUUID(), drum, to: place }],
    );
    const [loaded, held] = await Promise.all([
      desk.report(desk.dispatcher, 'F02', 'load', {
        version: flight.version,
        totals: {
          load: { bySheetLb: 1980, byHandLb: 1980 },
          takeOff: { bySheetLb: 6400, byAircraftLb: 6400 },
        },
        drums,
      }),
      hold({ drum: drums[0]!.drum }, '08'),
    ]);
    expect(held.status).toBe(200);
    expect([200, 409, 422]).toContain(loaded.status);
    const after = await desk.flight('F02');
    expect(after.state === 'loaded' || after.needsDecision !== null).toBe(true);
  });
});
