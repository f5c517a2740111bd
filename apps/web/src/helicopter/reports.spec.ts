import { splitDraw } from '@drumline/stock';
import { litres } from '@drumline/units';
import { describe, expect, it } from 'vitest';
import { countReport, drawReport, droppedReport, rejectReport, setDownReport } from './reports.js';

let made = 0;
const reporter = {
  by: 'R. Wing',
  clock: {
    phoneAt: '2027-06-14T05:00:00.000Z',
    at: '2027-06-14T08:00:30.123Z',
    serverAheadMs: 3 * 3_600_000,
  },
  newId: () => {
    made += 1;
    return `id-${made}`;
  },
};
const draw = {
  place: 'XESK',
  helicopter: 'H1',
  split: splitDraw(
    [
      { number: '0468', litres: litres(175) },
      { number: '0469', litres: litres(200) },
    ],
    litres(225),
  ),
  programme: 'P1',
  leftByStick: null,
  medevac: null,
  note: 'Looked at.',
};

describe('reports of a helicopter crew', () => {
  it('a draw is one entry with one movement a drum, at base’s time; the odd clock stands beside it', () => {
    const { words, requests } = drawReport(reporter, draw);
    expect(words).toBe('225 L drawn at XESK from 0468, 0469');
    expect(new Set(requests.map(({ path }) => path)).size).toBe(2);
    expect(requests.map(({ body }) => body)).toMatchObject([
      { kind: 'drawn', drum: '0468', millilitres: 175_000, into: 'H1', happenedAt: '2027-06-14T08:00:30Z' },
      { kind: 'drawn', drum: '0469', millilitres: 50_000, leftMillilitres: null, means: 'phone' },
    ]);
    expect(requests[0]?.body).toMatchObject({
      note: expect.stringMatching(/^Looked at\. Phone's clock .* off by 180 min/),
    });
    expect(requests[0]?.body).not.toHaveProperty('medevac');
  });

  it('the stick is that of the drum that stays open; the emptied one has none', () => {
    const { requests } = drawReport(reporter, { ...draw, leftByStick: litres(148) });
    expect(requests.map(({ body }) => body)).toMatchObject([
      { drum: '0468', leftMillilitres: null },
      { drum: '0469', leftMillilitres: 148_000 },
    ]);
  });

  it('a medevac says so', () => {
    const { words, requests } = drawReport(reporter, { ...draw, medevac: 'fall at the ridge' });
    expect(words).toMatch(/, medevac$/);
    expect(requests[0]?.body).toMatchObject({ medevac: 'fall at the ridge' });
  });

  it('a rejected drum is put on hold, marked X; a dropped one is lost', () => {
    expect(rejectReport(reporter, '0469', 'water found').requests[0]?.body).toMatchObject({
      kind: 'held',
      of: { drum: '0469' },
      reason: 'rejected before pumping: water found; marked X',
    });
    const lift = { helicopter: 'H1', from: 'XESK', to: 'XMAR', drums: ['0470'] };
    expect(droppedReport(reporter, lift).requests[0]?.body).toMatchObject({ kind: 'lost', place: 'XESK' });
    expect(setDownReport(reporter, lift)).toMatchObject({
      words: '1 drum set down at XMAR from XESK: 0470',
      requests: [{ body: { kind: 'slung', from: 'XESK', to: 'XMAR', helicopter: 'H1' } }],
    });
  });

  it('an open drum that nobody looked into counts as nothing', () => {
    const seen = {
      place: 'XKNA',
      seenFrom: 'air',
      sealedDrums: 3,
      openDrums: 1,
      emptyDrums: 6,
      openLitres: null,
      fillLitres: litres(200),
    } as const;
    expect(countReport(reporter, seen).requests[0]?.body).toMatchObject({
      method: 'drums seen',
      seenFrom: 'air',
      millilitres: 600_000,
    });
    const words = 'By stick, upright drum: 47 cm.';
    const dipped = { ...seen, seenFrom: 'ground', openLitres: litres(121), words } as const;
    expect(countReport(reporter, dipped).requests[0]?.body).toMatchObject({
      method: 'dip',
      millilitres: 721_000,
      note: expect.stringContaining(words),
    });
  });
});
