import type { FillListAnswer } from '@drumline/contract';
import type { BaseStock, Batch } from '@drumline/stock';
import { centsPerLitre, kilogramsPerLitre, litres } from '@drumline/units';
import { describe, expect, it } from 'vitest';
import { fillList } from './fill-list.js';

const base: BaseStock = {
  place: 'HOM',
  bulkLitres: litres(2000),
  pricePerLitre: centsPerLitre(150),
  fillDrumsPerDay: 3,
  emptiesFitForUse: 8,
  resupplies: [],
};
const line = (drums: number, fillBy: string, plannedUse = '2031-03-20'): FillListAnswer['lines'][number] => ({
  flight: 'F01',
  version: 1,
  state: 'approved',
  needsDecision: null,
  date: '2031-03-09',
  departs: '08:00',
  aircraft: 'T1',
  pilot: null,
  from: 'HOM',
  to: 'NOR',
  drums,
  fillBy,
  plannedUse,
});
const batch = (id: string, filledOn: string, retestDue: string, rest: Partial<Batch> = {}): Batch => ({
  id,
  grade: 'JET A-1',
  filledOn,
  retestDue,
  densityAt15KgPerLitre: kilogramsPerLitre(0.8),
  filledAt: ['HOM'],
  ...rest,
});
const of = (lines: FillListAnswer['lines'], batches: readonly Batch[] = []) =>
  fillList({ base, lines, batches, fillLitres: litres(200), today: '2031-03-03' });

describe('a fill list', () => {
  it('adds up drums and litres, and nothing falls short', () => {
    const list = of([line(2, '2031-03-03'), line(4, '2031-03-04')]);
    expect(list).toMatchObject({ place: 'HOM', drums: 6, litres: 1200, short: [] });
  });

  it('more than the base can fill by the day before the flight is said', () => {
    expect(of([line(2, '2031-03-03'), line(5, '2031-03-04')]).short).toEqual([
      '7 drums to fill by Tue 4 Mar, and 6 can be filled by then, at 3 a day.',
    ]);
  });

  it('a flight of today whose drums were to be filled yesterday is too late', () => {
    expect(of([line(1, '2031-03-02')]).short).toEqual([
      '1 drum to fill by Sun 2 Mar, and 0 can be filled by then, at 3 a day.',
    ]);
  });

  it('more than the empties, or than the bulk, is said', () => {
    expect(of([line(11, '2031-03-30')]).short).toEqual([
      '11 drums to fill, and 8 empties fit for use.',
      '11 drums to fill, and 10 drums in the bulk of today.',
    ]);
  });

  it('offers the batches of the base that are fit when the last drum is burned, the newest first', () => {
    const batches = [
      batch('OLD', '2030-05-01', '2031-03-19'),
      batch('GOOD', '2031-01-01', '2032-01-01'),
      batch('NEW', '2031-02-01', '2032-02-01'),
      batch('HELD', '2031-02-02', '2032-02-01', {
        held: { reason: 'water', by: 'QA', at: '2031-03-01T00:00Z' },
      }),
      batch('AWAY', '2031-02-03', '2032-02-01', { filledAt: ['SEA'] }),
    ];
    expect(of([line(1, '2031-03-04')], batches).batches.map(({ id }) => id)).toEqual(['NEW', 'GOOD']);
  });
});
