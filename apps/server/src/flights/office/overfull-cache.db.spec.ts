import { randomUUID } from 'node:crypto';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { Page } from '../../http/page.js';
import type { RaisedNow } from '../../stock/raised/raised.service.js';
import { leftAt } from '../../stock/testing/movement-bodies.js';
import { type FlightDesk, openFlightDesk } from '../../testing/flight-desk.js';

let desk: FlightDesk;
beforeAll(async () => {
  desk = await openFlightDesk();
  const { dispatcher } = desk;
  const { body } = await dispatcher.get<{ items: { number: string }[] }>('/api/drums?place=XALD&limit=13');
  const outbox = body.items.map(({ number }) => ({
    id: randomUUID(),
    movement: leftAt(number, 'XDUN', { means: 'radio' }),
  }));
  expect(outbox).toHaveLength(13);
  const answers = await dispatcher.post<{ outcome: string }[]>('/api/movements', outbox);
  expect(answers.status).toBe(200);
});
afterAll(() => desk.server.close());

describe('21 drums on a site for 20', () => {
  it('are accepted and raised', async () => {
    const { body } = await desk.dispatcher.get<Page<RaisedNow>>('/api/raised');
    expect(body.items.filter(({ kind }) => kind === 'over capacity')).toEqual([
      expect.objectContaining({
        place: 'XDUN',
        what: 'XDUN holds fuel for 21 drums; its capacity is 20.',
      }),
    ]);
  });

  it.each([
    '/api/week',
    '/api/morning',
    '/api/pick-lists',
    '/api/fill-lists',
    '/api/projections',
    '/api/flights',
    '/api/flights/away',
    '/api/flights/F01/card',
    '/api/flights/F01/sheet',
    '/api/scenario',
    '/api/scenario/missing',
    '/api/csv/drums',
    '/api/stock/XDUN',
  ])('and %s answers', async (path) => {
    expect((await desk.manager.get(path)).status).toBe(200);
  });

  it('and a flight elsewhere is approved and given; a plan can be asked for', async () => {
    expect((await desk.give('F01')).state).toBe('given');
    const ask = { endTarget: 'operator', seconds: 1, seed: 7 };
    expect((await desk.manager.put(`/api/plans/${randomUUID()}`, ask)).status).toBe(202);
  });

  it('and its pilot reads the day', async () => {
    const pilot = await desk.crewOf('F01');
    expect((await pilot.get('/api/my-day')).status).toBe(200);
  });
});
