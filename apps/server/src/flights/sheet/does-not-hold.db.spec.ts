import { randomUUID } from 'node:crypto';
import type { LoadAnswer } from '@drumline/contract';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { Client } from '../../testing/client.js';
import { type FlightDesk, openFlightDesk, type ShownFlight } from '../../testing/flight-desk.js';

let desk: FlightDesk;
let flight: ShownFlight;
let crew: Client;
/** Of base's sheet: number by number. */
let places: ReadonlyMap<string, string>;
beforeAll(async () => {
  desk = await openFlightDesk();
  flight = await desk.give('F02');
  crew = await desk.crewOf('F02');
  const { load: shown } = (await desk.dispatcher.get<LoadAnswer>('/api/flights/F02/sheet')).body;
  places = new Map(shown!.sheet.drums.map(({ number, position }) => [number, position]));
});
afterAll(() => desk.server.close());

const totals = {
  load: { bySheetLb: 2378, byHandLb: 2378 },
  takeOff: { bySheetLb: 8528, byAircraftLb: 8528 },
};
/** Each where base's sheet has it; or the first two in one place. */
const drums = (twoInOne: boolean) =>
  flight.loads.map(({ drum, place }, at) => ({
    ...{ movement: randomUUID(), drum: drum!, to: place },
    position: places.get(flight.loads[twoInOne && at === 1 ? 0 : at]!.drum!)!,
  }));
const load = (rest: object) =>
  desk.report(crew, 'F02', 'load', { means: 'phone', version: flight.version, totals, ...rest });

describe('a load that does not hold', () => {
  it('by base’s sheet is not entered: what it does not keep is said', async () => {
    const { status, body } = await load({ drums: drums(true) });
    expect([status, body.faults.map(({ path }) => path)]).toEqual([422, ['drums']]);
    expect(body.faults[0]!.problem).toMatch(/^the load does not hold by base's sheet: .*holds 2 loads/);
  });

  it('that stands so in the aeroplane is kept and raised, by what its crew’s sheet knows too', async () => {
    const words = 'XMER-XLOR: R3L: 551 lb, limit 450 lb: 101 lb over.';
    const said = { drums: drums(false), doesNotHold: words, allTheSame: true };
    const { status, body } = await load(said);
    expect([status, body.entered, body.flight.state]).toEqual([200, false, 'given']);
    expect(body.report.raised).toEqual([
      expect.stringContaining('F02: loaded all the same with'),
      `F02: the load does not hold by the sheet it was loaded by: ${words}`,
    ]);
    const { items } = (
      await desk.manager.get<{ items: { kind: string; mayHurt: boolean; what: string }[] }>('/api/raised')
    ).body;
    expect(items[0]).toMatchObject({ kind: 'load or problem', mayHurt: true });
    expect(items[0]!.what).toContain('551 lb, limit 450 lb');
  });

  it('and is loaded otherwise afterwards is entered', async () => {
    const { status, body } = await load({ drums: drums(false), allTheSame: true });
    expect([status, body.entered, body.flight.state]).toEqual([200, true, 'loaded']);
  });
});
