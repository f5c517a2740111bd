import { randomUUID } from 'node:crypto';
import type { DrumState } from '@drumline/stock';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { Client } from '../../testing/client.js';
import { type FlightDesk, openFlightDesk, type ShownFlight } from '../../testing/flight-desk.js';
import { BoardService } from '../board/board.service.js';

let desk: FlightDesk;
/** Given: to XKNA, of which there is no report, and to XLOR, reported dry at 05:50. */
let [toKna, toLor]: ShownFlight[] = [];
beforeAll(async () => {
  desk = await openFlightDesk();
  toKna = await desk.give('F01');
  toLor = await desk.give('F02');
});
afterAll(() => desk.server.close());

const totals = (byAircraftLb = 8528, byHandLb = 2378) => ({
  load: { bySheetLb: 2378, byHandLb },
  takeOff: { bySheetLb: 8528, byAircraftLb },
});
const drumsOf = ({ loads }: ShownFlight) =>
  loads.flatMap(({ drum, place }) => (drum === null ? [] : [{ movement: randomUUID(), drum, to: place }]));
const load = (who: Client, flight: ShownFlight, rest: object = {}) =>
  desk.report(who, flight.id, 'load', {
    means: 'phone',
    version: flight.version,
    totals: totals(),
    drums: drumsOf(flight),
    ...rest,
  });
const whereIs = async (number: string) =>
  (await desk.manager.get<DrumState>(`/api/drums/${number}`)).body.where;

describe('two totals', () => {
  it('with two digits swapped are 270 lb apart: not loaded; arithmetic and slips shown, never which is right', async () => {
    const { status, body } = await load(await desk.crewOf('F02'), toLor!, { totals: totals(8258) });
    expect(status).toBe(422);
    expect(body.faults).toMatchObject([
      {
        path: 'totals.takeOff',
        remedy:
          'Add both up again; if they stay apart, the commander signs with the reason and a second person.',
      },
    ]);
    const words = body.faults[0]!.problem;
    expect(words).toContain(
      'Take-off weight, by the sheet and by the aircraft: 8,528 lb and 8,258 lb: 270 lb apart; 10 lb is accepted.',
    );
    expect(words).toContain('Two digits changed over: The two figures have the same digits');
    expect(words).not.toMatch(/is right|correct|wrong total/);
    expect((await desk.flight('F02')).state).toBe('given');
    expect(await whereIs(drumsOf(toLor!)[0]!.drum)).toEqual({ kind: 'at', place: 'XMER' });
  });

  it('that agree make the flight loaded, and its drums are aboard, each by its number', async () => {
    const left = drumsOf(toLor!).at(-1)!;
    const places = ['no such place', 'R2R', 'R2L', 'R1R', 'R1L'];
    const drums = drumsOf(toLor!)
      .slice(0, -1)
      .map((drum, at) => ({ ...drum, position: places[at]! }));
    const { status, body } = await load(await desk.crewOf('F02'), toLor!, { drums });
    expect(status).toBe(200);
    expect(body.flight).toMatchObject({ state: 'loaded', version: toLor!.version });
    expect(body.flight.loads.map(({ drum }) => drum)).toEqual(drums.map(({ drum }) => drum));
    for (const { drum } of drums)
      expect(await whereIs(drum)).toEqual({ kind: 'aboard', flight: 'F02', leg: 1, from: 'XMER' });
    expect(await whereIs(left.drum)).toEqual({ kind: 'at', place: 'XMER' });
    const board = await desk.server.app.get(BoardService).read();
    const standing = board.loads.filter(({ flightId }) => flightId === 'F02');
    expect(standing.map(({ position }) => position)).toEqual(places.slice(0, drums.length));
    // A place that the cabin does not have keeps nobody from a sheet.
    const { status: sheet } = await desk.dispatcher.get('/api/flights/F02/sheet');
    expect(sheet).toBe(200);
  });

  it('signed by two with a reason go, and base is told; one alone cannot sign', async () => {
    const flight = await desk.give('F04');
    await surface('XESK', 'dry');
    const crew = await desk.crewOf('F04');
    const sign = (signed: object) =>
      load(crew, flight, { totals: totals(8258), signed: { by: 'Crew', reason: 'scale is out', ...signed } });
    for (const alone of [{}, { second: 'crew' }]) {
      const { status, body } = await sign(alone);
      expect([status, body.faults]).toEqual([
        422,
        [
          {
            path: 'signed.second',
            problem: 'Crew alone has signed for the difference.',
            remedy: 'Let a second person look at both figures, and name them.',
          },
        ],
      ]);
    }
    const { status, body } = await sign({ second: 'S. Keeper' });
    expect([status, body.flight.state]).toEqual([200, 'loaded']);
    expect(body.report.raised).toEqual([
      expect.stringMatching(
        /^F04: Take-off weight, .* 270 lb apart; .* Signed by Crew with S. Keeper: scale is/,
      ),
    ]);
  });

  it('are printed integers, and are not looked at where the operator has not said how far they may differ', async () => {
    const crew = await desk.crewOf('F01');
    expect((await load(crew, toKna!, { totals: totals(8528.5) })).status).toBe(422);
    await withPolicy({ twoTotals: undefined }, async () => {
      const { status, body } = await load(crew, toKna!, { bySoftFigures: true });
      expect([status, body.faults[0]?.path]).toEqual([422, 'totals']);
      expect(body.faults[0]?.problem).toContain('nobody has said');
    });
  });
});

describe('a surface that is unknown', () => {
  it('keeps a flight from being loaded: a report is asked for, or the soft figures', async () => {
    const { status, body } = await load(await desk.crewOf('F01'), toKna!);
    expect(status).toBe(422);
    expect(body.faults.map(({ path, problem }) => [path, problem])).toEqual([
      ['bySoftFigures', 'the surface of XKNA is unknown: no report is fresh.'],
    ]);
  });

  it('with more drums than a soft strip takes, reported all the same, is kept and raised with all that is wrong, and is not loaded', async () => {
    const flight = await desk.give('F05');
    const crew = await desk.crewOf('F05');
    const all = drumsOf(flight);
    const said = {
      happenedAt: '2027-06-14T14:00Z',
      bySoftFigures: true,
      allTheSame: true,
      totals: totals(8168),
      signed: { by: 'Crew', second: 'S. Keeper', reason: 'scale is out' },
    };
    const { status, body } = await load(crew, flight, said);
    expect([status, body.entered, body.flight.state]).toEqual([200, false, 'given']);
    const raised = body.report.raised.join(' ');
    expect(raised).toContain(`F05: loaded all the same with ${all.map(({ drum }) => drum).join(', ')}`);
    expect(raised).toContain(`${all.length} drums are aboard for`);
    expect(raised).toMatch(/360 lb apart; .* Signed by Crew with S. Keeper: scale is out/);
    const { items } = (await desk.manager.get<{ items: { what: string }[] }>('/api/raised')).body;
    expect(items.map(({ what }) => what).join(' ')).toContain('F05: loaded all the same');
    expect(await whereIs(all[0]!.drum)).toMatchObject({ kind: 'at' });
  });

  it('by the soft figures takes no more drums than the soft strip allows: 4 of 6 to XLOR', async () => {
    const flight = await desk.flight('F05');
    const crew = await desk.crewOf('F05');
    const all = drumsOf(flight);
    // The report of 05:50 is good for 8 hours.
    const stale = { happenedAt: '2027-06-14T14:00Z', bySoftFigures: true };
    const tooMany = await load(crew, flight, { ...stale, drums: all });
    expect([tooMany.status, tooMany.body.faults[0]?.problem]).toEqual([
      422,
      '6 drums are aboard for XLOR; by the soft figures 4 may go.',
    ]);
    const four = await load(crew, flight, { ...stale, drums: all.slice(0, 4) });
    expect([four.status, four.body.flight.state]).toEqual([200, 'loaded']);
    expect(four.body.report.raised).toEqual([expect.stringContaining('is said to be at Mon 14, 14:00')]);
  });

  it('that a new report makes known is loaded by it; a closed strip is not', async () => {
    const flight = await desk.give('F06');
    const crew = await desk.crewOf('F06');
    expect((await load(crew, flight)).body.faults[0]?.path).toBe('bySoftFigures');
    await surface('XGAN', 'closed', '2027-06-14T05:58Z');
    expect((await load(crew, flight)).body.faults[0]?.problem).toBe('XGAN: it is reported closed.');
    await surface('XGAN', 'damp', '2027-06-14T05:59Z');
    expect((await load(crew, flight)).body.flight.state).toBe('loaded');
  });
});

describe('the drums of a loading', () => {
  it('are fit: a held one stays behind', async () => {
    const flight = await desk.give('F07');
    const [first, ...rest] = drumsOf(flight);
    await desk.manager.put(`/api/movements/${randomUUID()}`, held(first!.drum));
    await desk.act(desk.dispatcher, 'F07', 'amend', {});
    const amended = await desk.flight('F07');
    const crew = await desk.crewOf('F07');
    const { status, body } = await load(crew, amended, { drums: [first, ...rest] });
    expect([status, body.faults.map(({ path, problem }) => [path, problem])]).toEqual([
      422,
      [['drums[0].drum', `drum ${first!.drum} is held: rust.`]],
    ]);
  });

  it('are of the sheet’s version: one that base has changed since is read first', async () => {
    const flight = await desk.flight('F07');
    const { status, body } = await load(await desk.crewOf('F07'), flight, { version: flight.version - 1 });
    expect([status, body.faults.map(({ path }) => path)]).toEqual([422, ['version']]);
  });

  it('that were set aside for another flight are taken from it, and that flight needs a decision', async () => {
    const flight = await desk.flight('F07');
    const other = await desk.flight('F09');
    const [taken] = drumsOf(other);
    const drums = [...drumsOf(flight).slice(1), { ...taken!, to: 'XESK' }];
    const { status, body } = await load(await desk.crewOf('F07'), flight, { drums });
    expect([status, body.flight.state]).toEqual([200, 'loaded']);
    const after = await desk.flight('F09');
    expect(after.needsDecision).toContain(`F07 has taken ${taken!.drum}`);
    expect(after.loads.map(({ drum }) => drum)).not.toContain(taken!.drum);
  });
});

describe('a flight that is loaded the evening before', () => {
  it('still takes its drums from its base on its day, those that are aboard and no more', async () => {
    const { loads, date } = await desk.flight('F05');
    const { scenario } = await desk.server.app.get(BoardService).read();
    expect([date, scenario.firstDay]).toEqual(['2027-06-15', '2027-06-14']);
    expect(scenario.flights.find(({ id }) => id === 'F05')?.stops).toEqual([{ place: 'XLOR', drums: 4 }]);
    const places = new Map(scenario.drums.map(({ number, place }) => [number, place]));
    expect(loads.map(({ drum }) => places.get(drum!))).toEqual(['XALD', 'XALD', 'XALD', 'XALD']);
  });
});

describe('who may say that a flight is loaded', () => {
  it('its commander, the dispatcher and the storekeeper; no other pilot, and no manager', async () => {
    const flight = await desk.give('F10');
    await surface('XFAL', 'dry');
    const may = async (who: Client) => (await load(who, flight, { version: 99 })).status;
    expect(await may(await desk.crewOf('F10'))).toBe(422);
    expect(await may(desk.dispatcher)).toBe(422);
    expect(await may(await desk.server.as('storekeeper'))).toBe(422);
    expect(await may(desk.manager)).toBe(403);
    expect(await may(await desk.server.as('accounts'))).toBe(403);
    expect(await may(await desk.server.as('helicopter crew'))).toBe(403);
    const others = ['F01', 'F02', 'F04', 'F05', 'F08'];
    for (const id of others) {
      if ((await desk.flight(id)).pilot === flight.pilot) continue;
      expect(await may(await desk.crewOf(id))).toBe(403);
      return;
    }
    throw new Error('one pilot flies them all');
  });

  it('not before it is given', async () => {
    const flight = await desk.flight('F08');
    const { status, body } = await load(desk.dispatcher, flight);
    expect([status, body.detail]).toEqual([409, 'F08 is offered: to load, a flight has to be given.']);
  });
});

describe('a loading that comes in after take-off', () => {
  it('is kept whatever it says, and raised; its drums are aboard', async () => {
    const flight = await desk.give('F03');
    const crew = await desk.crewOf('F03');
    await desk.report(crew, 'F03', 'take off', { means: 'phone', happenedAt: '2027-06-14T06:05Z' });
    const { status, body } = await load(crew, flight, { totals: totals(8258) });
    expect([status, body.flight.state]).toEqual([200, 'away']);
    expect(body.report.raised).toEqual([
      expect.stringContaining('F03 is away: "load" by'),
      expect.stringContaining('270 lb'),
    ]);
    expect(await whereIs(drumsOf(flight)[0]!.drum)).toMatchObject({ kind: 'aboard', flight: 'F03' });
  });
});

const surface = (place: string, state: string, at = '2027-06-14T05:57Z') =>
  desk.dispatcher.put(`/api/surface-reports/${randomUUID()}`, { place, state, at, by: 'strip helper' });

const held = (drum: string) => ({
  kind: 'held',
  happenedAt: '2027-06-14T06:00Z',
  writtenAt: '2027-06-14T06:00Z',
  means: 'screen',
  of: { drum },
  reason: 'rust',
});

const withPolicy = async (change: object, act: () => Promise<void>): Promise<void> => {
  const [row]: readonly { readonly data: object }[] = await desk.server.database.query(
    `select data from territory_entries where kind = 'policy'`,
  );
  const write = (data: object) =>
    desk.server.database.query(
      `update territory_entries set data = $1, version = version + 1 where kind = 'policy'`,
      [data],
    );
  await write({ ...row!.data, ...change });
  try {
    await act();
  } finally {
    await write(row!.data);
  }
};
