import type { LoadAnswer } from '@drumline/contract';
import type { ParticularsSet, TieDownSetting } from '@drumline/loading';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { Client } from '../../testing/client.js';
import { type FlightDesk, openFlightDesk } from '../../testing/flight-desk.js';

let desk: FlightDesk;
let quality: Client;
let setUp: Client;
beforeAll(async () => {
  desk = await openFlightDesk();
  [quality, setUp] = [await desk.server.as('fuel quality'), await desk.server.as('set-up')];
});
afterAll(() => desk.server.close());

interface Refused {
  readonly faults?: readonly { readonly path: string; readonly remedy: string }[];
  readonly proposal?: { readonly id: string };
}

const sheetOf = async (id: string) =>
  (await desk.dispatcher.get<LoadAnswer>(`/api/flights/${id}/sheet`)).body.load!.sheet;
const kept = async <Data>(path: string) =>
  (await desk.manager.get<{ version: number; data: Data }>(path)).body;
const agree = async ({ body }: { body: Refused }, ...people: readonly Client[]) => {
  for (const person of people)
    expect((await person.put(`/api/proposals/${body.proposal!.id}/agreement`, {})).status).toBe(200);
};
const rated = (ultimateLb: number) => ({
  figure: 'ultimate load in an aircraft',
  ultimateLb,
  reference: 'invented approval 1',
});
const forB = (strap: object) => ({
  type: 'B',
  factors: { forward: 9, aft: 2, sideways: 2, up: 4, reference: 'invented loading manual 7' },
  kit: {
    strap,
    fitting: rated(4000),
    floorRing: rated(1500),
    angles: { aboveFloorDeg: 30, offAxisDeg: 30 },
  },
});

describe('tie-down, as the operator cites it', () => {
  it('is counted by the one for every type, and by a type’s own: A by the ring, C by the fitting', async () => {
    const [a, c] = [(await sheetOf('F06')).tieDown!, (await sheetOf('F04')).tieDown!];
    // 397 lb: 9 x 397 = 3,573 lb by rings of 2,000 lb at 0.75 is 2.4 straps, by fittings of 4,000 lb 1.2.
    expect(a.counted).toMatchObject({ deciding: { part: 'floor ring' }, layout: { forwardStraps: 4 } });
    expect(c.counted).toMatchObject({ deciding: { part: 'fitting' }, layout: { forwardStraps: 2 } });
    expect(a.words).toMatch(/^Each drum: Straps for 39\d lb: 3 forward, 1 aft, 1 to each side, 2 up/);
    expect(a.caution).toContain('approved loading manual decides');
  });

  it('a road working load is refused where it is written, with what to give in its place', async () => {
    const road = { figure: 'working load for the road', workingLoadLb: 3335 };
    const { status, body } = await setUp.make<Refused>('/api/tie-down/B', forB(road));
    expect([status, body.faults?.map(({ path }) => path)]).toEqual([422, ['kit.strap.figure']]);
    expect(body.faults![0]!.remedy).toContain('give the ultimate load and the document');
  });

  it('is drafted by set-up, and stands when two people have agreed', async () => {
    const drafted = await setUp.make<Refused>('/api/tie-down/B', forB(rated(5000)));
    expect(drafted.status).toBe(202);
    await agree(drafted, desk.manager);
    expect((await sheetOf('F05')).tieDown!.words).toContain('2,000 lb');
    await agree(drafted, quality);
    expect((await sheetOf('F05')).tieDown!.words).toContain('The floor ring decides: 1,500 lb');
  });

  it('of a type that nobody flies is refused by its field', async () => {
    const { body } = await desk.manager.make<Refused>('/api/tie-down/Z', { ...forB(rated(5000)), type: 'Z' });
    expect(body.faults?.map(({ path }) => path)).toEqual(['type']);
  });

  it('taken out: the sheet says what is missing and where it is entered', async () => {
    for (const id of ['every type', 'B']) {
      const path = `/api/tie-down/${encodeURIComponent(id)}`;
      const { version } = await kept<TieDownSetting>(path);
      const headers = { 'If-Match': `"${version}"` };
      await agree(await desk.manager.send<Refused>('DELETE', path, undefined, { headers }), quality);
    }
    const { counted, words, caution } = (await sheetOf('F05')).tieDown!;
    expect(counted).toBeNull();
    expect(words).toContain(
      'no load factors, straps, fittings and floor rings for type B. Set-up, Tie-down.',
    );
    expect(caution).toContain('approved loading manual decides');
  });
});

describe('particulars of dangerous goods', () => {
  const path = '/api/dangerous-goods/current';

  it('are the operator’s own fields in its own order, once two people have agreed', async () => {
    const { version, data } = await kept<ParticularsSet>(path);
    const own = {
      ...data,
      emergencyContact: 'tower 1',
      fields: [
        { label: 'Call first', value: { from: 'emergency contact' } },
        { label: 'Number', value: { text: 'UN 1863' } },
        { label: 'Checked by', value: 'written by hand' },
      ],
    };
    const drafted = await desk.manager.change<Refused>(path, version, own);
    expect(drafted.status).toBe(202);
    expect((await sheetOf('F05')).legs[0]!.particulars).toHaveLength(data.fields.length);
    await agree(drafted, quality);
    const { legs, particularsMissing } = await sheetOf('F05');
    expect(legs[0]!.particulars).toEqual([
      { label: 'Call first', value: 'tower 1' },
      { label: 'Number', value: 'UN 1863' },
      { label: 'Checked by', value: null },
    ]);
    expect(particularsMissing).toBeNull();
  });

  it('without a field for the emergency contact are refused', async () => {
    const { version, data } = await kept<ParticularsSet>(path);
    const { status, body } = await setUp.change<Refused>(path, version, {
      ...data,
      fields: [{ label: 'Number', value: { text: 'UN 1863' } }],
    });
    expect([status, body.faults?.map(({ path: at }) => at)]).toEqual([422, ['fields']]);
  });
});

it('a difference of two totals and of a density, in one policy, take two people', async () => {
  const { version, data } = await kept<object>('/api/policy/current');
  const changed = {
    ...data,
    twoTotals: { toleranceLb: 12, reference: 'invented manual 8' },
    densityTolerance: { percent: 0.8, scaleErrorKg: 0.5, dipErrorLitres: 2, reference: 'invented manual 9' },
  };
  const drafted = await setUp.change<Refused>('/api/policy/current', version, changed);
  expect(drafted.status).toBe(202);
  await agree(drafted, desk.manager, quality);
  expect((await kept<object>('/api/policy/current')).data).toMatchObject({
    twoTotals: { toleranceLb: 12 },
    densityTolerance: { percent: 0.8 },
  });
  expect((await sheetOf('F05')).toleranceLb).toBe(12);
});
