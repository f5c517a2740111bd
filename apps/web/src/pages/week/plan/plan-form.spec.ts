import { describe, expect, it } from 'vitest';
import type { WeekFlight } from '../week-read.js';
import { faultsOf, freedomsOf, heardWords, type PlanForm, requestOf } from './plan-form.js';

const flight = (id: string, state: string, rest: Partial<WeekFlight> = {}): WeekFlight => ({
  id,
  kind: 'positioning',
  state,
  version: 1,
  revision: 1,
  needsDecision: null,
  heldInPlace: false,
  unheard: false,
  date: '2027-06-15',
  departs: '07:00',
  aircraft: 'A1',
  pilot: null,
  route: ['XMER', 'XLOR', 'XMER'],
  drums: 4,
  drumsPossible: 4,
  binding: null,
  lastAct: 'offer',
  changedAt: '2027-06-14T06:00Z',
  changedByName: 'T. Orrin',
  ...rest,
});

const form: PlanForm = {
  from: '2027-06-15',
  days: '14',
  offeredDays: '7',
  endTarget: 'operator',
  changePrice: '100',
  seconds: '20',
  note: 'XLOR soft 06:52',
  letGo: new Set(),
  keep: new Set(),
};

// Tuesday as in product.md, T1: F01 flown, F05 given and broken, F06 given, F08 and F09 offered, F10 held in place.
const freedoms = freedomsOf([
  flight('F01', 'reported'),
  flight('F06', 'given'),
  flight('F05', 'given', { needsDecision: 'XLOR when soft accepts 7,600 lb.' }),
  flight('F08', 'offered', { date: '2027-06-16' }),
  flight('F09', 'offered', { date: '2027-06-17' }),
  flight('F10', 'offered', { heldInPlace: true }),
  flight('F11', 'declined'),
]);
const ids = (flights: readonly WeekFlight[]) => flights.map(({ id }) => id);

describe('what a re-plan may change', () => {
  it('flown and held flights never, given ones when let go, offered ones freely, declined ones are no matter', () => {
    expect(ids(freedoms.never)).toEqual(['F01', 'F10']);
    expect(ids(freedoms.free)).toEqual(['F08', 'F09']);
  });

  it('shows those first that need a decision', () => {
    expect(ids(freedoms.whenLetGo)).toEqual(['F05', 'F06']);
  });
});

describe('the request', () => {
  it('from now leaves every offered flight open, at the price of change in cents', () => {
    expect(requestOf(form, freedoms, '2027-06-15')).toEqual({
      from: '2027-06-15',
      days: 14,
      offeredDays: 7,
      endTarget: 'operator',
      seconds: 20,
      changePrice: 10_000,
      frozen: [],
      note: 'XLOR soft 06:52',
    });
  });

  it('from a day leaves the flights before it as they are, and those that are kept by name', () => {
    const fromThursday = { ...form, from: '2027-06-17', note: '' };
    expect(requestOf(fromThursday, freedoms, '2027-06-15').frozen).toEqual(['F08']);
    const kept = requestOf({ ...fromThursday, keep: new Set(['F09']) }, freedoms, '2027-06-15');
    expect(kept.frozen).toEqual(['F08', 'F09']);
    expect('note' in kept).toBe(false);
  });

  it('is refused with words where a figure cannot be, or a flight is let go without a reason', () => {
    expect(Object.keys(faultsOf({ ...form, days: '0', seconds: 'long', changePrice: '-1' }))).toEqual([
      'days',
      'changePrice',
      'seconds',
    ]);
    expect(faultsOf({ ...form, note: '', letGo: new Set(['F05']) }).note).toContain('says why');
    expect(faultsOf({ ...form, note: '' })).toEqual({});
  });
});

it('says why a plan is asked for: the last word of each strip', () => {
  const heard = [
    { place: 'XLOR', state: 'damp', at: '06:10' },
    { place: 'XHAS', state: 'soft', at: '06:40' },
    { place: 'XLOR', state: 'soft', at: '06:52' },
  ];
  expect(heardWords(heard, (at) => at)).toBe('XLOR soft 06:52, XHAS soft 06:40');
});
