import { describe, expect, it } from 'vitest';
import { cellDoubt, cellsOf, columnOf, faultWhere, limitOf, limitRows, references } from './limit-cells.js';

const limit = (type: string, whenSoft: unknown) => ({
  id: `XLOR-${type}`,
  data: {
    place: 'XLOR',
    type,
    takeoffLb: 8300,
    landingLb: 8300,
    whenSoft,
    reference: 'strip table, revision 12',
  },
});
const most = { takeoffLb: 7150, landingLb: 7000 };
const row = { id: 'XLOR-B', most, place: 'XLOR', type: 'B', line: null };

describe('the table of strip limits', () => {
  it('says where a fault is by the heads of its columns, and not by the names of a file', () => {
    expect(faultWhere({ id: 'XLOR-B', path: 'landingLb' })).toBe('XLOR-B, Landing, lb');
    expect(faultWhere({ id: 'XLOR-B', path: 'whenSoft.landingLessLb' })).toBe(
      'XLOR-B, Soft: off landing, lb',
    );
    expect(faultWhere({ id: 'XLOR-B', path: '' })).toBe('XLOR-B');
  });

  it('has every type at every strip, approved or not, and no pad', () => {
    const places = [
      { id: 'XLOR', data: { kind: 'strip' } },
      { id: 'XPAD', data: { kind: 'pad' } },
    ];
    const types = [
      { id: 'A', data: {} },
      { id: 'B', data: {} },
    ];
    expect(
      limitRows(places, types, [limit('B', 'closed')]).map(({ id, line }) => [id, line !== null]),
    ).toEqual([
      ['XLOR-A', false],
      ['XLOR-B', true],
    ]);
  });

  it('asks whether a figure is kg where the type would be near to it in kg only; what comes off when soft is not asked about', () => {
    expect(cellDoubt(row, 'takeoffLb', '3,130')).toBe('Is it kg?');
    expect(cellDoubt(row, 'landingLb', '6,650')).toBeNull();
    expect(cellDoubt(row, 'softTakeoffLessLb', '313')).toBeNull();
    expect(cellDoubt(row, 'takeoffLb', '')).toBeNull();
    expect(cellDoubt(row, 'takeoffLb', 'six')).toBeNull();
  });

  it('reads a limit and gives it back, soft figures or closed', () => {
    for (const whenSoft of ['closed', { takeoffLessLb: 750, landingLessLb: 700 }]) {
      const { data } = limit('B', whenSoft);
      expect(limitOf(row, cellsOf(data), 'strip table, revision 12')).toEqual(data);
    }
  });

  it('takes empty cells as not approved, and leaves half a limit to be refused', () => {
    expect(limitOf(row, cellsOf(undefined), 'r')).toBeNull();
    expect(limitOf(row, { ...cellsOf(undefined), landingLb: '0.7k' }, 'r')).toMatchObject({
      landingLb: '0.7k',
    });
  });

  it('finds the cell of a fault', () => {
    expect([columnOf('landingLb'), columnOf('whenSoft.landingLessLb'), columnOf('')]).toEqual([
      'landingLb',
      'softLandingLessLb',
      null,
    ]);
  });

  it('names the table in force once', () => {
    expect(references([limit('A', 'closed'), limit('B', 'closed')])).toBe('strip table, revision 12');
  });
});
