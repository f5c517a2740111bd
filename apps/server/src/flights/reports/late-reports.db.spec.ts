import { randomUUID } from 'node:crypto';
import type { CacheAnswer, CardAnswer, LoadAnswer } from '@drumline/contract';
import type { Raised } from '@drumline/stock';
import { afterAll, beforeEach, describe, expect, it } from 'vitest';
import type { Client } from '../../testing/client.js';
import { type FlightDesk, openFlightDesk, type ShownFlight } from '../../testing/flight-desk.js';

let desk: FlightDesk;
let f06: ShownFlight;
beforeEach(async () => {
  if (desk !== undefined) await desk.server.close();
  desk = await openFlightDesk();
  f06 = await desk.give('F06');
});
afterAll(() => desk.server.close());

// product.md, T2, with the reports in the order in which a stranger saw them come in: the second phone first.
describe('a loading that comes in after another phone’s delivery', () => {
  beforeEach(async () => {
    const dry = { place: 'XGAN', state: 'dry', at: '2027-06-14T05:30Z', by: 'strip helper' };
    await desk.dispatcher.put(`/api/surface-reports/${randomUUID()}`, dry);
  });

  it('was written before a drum was held: the flight is loaded, nothing asks for its loading, the hold is raised', async () => {
    await delivers(await desk.server.as('helicopter crew'));
    expect((await desk.flight('F06')).needsDecision).toBe(`Drum ${broken()} is held: seal broken.`);
    expect(await raisedKinds()).toContain('not aboard');
    // What stands at XGAN is not on its way there as well: the card and the page of the cache say the same.
    expect(await endAtGan('card')).toBe(await endAtGan('cache'));

    const { status, body } = await loads(await desk.crewOf('F06'));
    expect([status, body.entered, body.flight.state]).toEqual([200, true, 'loaded']);
    expect(body.report.raised).toEqual([
      `F06: loaded at Mon 14, 05:40, before base knew: Drum ${broken()} is held: seal broken.`,
    ]);
    expect(await raisedKinds()).not.toContain('not aboard');
    expect(await sheetWords()).toBe(null);
  });

  it('is one thing to look at with its drums in it until it comes, and one act sees it', async () => {
    await delivers(await desk.server.as('helicopter crew'));
    const drums = f06.loads.map(({ drum }) => drum).sort();
    const missing = (await raised()).filter(({ kind }) => kind === 'not aboard');
    expect(missing.map(({ what }) => what)).toEqual([
      `F06: 4 drums came off it, and nobody has reported them loaded on it: ${drums.join(', ')}.`,
    ]);
    const seen = { raised: missing[0]!.id, act: 'seen', words: 'The pilot has it on paper.' };
    expect((await desk.dispatcher.put(`/api/raised-acts/${randomUUID()}`, seen)).status).toBe(200);
    expect(await raisedKinds()).not.toContain('not aboard');
  });

  it('then off, down and reported: three drums left, one home and held, and every page of the flight can be read', async () => {
    await delivers(await desk.server.as('helicopter crew'));
    const crew = await desk.crewOf('F06');
    await loads(crew);
    await desk.report(crew, 'F06', 'take off', at('05:45'));
    // Aboard, held and on its way home: it still has a place on the sheet.
    expect(await sheetWords()).toBe(null);
    await delivers(crew);
    await desk.report(crew, 'F06', 'land', { ...at('05:58'), place: 'XMER' });
    const { status, body } = await desk.report(crew, 'F06', 'report', at('05:58'));
    expect([status, body.flight.state]).toEqual([200, 'reported']);
    expect(await sheetWords()).toBe(null);
    expect(await raisedKinds()).toEqual(['delivery not as planned', 'flight report']);
    // Both phones have said so: one line, three drums, two reporters.
    const { changed } = (await desk.dispatcher.get<{ changed: readonly { what: string }[] }>('/api/morning'))
      .body;
    expect(changed.filter(({ what }) => what.includes('left at'))).toMatchObject([
      { what: '3 drums left at XGAN, F06', source: 'Crew FW1 and Demo helicopter crew, by phone' },
    ]);
  });

  it('and that may not be entered is aboard in the ledger all the same: its drums have been set down since', async () => {
    await delivers(await desk.server.as('helicopter crew'));
    const crew = await desk.crewOf('F06');
    const apart = { ...totals, takeOff: { bySheetLb: 8528, byAircraftLb: 8258 } };
    const { body } = await loads(crew, { totals: apart });
    expect([body.entered, body.flight.state]).toEqual([false, 'given']);
    expect(await raisedKinds()).toEqual(['load or problem']);
    await desk.report(crew, 'F06', 'take off', at('05:45'));
    expect(await raisedKinds()).toEqual(['load or problem']);
  });

  it('after the hold is no way round it: it is kept and raised, and not entered as loaded', async () => {
    const hold = { kind: 'held', of: { drum: broken() }, reason: 'rust', ...at('05:35') };
    await desk.manager.put(`/api/movements/${randomUUID()}`, hold);
    const { body } = await loads(await desk.crewOf('F06'));
    expect([body.entered, body.flight.state]).toEqual([false, 'given']);
  });
});

describe('a loading told by radio or on paper', () => {
  it.each(['radio', 'paper'])(
    'has happened (%s): it is kept where the surface is unknown, and raised',
    async (means) => {
      const { status, body } = await loads(desk.dispatcher, {
        means,
        allTheSame: false,
        bySoftFigures: false,
      });
      expect([status, body.entered]).toEqual([200, false]);
      const raised = body.report.raised.join(' ');
      expect(raised).toContain('F06: loaded all the same with ');
      expect(raised).toContain('F06: the surface of XGAN is unknown: no report is fresh.');
      // The next line on the paper: it flies with what was told, and is raised once.
      const off = await desk.report(desk.dispatcher, 'F06', 'take off', { ...at('05:45'), means, by: 'FW1' });
      expect([off.body.flight.state, off.body.report.raised]).toEqual(['away', []]);
      const { body: drum } = await desk.manager.get<{ where: object }>(`/api/drums/${broken()}`);
      expect(drum.where).toMatchObject({ kind: 'aboard', flight: 'F06' });
    },
  );
});

const broken = (): string => f06.loads[0]!.drum!;

const at = (clock: string) => ({
  happenedAt: `2027-06-14T${clock}Z`,
  writtenAt: `2027-06-14T${clock}Z`,
  means: 'phone',
});

const totals = {
  load: { bySheetLb: 1585, byHandLb: 1585 },
  takeOff: { bySheetLb: 8528, byAircraftLb: 8528 },
};

const loads = (who: Client, rest: object = {}) =>
  desk.report(who, 'F06', 'load', {
    ...at('05:40'),
    ...{ version: f06.version, totals, allTheSame: true },
    drums: f06.loads.map(({ drum, place }) => ({ movement: randomUUID(), drum, to: place })),
    ...rest,
  });

/** Three drums left at XGAN, one brought home with its seal broken. */
const delivers = async (who: Client) => {
  for (const { drum, place } of f06.loads) {
    const isBroken = drum === broken();
    const { status } = await who.put(`/api/movements/${randomUUID()}`, {
      ...at('05:52'),
      ...{ kind: isBroken ? 'brought home' : 'left at', flight: 'F06', leg: isBroken ? 2 : 1, drum },
      ...{ place: isBroken ? 'XMER' : place, foundMillilitres: null },
      condition: isBroken ? 'seal broken' : 'sound',
    });
    expect(status).toBe(200);
  }
};

const raised = async (): Promise<readonly Raised[]> =>
  (await desk.manager.get<{ items: readonly Raised[] }>('/api/raised')).body.items;

const raisedKinds = async (): Promise<readonly string[]> => (await raised()).map(({ kind }) => kind);

/** Litres usable at XGAN on the last day with every flight flown, as told by the flight's card and by the cache's page. */
const endAtGan = async (by: 'card' | 'cache'): Promise<number | undefined> => {
  if (by === 'card') {
    const { body } = await desk.manager.get<CardAnswer>('/api/flights/F06/card');
    return body.ifDeclined?.caches.find(({ place }) => place === 'XGAN')?.withIt.endLitres;
  }
  const { body } = await desk.manager.get<CacheAnswer>('/api/projections/XGAN');
  return body.projections.offered.usableLitres.at(-1);
};

/** Why there is no sheet of the flight; null: there is one. */
const sheetWords = async (): Promise<string | null> => {
  const { body, status } = await desk.dispatcher.get<LoadAnswer>('/api/flights/F06/sheet');
  expect(status).toBe(200);
  return body.why;
};
