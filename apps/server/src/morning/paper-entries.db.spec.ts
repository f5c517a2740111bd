import { randomUUID } from 'node:crypto';
import type { ProjectionsAnswer } from '@drumline/contract';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { type FlightDesk, openFlightDesk, setClock } from '../testing/flight-desk.js';
import type { PaperEntries } from './paper-entries.service.js';

let live: FlightDesk;
let paper: FlightDesk;
beforeAll(async () => {
  [live, paper] = await Promise.all([openFlightDesk(), openFlightDesk()]);
});
afterAll(() => Promise.all([live.server.close(), paper.server.close()]));

interface Entry {
  readonly path: string;
  readonly body: { readonly [field: string]: unknown };
}

// product.md, T10: two flights are flown on paper between the day pack of day 2, 17:00, and day 3, 14:00; three uplifts by
// radio. The times are this test's own.
it('a day on paper, entered afterwards, leaves the projection that entering it live would have left', async () => {
  for (const desk of [live, paper]) await tuesdayEvening(desk);
  expect((await projections(paper)).items).toEqual((await projections(live)).items);
  const before = await bookAt(paper, 'XLOR');

  for (const { path, body } of await outage(live)) {
    await setClock(live, String(body.writtenAt ?? body.at));
    good(await live.dispatcher.put(path, body));
  }
  await setClock(paper, '2027-06-16T14:00Z');
  // Enter pressed twice each time.
  for (const { path, body } of await outage(paper))
    for (const _ of [1, 2]) good(await paper.dispatcher.put(path, body));

  for (const desk of [live, paper]) await setClock(desk, '2027-06-16T14:10Z');
  expect((await projections(paper)).items).toEqual((await projections(live)).items);
  // Six drums came, 150 L were drawn.
  expect((await bookAt(paper, 'XLOR')) - before).toBe(6 * 200 - 150);
  expect(await raised(paper)).toEqual(await raised(live));
  for (const id of ['F07', 'F08']) expect((await paper.flight(id)).state).toBe('reported');
});

it('the outage is found from what base has heard; each entry says when it was written, when and by whom it was entered', async () => {
  const { items, silence } = await entriesSince(paper);
  expect(silence).toEqual({ from: '2027-06-15T16:58Z', until: '2027-06-16T14:00Z' });
  expect(items.map(({ flight, what }) => `${flight ?? ''} ${what.split(':')[0]}`.trim())).toEqual([
    'XESK dry',
    'F07 loaded with 5 drums',
    'F07 off',
    'F07 5 drums left at XESK',
    'F07 down at XMER',
    'F07 every drum accounted for',
    expect.stringMatching(/^200 L drawn at XESK from \d{4} into H1$/),
    expect.stringMatching(/^150 L drawn at XLOR from \d{4} into H2$/),
    'XLOR dry',
    'F08 loaded with 6 drums',
    'F08 off',
    'F08 6 drums left at XLOR',
    'F08 down at XALD',
    'F08 every drum accounted for',
    expect.stringMatching(/^120 L drawn at XFAL from \d{4} into H2$/),
  ]);
  expect(items[3]).toMatchObject({
    means: 'paper',
    happenedAt: '2027-06-15T17:58Z',
    writtenAt: '2027-06-15T18:01Z',
    enteredAt: '2027-06-16T14:00Z',
    by: 'FW1',
    enteredBy: 'Demo dispatcher',
  });
  expect(items.filter(({ means }) => means === 'radio')).toHaveLength(3);
  expect((await entriesSince(live)).items[3]!.enteredAt).toBe('2027-06-15T18:01Z');
});

it('a fresh demo claims no outage: what the ledger opens with was on no paper, and no count is entered before it is written', async () => {
  const path = '/api/paper-entries?since=2027-06-13T17:00:00Z';
  const fresh = await openFlightDesk();
  const { body } = await fresh.dispatcher.get<PaperEntries>(path);
  expect([body.items, body.silence]).toEqual([[], null]);
  const early = await fresh.server.database.query('select id from movements where received_at < written_at');
  expect(early).toEqual([]);
  await fresh.server.close();
});

it('is asked with a moment', async () => {
  expect((await paper.dispatcher.get('/api/paper-entries?since=yesterday')).status).toBe(400);
  const leader = await paper.server.as('field leader');
  expect((await leader.get('/api/paper-entries?since=2027-06-15T17:00:00Z')).status).toBe(403);
});

/** Day 2, 16:58: F07 and F08 are with their pilots, nothing else is to come. */
const tuesdayEvening = async (desk: FlightDesk): Promise<void> => {
  await setClock(desk, '2027-06-15T16:58Z');
  for (const id of ['F07', 'F08']) {
    const { state } = await desk.give(id);
    expect(state).toBe('given');
  }
};

const outage = async (desk: FlightDesk): Promise<readonly Entry[]> => [
  ...(await flown(desk, { id: 'F07', leg: 1, times: ['15T17:20', '15T17:58', '15T18:35'] })),
  await uplift(desk, { place: 'XESK', litres: 200, into: 'H1', at: '2027-06-15T18:50Z' }),
  await uplift(desk, { place: 'XLOR', litres: 150, into: 'H2', at: '2027-06-16T06:10Z' }),
  ...(await flown(desk, { id: 'F08', leg: 1, times: ['16T08:02', '16T08:49', '16T09:40'] })),
  await uplift(desk, { place: 'XFAL', litres: 120, into: 'H2', at: '2027-06-16T10:15Z' }),
];

interface Flown {
  readonly id: string;
  readonly leg: number;
  readonly times: readonly [off: string, left: string, down: string];
}

const flown = async (desk: FlightDesk, { id, leg, times }: Flown): Promise<readonly Entry[]> => {
  const { loads, toPlace } = await desk.flight(id);
  const [off, left, down] = times.map((time) => `2027-06-${time}Z`) as [string, string, string];
  const report = (kind: string, at: string, rest: object = {}) =>
    entry('flight-reports', { kind, flight: id, by: 'FW1', ...rest }, { at, means: 'paper' });
  return [
    surface(loads[0]!.place, off.replace(/..Z$/, '00Z')),
    await loading(desk, id, off.replace(/..Z$/, '01Z')),
    report('take off', off),
    ...loads.map(({ drum, place }) =>
      entry(
        'movements',
        {
          kind: 'left at',
          ...{ flight: id, leg, drum, place, by: 'FW1' },
          ...{ condition: 'sound', foundMillilitres: null },
        },
        { at: left, means: 'paper' },
      ),
    ),
    report('land', down, { place: toPlace }),
    report('report', down.replace(/.Z$/, '9Z')),
  ];
};

const surface = (place: string, at: string): Entry => ({
  path: `/api/surface-reports/${randomUUID()}`,
  body: { place, state: 'dry', at, by: 'strip helper, from paper' },
});

/** The totals stand on the paper; that they agree is what base looks at. */
const loading = async ({ flight }: FlightDesk, id: string, at: string): Promise<Entry> => {
  const { version, loads } = await flight(id);
  return entry(
    'flight-reports',
    {
      kind: 'load',
      ...{ flight: id, version, by: 'FW1' },
      totals: {
        load: { bySheetLb: 2378, byHandLb: 2378 },
        takeOff: { bySheetLb: 8528, byAircraftLb: 8528 },
      },
      drums: loads.map(({ drum, place }) => ({ movement: randomUUID(), drum, to: place })),
    },
    { at, means: 'paper' },
  );
};

const uplift = async (
  { dispatcher }: FlightDesk,
  { place, litres, into, at }: { place: string; litres: number; into: string; at: string },
): Promise<Entry> => {
  const { body } = await dispatcher.get<{ items: { number: string; content: string }[] }>(
    `/api/drums?place=${place}&limit=500`,
  );
  const drum = body.items.find(({ content }) => content === 'filled sealed')!.number;
  const movement = {
    kind: 'drawn',
    ...{ drum, place, millilitres: litres * 1000, into, programme: 'P1', leftMillilitres: null, by: 'RW1' },
  };
  return entry('movements', movement, { at, means: 'radio' });
};

const entry = (
  path: string,
  body: object,
  { at, means }: { readonly at: string; readonly means: string },
): Entry => ({
  path: `/api/${path}/${randomUUID()}`,
  // Written down three minutes after it happened.
  body: {
    ...body,
    ...{ happenedAt: at, means },
    writtenAt: new Date(Date.parse(at) + 180_000).toISOString().replace(/:00.000Z/, 'Z'),
  },
});

const entriesSince = async ({ dispatcher }: FlightDesk): Promise<PaperEntries> =>
  (await dispatcher.get<PaperEntries>('/api/paper-entries?since=2027-06-15T17:00:00Z')).body;

const projections = async ({ dispatcher }: FlightDesk): Promise<ProjectionsAnswer> =>
  (await dispatcher.get<ProjectionsAnswer>('/api/projections')).body;

const bookAt = async (desk: FlightDesk, place: string): Promise<number> =>
  (await projections(desk)).items.find((each) => each.place === place)!.stock.bookLitres;

/** Without the ids that each database has made for itself. */
const raised = async ({ manager }: FlightDesk): Promise<readonly string[]> =>
  (await manager.get<{ items: { what: string }[] }>('/api/raised?limit=500')).body.items
    .map(({ what }) => what)
    .toSorted();

const good = ({ status, body }: { readonly status: number; readonly body: unknown }): void => {
  if (status >= 300) throw new Error(`${status}: ${JSON.stringify(body)}`);
};
