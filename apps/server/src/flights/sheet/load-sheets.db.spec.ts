import type { CardAnswer, LoadAnswer, LoadStanding, TotalsAnswer } from '@drumline/contract';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import {
  type FlightDesk,
  openFlightDesk,
  type Refusal,
  type ShownFlight,
} from '../../testing/flight-desk.js';

let desk: FlightDesk;
beforeAll(async () => {
  desk = await openFlightDesk();
  const others = [{ place: 'XESK', drums: 4, numbers: ['0565', '0566', '0567', '0568'] }];
  await desk.act(desk.dispatcher, 'F04', 'amend', { stops: others });
  // Product.md, 3.4 and T3: the six drums of the worked load sheet.
  const numbers = ['0447', '0448', '0449', '0450', '0451', '0452'];
  const stops = [{ place: 'XLOR', drums: 6, numbers }];
  const f05 = await desk.act(desk.dispatcher, 'F05', 'amend', { stops });
  expect([f05.status, f05.body.faults]).toEqual([200, undefined]);
});
afterAll(() => desk.server.close());

const sheetOf = async (id: string) =>
  (await desk.dispatcher.get<LoadAnswer>(`/api/flights/${id}/sheet`)).body;
const typed = (of: string, typedLb: number) =>
  desk.dispatcher.post<TotalsAnswer>('/api/flights/F05/totals', { of, typedLb });

describe('the load of F05, 6 drums from XALD to XLOR', () => {
  it('shows each drum with its kg and whole lb, and the limit that binds with 169 lb spare', async () => {
    const { load } = await sheetOf('F05');
    const [out] = load!.bars;
    expect(out!.load.map(({ name, lb }) => [name, lb])).toEqual([
      ['0447', 395],
      ['0448', 396],
      ['0449', 398],
      ['0450', 395],
      ['0451', 396],
      ['0452', 398],
    ]);
    expect(out!.limits.find(({ binds }) => binds)).toMatchObject({
      name: 'strip landing limit',
      place: 'XLOR',
      surface: 'dry',
      limitLb: 8300,
      spareLb: 169,
    });
    expect(load!.holds).toBe(true);
  });

  it('beside it what the strip would allow soft: 531 lb over to land, 581 lb over to leave again', async () => {
    const { load } = await sheetOf('F05');
    const soft = load!.bars[0]!.limits.filter(({ surface }) => surface === 'soft');
    expect(soft.map(({ name, limitLb, spareLb }) => [name, limitLb, spareLb])).toEqual([
      ['strip landing limit', 7600, -531],
      ['unload or stay', 7550, -581],
    ]);
    expect(load!.fallbacks).toMatchObject([{ leg: 0, place: 'XLOR', take: 4, leave: ['0451', '0452'] }]);
  });

  it('says no total before somebody has typed one', async () => {
    const answer = JSON.stringify(await sheetOf('F05'));
    for (const total of ['2378', '2,378', '8528', '8,528', '1078.2']) expect(answer).not.toContain(total);
    expect(answer).not.toContain('"square"');
  });
});

describe('two totals of F05', () => {
  it('2,378 lb by hand and 8,528 lb by the aircraft agree', async () => {
    expect((await typed('load', 2378)).body).toMatchObject({
      agrees: true,
      bySheetLb: 2378,
      differenceLb: 0,
    });
    expect((await typed('take-off weight', 8528)).body).toMatchObject({ agrees: true, bySheetLb: 8528 });
  });

  it('10 lb apart is within the tolerance, 11 lb is not', async () => {
    expect((await typed('take-off weight', 8538)).body.agrees).toBe(true);
    expect((await typed('take-off weight', 8539)).body.agrees).toBe(false);
  });

  it('8,258 lb has two digits swapped: 270 lb apart, and no word on which is right', async () => {
    const { body } = await typed('take-off weight', 8258);
    expect(body).toMatchObject({ agrees: false, differenceLb: 270 });
    expect(body.words).toBe('8,528 lb and 8,258 lb: 270 lb apart');
    expect(body.slips.map(({ kind }) => kind)).toContain('digits swapped');
    expect(JSON.stringify(body)).not.toMatch(/right|correct|wrong total/);
  });

  it('explains the pound that rounding makes: 1,078.2 kg is 2,377 lb', async () => {
    expect((await typed('load', 2378)).body.roundingWords).toContain('2,377 lb');
  });
});

describe('F06 to the one-way strip XGAN', () => {
  it('11 lb over the take-off limit as planned, 5 lb with the drums it takes: unload or stay', async () => {
    const { load, crew, asPlanned } = await sheetOf('F06');
    expect(asPlanned).toMatchObject([
      { place: 'XGAN', printedArrivalLb: 6261, takeoffLimitLb: 6250, printedOverLb: 11 },
    ]);
    const lines = load!.sheet.legs[0]!.goBack.lines;
    expect(lines[0]).toBe('Go back if tailwind more than 3 kt. Decide by 1.1 NM final, at the stream fork.');
    expect(lines.join(' ')).toContain('6,255 lb against 6,250 lb take-off limit, 5 lb over');
    expect(crew.find(({ id }) => id === 'FW2')?.whyNot).toContain('class 4');
    expect(crew.find(({ id }) => id === 'FW1')?.whyNot).toBeNull();
  });
});

describe('a flight whose drums are still to be filled', () => {
  it('shows its planned drums by leg at 180 kg each, with the room that its decision card tells', async () => {
    const { load, why, toFill, planned } = await sheetOf('F13');
    expect(load).toBeNull();
    expect(why).toContain(`${toFill} of its`);
    const card = await desk.dispatcher.get<CardAnswer>('/api/flights/F13/card');
    const [onCard] = card.body.today!.legs;
    const leg = planned!.legs.findIndex(({ from, to }) => from === onCard!.from && to === onCard!.to);
    const { drums, limits } = planned!.bars[leg]!;
    expect(drums).toBe(onCard!.drumsAboard);
    const nearest = onCard!.limits.find(({ limitLb }) => limitLb !== null)!;
    const isOnCard = ({ place, limitLb }: { place: string | null; limitLb: number }) =>
      place === nearest.place && limitLb === nearest.limitLb;
    expect(limits.find(isOnCard)!.spareLb).toBe(nearest.spareLb);
    // Nobody has reported the strip: unknown counts as soft, and that is what binds, on both pages.
    expect(planned!.assumptions).toContain('unknown counts as soft');
    const binding = limits.find(({ binds }) => binds)!;
    expect(binding).toMatchObject({ name: 'strip landing limit', surface: 'soft' });
    const { name, place, surface, limitLb, spareLb } = nearest;
    expect(binding).toMatchObject({ name, place, surface, limitLb, spareLb });
    expect(nearest.binds).toBe(true);
  });

  it('once it is declined carries nothing, planned or not', async () => {
    await desk.act(desk.dispatcher, 'F13', 'decline', { reason: 'not for this test' });
    expect(await sheetOf('F13')).toMatchObject({
      load: null,
      planned: null,
      why: 'F13 is declined: it carries nothing.',
    });
  });
});

describe('fewer drums, as the line for a soft strip says', () => {
  it('leave every other drum in its place, but for the moves that the line names', async () => {
    const { load, stops } = await sheetOf('F06');
    const [line] = load!.fallbacks;
    expect(line!.words).toMatch(/^If XGAN is soft: take 3, leave \d{4} here/);
    const placesOf = (drums: readonly { number: string; position: string }[]) =>
      drums.map(({ number, position }) => `${number} to ${position}`).sort();
    const stay = load!.sheet.drums.filter(({ number }) => !line!.leave.includes(number));
    const moved = new Set(line!.moves.map((move) => move.slice(0, 4)));
    const said = [...placesOf(stay.filter(({ number }) => !moved.has(number))), ...line!.moves].sort();
    const numbers = stops[0]!.drums.filter((drum) => !line!.leave.includes(drum));
    const { status } = await desk.act(desk.dispatcher, 'F06', 'amend', {
      stops: [{ place: 'XGAN', drums: 3, numbers }],
    });
    expect(status).toBe(200);
    const after = (await sheetOf('F06')).load!;
    expect(placesOf(after.sheet.drums)).toEqual(said);
    expect(after.holds).toBe(true);
  });
});

describe('drums put where a person wants them', () => {
  const [aft, forward] = [
    ['R2L', 'R2R', 'R3L', 'R3R'],
    ['R1L', 'R1R', 'R2L', 'R2R'],
  ];
  const inPlaces = async (id: string, places: readonly string[]) => {
    const { stops } = await sheetOf(id);
    return { positions: stops[0]!.drums.map((drum, at) => ({ drum, position: places[at]! })) };
  };
  const put = async (body: object) => {
    const { revision } = await desk.flight('F04');
    return desk.dispatcher.put<ShownFlight & Refusal>('/api/flights/F04/positions', body, {
      headers: { 'If-Match': `"${revision}"` },
    });
  };

  it('C1 with 4 drums in rows 2 and 3 is refused: 211.9 in against 211.0 in aft', async () => {
    const body = await inPlaces('F04', aft);
    const checked = await desk.dispatcher.post<LoadStanding>('/api/flights/F04/load/check', body);
    expect(checked.body.holds).toBe(false);
    expect(checked.body.mend?.words).toBe('move two drums from row 3 to row 1');
    const zeroFuel = checked.body.moments.find(({ moment }) => moment === 'zero fuel')!;
    expect([zeroFuel.armIn.toFixed(1), zeroFuel.aftIn]).toEqual(['211.9', 211]);
    const { status, body: refused } = await put(body);
    expect([status, refused.faults[0]?.path]).toEqual([422, 'positions']);
  });

  it('in rows 1 and 2 they may stand, and stay so: 206.8 in without fuel', async () => {
    const { status, body } = await put(await inPlaces('F04', forward));
    expect([status, body.version]).toEqual([200, 2]);
    const { load } = await sheetOf('F04');
    expect(load!.moments.find(({ moment }) => moment === 'zero fuel')?.armIn.toFixed(1)).toBe('206.8');
    expect(load!.sheet.drums.map(({ position }) => position)).toEqual(forward);
  });

  it('are all the drums of the flight, each once', async () => {
    const { positions } = await inPlaces('F04', forward);
    const { status, body } = await put({
      positions: [positions[0], positions[0], { drum: '9999', position: 'R2L' }],
    });
    expect([status, body.faults.map(({ problem }) => problem)]).toEqual([
      422,
      [
        expect.stringMatching(/is named twice/),
        '9999 is not on F04.',
        expect.stringMatching(/has no place/),
        expect.stringMatching(/has no place/),
        expect.stringMatching(/has no place/),
      ],
    ]);
  });
});
