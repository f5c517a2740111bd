import { randomUUID } from 'node:crypto';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { type FlightDesk, openFlightDesk, type Refusal } from '../../testing/flight-desk.js';
import { leftAt, loaded, written } from '../testing/movement-bodies.js';
import { signInNew } from '../testing/sign-in-new.js';
import type { HoldEffect } from './holds.service.js';
import type { Release } from './releases.service.js';
import type { StandingHold } from './standing-holds.service.js';

let desk: FlightDesk;
beforeAll(async () => {
  desk = await openFlightDesk();
});
afterAll(() => desk.server.close());

const effectOf = async (of: string): Promise<HoldEffect> =>
  (await desk.manager.get<HoldEffect>(`/api/holds/consequence?${of}`)).body;
const standing = async (): Promise<readonly StandingHold[]> =>
  (await desk.manager.get<{ items: StandingHold[] }>('/api/holds')).body.items;
const drumsOf = async (flight: string): Promise<readonly string[]> =>
  (await desk.flight(flight)).loads.flatMap(({ drum }) => drum ?? []);

describe('before a hold is set', () => {
  it('flights that have drums of the batch set aside are named, with a script to read out', async () => {
    const [drum] = await drumsOf('F01');
    const { flights, message } = await effectOf(`drum=${drum}`);
    expect(flights).toEqual([
      {
        flight: 'F01',
        state: 'offered',
        isAboard: false,
        numbers: [drum],
        radioScript: expect.stringMatching(`^F01: Drum ${drum} is held`),
      },
    ]);
    expect(message).toMatch(new RegExp(`^HOLD\\. Drum ${drum} is held, 200 L: X[A-Z]{3} 1\\.`));
  });

  it('a drum that is aboard is named with its flight once', async () => {
    const [, drum] = await drumsOf('F01');
    const { fromPlace } = await desk.flight('F01');
    const pilot = await desk.server.as('pilot');
    await pilot.put(`/api/movements/${randomUUID()}`, loaded(drum!, fromPlace, { flight: 'F01' }));
    expect((await effectOf(`drum=${drum}`)).flights).toMatchObject([
      { flight: 'F01', isAboard: true, numbers: [drum] },
    ]);
  });

  it('the message of a recall names every place with its drums, 44 in all', async () => {
    const { message } = await effectOf('batch=J27-041');
    expect(message).toMatch(/^HOLD\. Batch J27-041 is held, 8,\d00 L: /);
    for (const there of ['XALD', 'XESK 6', 'XLOR 6', 'XKNA 3', 'XMAR 3', 'XFAL 2'])
      expect(message).toContain(there);
  });
});

describe('a slip in the number of a recall', () => {
  const hold = (of: object, means: 'screen' | 'radio' = 'screen') =>
    desk.dispatcher.put<Refusal>(`/api/holds/${randomUUID()}`, {
      ...written('2027-06-14T06:00Z', means),
      of,
      reason: 'water found',
    });

  it('the letter O for a nought is asked back, with the batch that is meant; nothing is held', async () => {
    const { status, body } = await hold({ batch: 'J27-O41' });
    expect(status).toBe(422);
    expect(body.faults).toEqual([
      { path: 'of.batch', problem: 'there is no batch J27-O41.', remedy: 'Did you mean J27-041?' },
    ]);
    expect((await hold({ drum: '99999' })).status).toBe(422);
    expect(await standing()).toEqual([]);
  });

  it('said by radio it is kept: the drum may be one that the book has not seen', async () => {
    expect((await hold({ drum: '99999' }, 'radio')).status).toBe(200);
  });
});

describe('who has to hear of a hold', () => {
  it('everybody in the field with a device, before it is set', async () => {
    await (await desk.server.as('pilot')).onPhone();
    const { toHear } = await effectOf('batch=J27-041');
    expect(toHear.map(({ person }) => person)).toContain('Demo pilot');
    expect(toHear.map(({ person }) => person)).not.toContain('Demo dispatcher');
  });
});

describe('holds that stand', () => {
  it('are listed with who, why, drums and places, and can be asked who has not heard', async () => {
    const id = randomUUID();
    const hold = { ...written(), of: { batch: 'J26-118' }, reason: 'water found' };
    await desk.dispatcher.put(`/api/holds/${id}`, hold);
    const [found] = await standing();
    expect(found).toEqual({
      id,
      of: { batch: 'J26-118' },
      reason: 'water found',
      by: 'Demo dispatcher',
      at: hold.happenedAt,
      drums: 13,
      litres: 2460,
      places: ['XBIR', 'XDUN', 'XHAS', 'XJUN'],
    });
    expect((await desk.manager.get(`/api/holds/${found!.id}/not-heard`)).status).toBe(200);
  });

  it('one that a delivery report sets has no movement of its own', async () => {
    const [drum] = await drumsOf('F02');
    const { fromPlace, stops } = await desk.flight('F02');
    const pilot = await desk.server.as('pilot');
    const flight = { flight: 'F02' };
    await pilot.put(`/api/movements/${randomUUID()}`, loaded(drum!, fromPlace, flight));
    const broken = leftAt(drum!, stops[0]!.place, { ...flight, condition: 'seal broken' });
    await pilot.put(`/api/movements/${randomUUID()}`, broken);
    const found = (await standing()).find(({ of }) => 'drum' in of && of.drum === drum);
    expect(found).toMatchObject({ id: null, reason: 'seal broken', drums: 1, places: [stops[0]!.place] });
  });
});

describe('a hold that two people have released', () => {
  const release = async () =>
    (await desk.manager.get<{ release: Release | null }>('/api/holds/latest-release?batch=J27-041')).body
      .release;

  it('says by whom, and whom to call back: those who were told of it, each with a script', async () => {
    const of = { batch: 'J27-041' };
    const id = randomUUID();
    await desk.dispatcher.put(`/api/holds/${id}`, { ...written(), of, reason: 'water found' });
    for (const place of ['XKNA', 'XFAL']) await desk.dispatcher.put(`/api/holds/${id}/calls/${place}`, {});
    expect(await release()).toBeNull();
    const first = await desk.server.as('fuel quality');
    const second = await signInNew(desk.server, 'quality-two', 'fuel quality');
    const { body } = await first.put<{ proposal: { id: string; subject: string } }>(
      `/api/movements/${randomUUID()}`,
      { ...written('2027-06-14T06:04Z'), kind: 'released', of, reason: 'samples clear' },
    );
    expect(body.proposal.subject).toBe('release of batch J27-041');
    expect(await release()).toBeNull();
    await second.put(`/api/proposals/${body.proposal.id}/agreement`, {});
    const found = (await release())!;
    expect(found).toMatchObject({ by: ['Demo fuel quality', 'New quality-two'], reason: 'samples clear' });
    expect(found.callBack.map(({ called }) => called).toSorted()).toEqual(['XFAL', 'XKNA']);
    const [script] = found.callBack.flatMap(({ called, radioScript }) =>
      called === 'XKNA' ? [radioScript] : [],
    );
    expect(script).toMatch(
      /^XKNA: Batch J27-041 is released, its hold is over\. With you 3 drums may be used and loaded again: (\d{4}, ){2}\d{4}\. Read back the numbers\.$/,
    );
  });
});
