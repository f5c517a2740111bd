import type { ComparedFlight, Differences, Totals } from '../differences-read.js';
import { findingOf } from '../finding.js';

export const money = (flight: number, fuel: number, handling: number) => ({
  flight,
  fuel,
  handling,
  total: flight + fuel + handling,
  litres: 0,
  perLitre: null,
});

export const totals = (cost: Totals['cost'], rest: Partial<Totals>): Totals => ({
  flights: 16,
  drums: 73,
  litres: 14_600,
  blockHours: 18.9,
  cost,
  drumsFromBase: [],
  ...rest,
});

export const flight = (id: string, rest: Partial<ComparedFlight> = {}): ComparedFlight => ({
  id,
  kind: 'positioning',
  state: 'offered',
  date: '2027-06-15',
  departs: '07:00',
  aircraft: 'A1',
  pilot: null,
  from: 'XMER',
  stops: [{ place: 'XLOR', drums: 4 }],
  legs: [
    {
      drumsAboard: 4,
      drumsPossible: 4,
      spareLb: 20,
      binding: { name: 'strip landing limit', place: 'XLOR' },
    },
  ],
  drums: 4,
  litres: 800,
  blockHours: 1.37,
  cost: money(134_400, 196_000, 3_600),
  reason: { protects: { place: 'XLOR', date: '2027-06-15', level: 'below minimum' }, text: 'Keeps XLOR.' },
  ...rest,
});

// Figures of product.md, T1: the reference re-plan after LOR and HAS went soft.
export const softTuesday: Differences = {
  removed: [
    flight('F05', {
      aircraft: 'B1',
      from: 'XALD',
      stops: [{ place: 'XLOR', drums: 6 }],
      drums: 6,
      litres: 1200,
      blockHours: 1.98,
      cost: money(245_440, 180_000, 5_400),
    }),
  ],
  moved: [{ before: flight('F06'), after: flight('F06', { aircraft: 'A2' }) }],
  added: [flight('P01'), flight('P02', { date: '2027-06-23' })],
  drumsChanged: [],
  cannotKeep: [],
  remarks: [],
  same: [
    { before: flight('F01', { state: 'reported' }), after: flight('F01', { state: 'reported' }) },
    { before: flight('F09'), after: flight('F09') },
  ],
  totals: {
    before: totals(money(2_202_100, 3_254_000, 65_700), {
      drumsFromBase: [
        { place: 'XALD', drums: 17 },
        { place: 'XMER', drums: 56 },
      ],
    }),
    after: totals(money(2_114_500, 3_384_000, 63_900), {
      drums: 71,
      litres: 14_200,
      blockHours: 19,
      drumsFromBase: [
        { place: 'XALD', drums: 5 },
        { place: 'XMER', drums: 66 },
      ],
    }),
  },
  lowest: [],
  asOf: '2027-06-15T06:52Z',
  lastOfferedDay: '2027-06-21',
  lastDay: '2027-06-28',
  laterIdeas: { before: 0, after: 1 },
  mayLeaveOut: ['F05', 'F06', 'P01'],
  leftOut: [],
  faultsAfter: [],
  faults: [{ flight: 'F05', text: 'XLOR when soft accepts 7,600 lb.' }],
  bases: {
    before: [{ place: 'XMER', drumsReady: 114, leftLitres: 11_600, note: 'nothing before November' }],
    after: [{ place: 'XMER', drumsReady: 114, leftLitres: 9_600, note: 'nothing before November' }],
  },
  expectedDrums: { before: 60.6, after: 58.8 },
  levels: [],
};

export const day = (date: string) => date.slice(8);
export const find = (change: Partial<Differences['totals']>) =>
  findingOf({ ...softTuesday, totals: { ...softTuesday.totals, ...change } }, 'cr');
