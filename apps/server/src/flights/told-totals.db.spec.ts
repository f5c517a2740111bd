import { randomUUID } from 'node:crypto';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { type FlightDesk, openFlightDesk, type ShownFlight } from '../testing/flight-desk.js';

let desk: FlightDesk;
let flight: ShownFlight;
let overdue: ShownFlight;
let own: { readonly loadLb: number; readonly takeoffLb: number };
beforeAll(async () => {
  desk = await openFlightDesk();
  flight = await desk.give('F02');
  overdue = await desk.give('F04');
  own = {
    loadLb: await bySheet('load'),
    takeoffLb: await bySheet('take-off weight'),
  };
});
afterAll(() => desk.server.close());

/** Told only beside a figure that somebody has typed. */
const bySheet = async (of: string): Promise<number> => {
  const typed = { of, typedLb: 1, leg: 0 };
  return (await desk.dispatcher.post<{ bySheetLb: number }>('/api/flights/F02/totals', typed)).body.bySheetLb;
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

it('written the day after it is compared all the same', async () => {
  const setUp = await desk.server.as('set-up');
  const path = '/api/settings/current';
  const settings = await setUp.get<{ version: number; data: object }>(path);
  await setUp.change(path, settings.body.version, {
    ...settings.body.data,
    clockStartsAt: '2027-06-15T09:00Z',
  });
  const { body } = await loadOf(overdue, [718, 11313]);
  expect(body.report?.raised.join(' '), JSON.stringify(body)).toContain(
    "F04: The load by base's sheet of version",
  );
});
