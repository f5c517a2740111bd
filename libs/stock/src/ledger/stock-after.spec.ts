import { litres } from '@drumline/units';
import { describe, expect, it } from 'vitest';
import { exampleCache, examplePicture, newBatch, oldBatch, partDrum, sealedDrum } from '../example-stock.js';
import { openingStock } from '../opening-stock.js';
import { projectCaches } from '../project-caches.js';
import type { Movement } from './movement.js';
import { stockAfter } from './stock-after.js';

const picture = examplePicture(
  [partDrum('01', 'new', 'STRIP', 75), sealedDrum('02', 'new', 'STRIP'), sealedDrum('03', 'new', 'STRIP')],
  { batches: [oldBatch, newBatch] },
);

let made = 0;
const at = (minute: string) => {
  made += 1;
  const time = `2027-06-14T07:${minute}:00.000Z`;
  return {
    id: `m${made}`,
    happenedAt: time,
    writtenAt: time,
    receivedAt: time,
    means: 'phone',
    by: 'RW1',
    witnesses: [],
  } as const;
};
const draw = (drum: string, amount: number, minute = '10'): Movement =>
  ({
    kind: 'drawn',
    ...at(minute),
    drum,
    place: 'STRIP',
    millilitres: amount * 1000,
    into: 'H1',
    programme: 'P1',
    leftMillilitres: null,
  }) as unknown as Movement;

const after = (movements: readonly Movement[], of = picture) => {
  const stock = stockAfter(of, movements, 'Etc/GMT');
  const asOf = '2027-06-14T08:00:00.000Z';
  return { stock, figures: openingStock(['STRIP', 'PAD'], { ...stock, asOf }, '2027-06-14') };
};
const drum = (stock: typeof picture, number: string) => stock.drums.find((each) => each.number === number);

describe('a picture with reports that it does not know yet', () => {
  it('a draw empties the part-used drum and opens the next: usable falls by what was drawn, at once', () => {
    const { stock, figures } = after([draw('01', 75), draw('02', 50, '11')]);
    expect(drum(stock, '01')).toMatchObject({ content: 'empty with residue', litres: 0 });
    expect(drum(stock, '02')).toMatchObject({ content: 'part used', litres: 150, openedOn: '2027-06-14' });
    expect(figures.get('STRIP')).toMatchObject({ bookLitres: 350, usableLitres: 350 });
  });

  it('and with it the whole projection', () => {
    const outlook = (of: typeof picture) => ({
      picture: of,
      caches: [exampleCache('STRIP')],
      dates: ['2027-06-14', '2027-06-15'],
      fillLitres: litres(200),
      draws: [{ date: '2027-06-15', place: 'STRIP', litres: litres(100), for: 'P1' }],
      landings: [],
      slings: [],
    });
    const [before] = projectCaches(outlook(picture));
    const [then] = projectCaches(outlook(after([draw('01', 75)]).stock));
    expect(before?.usable).toEqual([475, 475, 375]);
    expect(then?.usable).toEqual([400, 400, 300]);
  });

  it('a rejected drum is held, and out of usable', () => {
    const rejected = { kind: 'held', ...at('12'), of: { drum: '02' }, reason: 'water' } as Movement;
    const { stock, figures } = after([rejected]);
    expect(drum(stock, '02')?.held).toMatchObject({ reason: 'water', by: 'RW1' });
    expect(figures.get('STRIP')).toMatchObject({ bookLitres: 475, heldLitres: 200, usableLitres: 275 });
  });

  it('a slung drum stands at the pad; one that was dropped stands nowhere', () => {
    const slung = { kind: 'slung', ...at('13'), drum: '02', helicopter: 'H1', from: 'STRIP', to: 'PAD' };
    const lost = { kind: 'lost', ...at('14'), drum: '03', place: 'STRIP' };
    const { figures } = after([slung as Movement, lost as Movement]);
    expect(figures.get('PAD')?.usableLitres).toBe(200);
    expect(figures.get('STRIP')?.usableLitres).toBe(75);
  });

  it('a count that found less counts, and is carried forward by a later draw', () => {
    const counted = {
      kind: 'counted',
      ...at('20'),
      place: 'STRIP',
      method: 'dip',
      seenFrom: 'ground',
      millilitres: 275_000,
      sealedDrums: 1,
      openDrums: 1,
      emptyDrums: 0,
    } as unknown as Movement;
    expect(after([counted]).figures.get('STRIP')).toMatchObject({
      countShortfallLitres: 200,
      usableLitres: 275,
      lastCount: { verdict: 'lower' },
    });
    const later = after([counted, draw('01', 25, '30')]).figures.get('STRIP');
    expect(later).toMatchObject({ bookLitres: 450, countShortfallLitres: 200, usableLitres: 250 });
    const earlier = after([draw('01', 25, '10'), counted]).figures.get('STRIP');
    expect(earlier).toMatchObject({ bookLitres: 450, usableLitres: 275 });
  });

  it('is the same whatever the order in which the reports are handed over', () => {
    const reports = [draw('01', 25, '10'), draw('01', 25, '11'), draw('02', 10, '12')];
    expect(after([...reports].reverse()).stock).toEqual(after(reports).stock);
  });
});
