import { randomUUID } from 'node:crypto';
import type { LoadAnswer, TotalsAnswer } from '@drumline/contract';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { type FlightDesk, openFlightDesk, type ShownFlight } from '../../testing/flight-desk.js';

let desk: FlightDesk;
let flight: ShownFlight;
let overdue: ShownFlight;
let noted: ShownFlight;
let ofNoted: typeof own;
let own: { readonly loadLb: number; readonly takeoffLb: number };
beforeAll(async () => {
  desk = await openFlightDesk();
  flight = await desk.give('F02');
  overdue = await desk.give('F04');
  own = {
    loadLb: await bySheet('load'),
    takeoffLb: await bySheet('take-off weight'),
  };
  noted = await desk.give('F01');
  ofNoted = { loadLb: await bySheet('load', 'F01'), takeoffLb: await bySheet('take-off weight', 'F01') };
});
afterAll(() => desk.server.close());

/** Told only beside a figure that somebody has typed. */
const bySheet = async (of: string, flight = 'F02'): Promise<number> => {
  const typed = { of, typedLb: 1, leg: 0 };
  return (await desk.dispatcher.post<{ bySheetLb: number }>(`/api/flights/${flight}/totals`, typed)).body
    .bySheetLb;
};

const loadOf = (
  { id, version, loads }: ShownFlight,
  totals: readonly [number, number],
  rest: object = {},
) => {
  const [loadLb, takeOffLb] = totals;
  return desk.report(desk.dispatcher, id, 'load', {
    ...{ means: 'paper', by: 'FW1', version, bySoftFigures: true },
    totals: {
      load: { bySheetLb: loadLb, byHandLb: loadLb },
      takeOff: { bySheetLb: takeOffLb, byAircraftLb: takeOffLb },
    },
    drums: loads.map(({ drum, place }) => ({ movement: randomUUID(), drum, to: place })),
    ...rest,
  });
};
const loaded = (loadLb: number, rest: object = {}) => loadOf(flight, [loadLb, own.takeoffLb], rest);

it('a load from paper whose figures are those of the sheet is loaded, and nothing is raised', async () => {
  const { status, body } = await loaded(own.loadLb);
  expect([status, body.flight.state, body.report.raised]).toEqual([200, 'loaded', []]);
});

it('what it was loaded by stands on its load page from then on, with who, how and when', async () => {
  const { body } = await desk.dispatcher.get<{ loadings: readonly object[] }>('/api/flights/F02/sheet');
  expect(body.loadings).toEqual([
    expect.objectContaining({
      ...{ version: flight.version, by: 'FW1', means: 'paper', at: '2027-06-14T06:01:00Z', checkCode: null },
      load: { bySheetLb: own.loadLb, byHandLb: own.loadLb, differenceLb: 0 },
      takeOff: { bySheetLb: own.takeoffLb, byAircraftLb: own.takeoffLb, differenceLb: 0 },
      ...{ signed: null, raised: [], witnesses: [] },
    }),
  ]);
  const { body: notLoaded } = await desk.dispatcher.get<{ loadings: readonly object[] }>(
    '/api/flights/F04/sheet',
  );
  expect(notLoaded.loadings).toEqual([]);
});

it('kilograms added as pounds agree with themselves and not with the sheet: kept, raised with the likely slip, never which is right', async () => {
  const kg = Math.round(own.loadLb / 2.20462262);
  const { status, body } = await loaded(kg, { means: 'radio' });
  expect(status).toBe(200);
  const [words] = body.report.raised;
  const print = (lb: number) => `${lb.toLocaleString('en-GB')} lb`;
  expect(words).toContain(
    `F02: The load by base's sheet of version ${flight.version}, and as said by radio: ${print(own.loadLb)} and ${print(kg)}: ${print(own.loadLb - kg)} apart; 10 lb is accepted.`,
  );
  expect(words).toMatch(/kilograms/i);
  expect(words).not.toMatch(/is right|correct|wrong total/);
  const { items } = (await desk.manager.get<{ items: { what: string }[] }>('/api/raised?limit=500')).body;
  expect(items.map(({ what }) => what).join(' ')).toContain("by base's sheet of version");
});

it('a check code that is not that of base is kept and raised in words; the one that base has is not', async () => {
  const { body: answer } = await desk.dispatcher.get<{ load: { sheet: { checkCode: string } } }>(
    '/api/flights/F01/sheet',
  );
  const { checkCode } = answer.load.sheet;
  const takenBack = checkCode === 'ACDE' ? 'ACDF' : 'ACDE';
  const withCode = async (code: string) => {
    const { status, body } = await loadOf(noted, [ofNoted.loadLb, ofNoted.takeoffLb], { checkCode: code });
    return { status, raised: body.report.raised.join(' ') };
  };
  expect(await withCode(checkCode.toLowerCase())).toEqual({ status: 200, raised: '' });
  const { status, raised } = await withCode(takenBack);
  expect(status).toBe(200);
  expect(raised).toContain(
    `F01: The check code of base's sheet of version ${noted.version} is ${checkCode}, and ${takenBack} of the sheet that was loaded by`,
  );
});

it('written the day after it is compared all the same, before it is kept and when base has it', async () => {
  const { body: today } = await desk.dispatcher.get<LoadAnswer>('/api/flights/F04/sheet');
  const setUp = await desk.server.as('set-up');
  const path = '/api/settings/current';
  const settings = await setUp.get<{ version: number; data: object }>(path);
  await setUp.change(path, settings.body.version, {
    ...settings.body.data,
    clockStartsAt: '2027-06-15T09:00Z',
  });
  expect((await desk.dispatcher.get('/api/flights/F04/check-code')).body).toEqual({
    version: overdue.version,
    checkCode: today.load?.sheet.checkCode,
  });
  const typed = { of: 'load', typedLb: 718, leg: 0 };
  const compared = await desk.dispatcher.post<TotalsAnswer>('/api/flights/F04/totals', typed);
  expect([compared.status, compared.body.agrees]).toEqual([200, false]);
  const { body } = await loadOf(overdue, [718, 11313]);
  expect(body.report?.raised.join(' '), JSON.stringify(body)).toContain(
    "F04: The load by base's sheet of version",
  );
});
