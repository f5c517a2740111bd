import type { CardAnswer, PlanDifferencesAnswer, ProjectionsAnswer, WeekAnswer } from '@drumline/contract';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { type FlightDesk, openFlightDesk } from '../testing/flight-desk.js';
import { solvedRun } from '../testing/hand-plan.js';

let desk: FlightDesk;
beforeAll(async () => {
  desk = await openFlightDesk();
});
afterAll(() => desk.server.close());

const read = async <T>(path: string): Promise<T> => (await desk.dispatcher.get<T>(path)).body;
const week = () => read<WeekAnswer>('/api/week');

// The hand plan flies F01 to F16; F15 and F16 are on Mon 21, after the seven days whose flights are offered.
describe('one rule for levels: with approved and offered flights, later ideas not counted', () => {
  it('a cache has the same lowest level on Week, Caches and Differences', async () => {
    const caches = await read<ProjectionsAnswer>('/api/projections');
    const onCaches = caches.items.map(({ place, projections }) => [place, projections.offered.lowest.litres]);
    const id = await solvedRun(desk.server);
    const { lowest } = await read<PlanDifferencesAnswer>(`/api/plans/${id}/differences`);
    expect(lowest.map(({ place, beforeLitres }) => [place, beforeLitres])).toEqual(onCaches);
    // The plan offers the same flights once more.
    expect(lowest.map(({ place, afterLitres }) => [place, afterLitres])).toEqual(onCaches);
    const { ifDeclined } = await read<CardAnswer>('/api/flights/F09/card');
    const onCard = ifDeclined!.caches.map(({ place, withIt }) => [place, withIt.lowestLitres]);
    expect(onCard).toEqual(onCaches.filter(([place]) => place === 'XISK'));
  });

  it('each says how many ideas it does not count, and Differences what they would make of it', async () => {
    const id = await solvedRun(desk.server);
    const { laterIdeas, lowest } = await read<PlanDifferencesAnswer>(`/api/plans/${id}/differences`);
    expect(laterIdeas).toEqual({ before: 2, after: 2 });
    expect((await read<ProjectionsAnswer>('/api/projections')).laterIdeas).toBe(2);
    expect((await week()).plan).toMatchObject({ flights: 16, laterIdeas: 2 });
    // F15 takes 4 drums to XISK and F16 4 to XKNA.
    const helped = lowest.filter(({ withIdeas, afterLitres }) => withIdeas.afterLitres > afterLitres);
    expect(helped.map(({ place }) => place)).toEqual(['XISK', 'XKNA']);
  });
});

describe('whether the plan still stands as it was accepted', () => {
  const isAsAccepted = async () => (await week()).plan!.isAsAccepted;

  it('is said by the server: an approval changes nothing of it, a flight called off does', async () => {
    expect(await isAsAccepted()).toBe(true);
    await desk.act(desk.dispatcher, 'F12', 'approve');
    expect(await isAsAccepted()).toBe(true);
    await desk.act(desk.dispatcher, 'F12', 'call-off', { reason: 'cloud on the pass' });
    expect(await isAsAccepted()).toBe(false);
  });
});
