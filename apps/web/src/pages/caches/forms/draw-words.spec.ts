import type { Batch, Drum, DrumToOpen } from '@drumline/stock';
import { kilograms, kilogramsPerLitre, litres } from '@drumline/units';
import { describe, expect, it } from 'vitest';
import { timeSaid } from '../../../counting/typed.js';
import type { Cache } from '../caches-read.js';
import { drawSaid, drumWords } from './draw-words.js';

const batch: Batch = {
  ...{ id: 'J27-041', grade: 'Jet A-1', filledOn: '2027-05-01', retestDue: '2028-04-30' },
  ...{ densityAt15KgPerLitre: kilogramsPerLitre(0.8), filledAt: ['XALD'] },
};
const drumAt = (number: string, changes: Partial<Drum> = {}): Drum => ({
  ...{ number, batch: batch.id, place: 'XESK', content: 'filled sealed', litres: litres(200) },
  ...{ tareKg: kilograms(20), grossKg: kilograms(180) },
  ...changes,
});
const fit = (number: string, changes?: Partial<Drum>): DrumToOpen => ({
  ...{ drum: drumAt(number, changes), batch, fitness: 'fit', hold: null },
});
const water = { reason: 'water found', by: 'fuel quality', at: '2027-06-14T06:00Z' };
const held: DrumToOpen = { ...fit('0503'), fitness: 'held', hold: water };
const old: DrumToOpen = { ...fit('0467'), fitness: 'past retest' };

// ESK after the recall of product.md, T4: 1,200 L usable of which 400 L are the medevac reserve.
const cache = { medevacReserveLitres: 400, stock: { usableLitres: 1200 } } as unknown as Cache;
const said = (row: DrumToOpen, drawn: number, { isMedevac = false, usable = 1200, first = row } = {}) =>
  drawSaid({
    cache: { ...cache, stock: { ...cache.stock, usableLitres: usable } },
    drums: first === row ? [row] : [first, row],
    ...{ number: row.drum.number, litres: drawn, isMedevac },
  });

describe('the drums of a draw', () => {
  it('a held drum says HOLD, one past its retest date says so, an open one too', () => {
    expect([held, old, fit('0447', { content: 'part used', litres: litres(80) })].map(drumWords)).toEqual([
      '0503, 200 L, HOLD',
      '0467, 200 L, past retest',
      '0447, 80 L, part used',
    ]);
  });
});

describe('a draw before it is kept', () => {
  it('from a fit drum leaves so much, and asks nothing', () => {
    expect(said(fit('0447'), 150)).toEqual({ words: 'Leaves 1,050 L usable.', doubts: [] });
  });

  it('from a held drum leaves what was usable, and is asked with the reason of the hold', () => {
    expect(said(held, 200)).toEqual({
      words: 'Leaves 1,200 L usable. 0503 was not in that figure.',
      doubts: ['HOLD: 0503 is held, water found. Pump no more of it; fuel quality has to hear of it.'],
    });
    expect(said(old, 200).doubts).toEqual([
      '0467 is past its retest date, Sun 30 April 2028. Pump no more of it.',
    ]);
  });

  it('of 2,000 L from a drum of 200 L is asked, and takes no more off usable than the drum has', () => {
    expect(said(fit('0467'), 2000)).toEqual({
      words: 'Leaves 1,000 L usable.',
      doubts: ['0467 holds 200 L by the book, and 2,000 L is written: another drum too, or a slip?'],
    });
  });

  it('into the medevac reserve is asked with the litres, unless it was a medevac', () => {
    expect(said(fit('0447'), 200, { usable: 500 }).doubts).toEqual([
      '100 L of it are the medevac reserve of 400 L: say why below if it was a medevac.',
    ]);
    expect(said(fit('0447'), 200, { usable: 500, isMedevac: true }).doubts).toEqual([]);
    expect(said(fit('0447'), 200, { usable: 100 }).doubts).toEqual([
      '200 L of it are the medevac reserve of 400 L: say why below if it was a medevac.',
    ]);
  });

  it('a sealed drum while one is open: the open one is named', () => {
    const first = fit('0446', { content: 'part used', litres: litres(80) });
    expect(said(fit('0447'), 100, { first }).words).toBe(
      'Leaves 1,100 L usable. 0446 is open already and comes before 0447.',
    );
  });
});

describe('a time that is still to come today', () => {
  const at = (now: string) => ({
    ...{ now: new Date(now), today: '2027-06-15', day: () => 'Mon 14' },
    isoDay: (instant: Date | string) => new Date(instant).toISOString().slice(0, 10),
    time: (instant: Date | string) => new Date(instant).toISOString().slice(11, 16),
  });

  it('is said to be read as of yesterday, and asked where that is half a day ago and more', () => {
    expect(timeSaid('2027-06-14T23:00Z', at('2027-06-15T06:08Z'))).toEqual({
      words: '23:00 is still to come today: read as Mon 14, 23:00.',
      doubts: [],
    });
    expect(timeSaid('2027-06-14T09:30Z', at('2027-06-15T07:04Z'))).toEqual({
      words: undefined,
      doubts: ['09:30 is still to come today: read as Mon 14, 09:30.'],
    });
    expect(timeSaid('2027-06-15T06:00Z', at('2027-06-15T06:08Z')).words).toBeUndefined();
  });
});
