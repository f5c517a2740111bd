import { randomUUID } from 'node:crypto';
import type { LoadAnswer } from '@drumline/contract';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { Client } from '../testing/client.js';
import { type FlightDesk, openFlightDesk } from '../testing/flight-desk.js';
import { pageCount } from './testing/read-pdf.js';

let desk: FlightDesk;
beforeAll(async () => {
  desk = await openFlightDesk();
  for (const id of ['F05', 'F06']) await desk.act(desk.dispatcher, id, 'approve');
});
afterAll(() => desk.server.close());

/** A print as it comes; the client reads it as text, and a PDF's own words stay readable in that. */
const printed = async (who: Client, path: string) => {
  const { status, headers, body } = await who.get<string>(path);
  return { status, type: headers.get('Content-Type'), named: headers.get('Content-Disposition'), body };
};
const pagesIn = (body: string): number => pageCount(Buffer.from(body, 'latin1'));

interface Audited {
  readonly person: string;
  readonly did: string;
  readonly subject: string;
  readonly detail: Readonly<Record<string, unknown>>;
}
const lastPrinted = async (): Promise<Audited | undefined> => {
  const { body } = await desk.manager.get<{ readonly items: readonly Audited[] }>('/api/audit?limit=10');
  return body.items.find(({ did }) => did === 'printed');
};

describe('a load sheet on paper', () => {
  it.each(['a4', 'letter'])('is one page of %s', async (paper) => {
    const { status, type, named, body } = await printed(
      desk.dispatcher,
      `/api/flights/F05/sheet.pdf?paper=${paper}`,
    );
    expect([status, type]).toEqual([200, 'application/pdf']);
    expect(named).toBe('inline; filename="F05-version-1.pdf"');
    expect(body.startsWith('%PDF-')).toBe(true);
    expect(pagesIn(body)).toBe(1);
  });

  it('is in the audit: who printed which version, with its check code', async () => {
    await printed(desk.dispatcher, '/api/flights/F05/sheet.pdf');
    expect(await lastPrinted()).toMatchObject({
      person: 'dispatcher',
      subject: 'load sheet F05',
      detail: { version: 1, paper: 'a4', checkCode: expect.stringMatching(/^[A-Z0-9]{4}$/) },
    });
  });

  it('a flight that is amended gets another version and another check code on its print', async () => {
    const before = (await lastPrinted())!.detail;
    await desk.act(desk.dispatcher, 'F05', 'amend', { departs: '08:10' });
    const { named } = await printed(desk.dispatcher, '/api/flights/F05/sheet.pdf');
    expect(named).toBe('inline; filename="F05-version-2.pdf"');
    const after = (await lastPrinted())!.detail;
    expect([before.version, after.version]).toEqual([1, 2]);
    expect(after.checkCode).not.toBe(before.checkCode);
  });

  it('what became known since the print: the same version, another code, and the paper says which it replaces', async () => {
    const before = (await lastPrinted())!.detail;
    const sheetNow = async () =>
      (await desk.dispatcher.get<LoadAnswer>('/api/flights/F05/sheet')).body.load!.sheet;
    const { replacesWords } = await sheetNow();
    expect(replacesWords).toBe('Version 2 replaces version 1: throw version 1 away.');
    await desk.dispatcher.put(`/api/surface-reports/${randomUUID()}`, {
      ...{
        place: (await desk.flight('F05')).stops[0]!.place,
        state: 'soft',
        by: 'strip helper',
        untilDate: '2027-06-16',
      },
      at: '2027-06-14T05:57Z',
    });
    const now = await sheetNow();
    expect(now.checkCode).not.toBe(before.checkCode);
    expect(now.replacesWords).toBe(
      `Version 2, now code ${now.checkCode}: throw version 1 and code ${before.checkCode} away.`,
    );
  });

  it('is printed by whoever may see the flight: its own pilot, and no other', async () => {
    const own = await desk.crewOf('F05');
    expect((await printed(own, '/api/flights/F05/sheet.pdf')).status).toBe(200);
    const { pilot } = await desk.flight('F06');
    expect(pilot).not.toBe((await desk.flight('F05')).pilot);
    expect((await printed(own, '/api/flights/F06/sheet.pdf')).status).toBe(403);
    const leader = await desk.server.as('field leader');
    expect((await printed(leader, '/api/flights/F05/sheet.pdf')).status).toBe(403);
  });

  it('there is none of a flight that is not there, or on paper that is none', async () => {
    expect((await printed(desk.dispatcher, '/api/flights/F99/sheet.pdf')).status).toBe(404);
    expect((await printed(desk.dispatcher, '/api/flights/F05/sheet.pdf?paper=a3')).status).toBe(400);
  });
});

describe('the day pack', () => {
  it('has cover, a sheet for each flight that is approved, radio script, slips and a blank sheet', async () => {
    const { status, body } = await printed(desk.dispatcher, '/api/day-pack.pdf?date=2027-06-15');
    expect(status).toBe(200);
    expect(pagesIn(body)).toBe(1 + 2 + 1 + 2 + 1);
    const { subject, detail } = (await lastPrinted())!;
    expect(subject).toBe('day pack 2027-06-15');
    expect(detail.sheets).toMatchObject([{ flight: 'F06' }, { flight: 'F05', version: 2 }]);
  });

  it('has its whole cover on one page of Letter too, cautions included', async () => {
    const { body } = await printed(desk.dispatcher, '/api/day-pack.pdf?date=2027-06-15&paper=letter');
    expect(pagesIn(body)).toBe(1 + 2 + 1 + 2 + 1);
  });

  it('of today before noon where no day is said; of a day that is over there is none', async () => {
    const { named } = await printed(desk.dispatcher, '/api/day-pack.pdf');
    expect(named).toContain('day-pack-2027-06-14.pdf');
    expect((await printed(desk.dispatcher, '/api/day-pack.pdf?date=2027-06-13')).status).toBe(400);
  });

  it('is for those who see every flight', async () => {
    const pilot = await desk.crewOf('F05');
    expect((await printed(pilot, '/api/day-pack.pdf')).status).toBe(403);
  });
});

describe('slips', () => {
  it('are numbered on from those of the last print, also when two are printed at once', async () => {
    const print = () => printed(desk.dispatcher, '/api/slips.pdf?kind=count&paper=letter');
    const names = (await Promise.all([print(), print(), print()])).map(({ named }) => named);
    expect(new Set(names).size).toBe(3);
    expect(pagesIn((await print()).body)).toBe(1);
    const { detail } = (await lastPrinted())!;
    const numbers = detail.numbers as readonly string[];
    expect(numbers).toHaveLength(4);
    for (const number of numbers) expect(number).toMatch(/^C-\d{4}$/);
  });

  it('of draws are one page too', async () => {
    const { body, named } = await printed(desk.dispatcher, '/api/slips.pdf?kind=draw');
    expect(pagesIn(body)).toBe(1);
    expect(named).toContain('draw-slips-D-');
  });
});

describe('a cache board', () => {
  it.each(['a4', 'letter'])('is one page of %s', async (paper) => {
    const { status, body } = await printed(desk.dispatcher, `/api/caches/XLOR/board.pdf?paper=${paper}`);
    expect([status, pagesIn(body)]).toEqual([200, 1]);
  });

  it('there is none where nothing stands', async () => {
    expect((await printed(desk.dispatcher, '/api/caches/XNIX/board.pdf')).status).toBe(404);
  });
});
