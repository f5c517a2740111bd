import { randomUUID } from 'node:crypto';
import type { LoadAnswer, MyDay } from '@drumline/contract';
import { afterAll, beforeEach, describe, expect, it } from 'vitest';
import { pageCount } from '../../paper/testing/read-pdf.js';
import type { Client } from '../../testing/client.js';
import { type FlightDesk, openFlightDesk, type ShownFlight } from '../../testing/flight-desk.js';

let desk: FlightDesk;
let f05: ShownFlight;
let crew: Client;
beforeEach(async () => {
  if (desk !== undefined) await desk.server.close();
  desk = await openFlightDesk();
  const dry = { place: 'XLOR', state: 'dry', at: '2027-06-14T05:30Z', by: 'strip helper' };
  await desk.dispatcher.put(`/api/surface-reports/${randomUUID()}`, dry);
  f05 = await desk.give('F05');
  crew = await desk.crewOf('F05');
});
afterAll(() => desk.server.close());

/** Loaded with 9999 in the place of the first drum that was set aside. */
const loadsWith9999 = (grossKg: number | null, means: 'phone' | 'radio' = 'phone') => {
  const drums = f05.loads.map(({ drum, place }, at) => {
    const told = grossKg === null ? {} : { grossKg };
    const aboard = {
      movement: randomUUID(),
      to: place,
      ...(means === 'phone' ? { position: positions[at] } : {}),
    };
    return { ...aboard, ...(at === 0 ? { drum: '9999', ...told } : { drum }) };
  });
  return desk.report(crew, 'F05', 'load', {
    ...{ means, version: f05.version, totals, drums, allTheSame: true },
    happenedAt: '2027-06-14T05:40Z',
  });
};
const positions = ['R1L', 'R1R', 'R2L', 'R2R', 'R3L', 'R3R'];
const totals = {
  load: { bySheetLb: 2378, byHandLb: 2378 },
  takeOff: { bySheetLb: 8528, byAircraftLb: 8528 },
};

const sheet = async () => (await desk.dispatcher.get<LoadAnswer>('/api/flights/F05/sheet')).body;
const by9999 = ({ load }: LoadAnswer) => load!.sheet.drums.find(({ number }) => number === '9999');

describe('a drum that is aboard and in no book', () => {
  it('is on the sheet with the weight that its crew told, on Load, on paper, on the phone, and to the end of the day', async () => {
    const { status, body } = await loadsWith9999(190);
    expect([status, body.entered, body.flight.state]).toEqual([200, true, 'loaded']);
    const answer = await sheet();
    // 190 kg is 419 lb.
    expect(by9999(answer)).toMatchObject({ grossKg: 190, lb: 419, batch: 'NOT IN BOOK' });
    expect(answer.load!.sheet.notInBookWords).toBe('9999 is not in the book: 190.0 kg by the crew.');
    const { flights } = (await crew.get<MyDay>('/api/my-day')).body;
    expect(flights.find(({ id }) => id === 'F05')!.sheet!.checkCode).toBe(answer.load!.sheet.checkCode);

    await desk.report(crew, 'F05', 'take off', { means: 'phone', happenedAt: '2027-06-14T05:45Z' });
    const left = {
      ...{ kind: 'left at', flight: 'F05', leg: 1, place: 'XLOR', drum: '9999', condition: 'sound' },
      ...{ foundMillilitres: null, happenedAt: '2027-06-14T06:02Z', writtenAt: '2027-06-14T06:02Z' },
      means: 'phone',
    };
    expect((await crew.put(`/api/movements/${randomUUID()}`, left)).status).toBe(200);
    expect(by9999(await sheet())).toMatchObject({ grossKg: 190 });
  });

  it('of a full flight has its sheet on one page of A4, on two of Letter; the cover of its day stays one page', async () => {
    await loadsWith9999(190);
    const pagesOf = async (path: string) => {
      const { status, body } = await desk.dispatcher.get<string>(path);
      expect(status).toBe(200);
      return pageCount(Buffer.from(body, 'latin1'));
    };
    for (const [paper, sheetPages] of [
      ['a4', 1],
      ['letter', 2],
    ] as const) {
      expect(await pagesOf(`/api/flights/F05/sheet.pdf?paper=${paper}`)).toBe(sheetPages);
      const pack = await pagesOf(`/api/day-pack.pdf?date=${f05.date}&paper=${paper}`);
      // Cover, the sheet, radio script, slips of counts and of draws, a blank sheet.
      expect([paper, pack]).toEqual([paper, 1 + sheetPages + 1 + 2 + 1]);
    }
  });

  it('weighs as planned where its crew has told nothing, and that is said', async () => {
    await loadsWith9999(null);
    const answer = await sheet();
    expect(by9999(answer)).toMatchObject({ grossKg: 180 });
    expect(answer.load!.sheet.notInBookWords).toBe(
      '9999 is not in the book: no weight was told, 180.0 kg as planned.',
    );
  });

  it('and too heavy for its place does not hold by base’s sheet: kept and raised, with its weight', async () => {
    // 400 kg is 882 lb.
    const { body } = await loadsWith9999(400);
    expect(body.entered).toBe(false);
    const raised = body.report.raised.join(' ');
    expect(raised).toContain('loaded all the same with 9999 (400.0 kg by the crew), ');
    expect(raised).toMatch(/does not hold by base's sheet: .*882 lb, limit/);
  });

  it('and with which no positions hold does not hold either, where nobody has told the positions', async () => {
    const { body } = await loadsWith9999(400, 'radio');
    expect(body.entered).toBe(false);
    expect(body.report.raised.join(' ')).toMatch(/does not hold by base's sheet: F05: .*[^.]\.( |$)/);
  });

  it('weighs something', async () => {
    const { status, body } = await loadsWith9999(0);
    expect([status, body.faults[0]?.path]).toEqual([422, 'drums[0].grossKg']);
  });
});
