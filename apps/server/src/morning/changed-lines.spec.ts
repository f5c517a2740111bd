import { expect, it } from 'vitest';
import { changedLines } from './changed-lines.js';

const marked = (flight: string, reason: string, person: string | null = 'drumline') => ({
  ...({ kind: 'flight', at: '2027-06-14T07:00Z', writtenAt: null, means: null } as const),
  person,
  facts: { flight, act: 'mark', state: 'offered', reason },
});
const said = (...rows: Parameters<typeof changedLines>[0]) =>
  changedLines(rows, new Map()).map(({ what }) => what);

it('a flight that needs a decision is named with why, without what to do about it', () => {
  const why = 'F05, Tue 15 Jun, XALD-XLOR: XLOR strip landing limit, 531.5 lb over. Take two drums off.';
  expect(said(marked('F05', why))).toEqual([
    'F05 needs a decision: XLOR strip landing limit, 531.5 lb over.',
  ]);
});

it('flights that one hold touches are one line; another reason, or another person, is another', () => {
  const held = (aboard: string) => `Batch J27-041 is held: water found. Aboard: ${aboard}.`;
  expect(
    said(
      marked('F002', held('0528')),
      marked('F001', held('0523')),
      marked('F004', 'F004, Tue 15 Jun: A2 is out for work. Use another aircraft.'),
      marked('F003', held('0531'), 'Fuel quality'),
    ),
  ).toEqual([
    'F001, F002 need a decision: Batch J27-041 is held: water found.',
    'F004 needs a decision: A2 is out for work.',
    'F003 needs a decision: Batch J27-041 is held: water found.',
  ]);
});
