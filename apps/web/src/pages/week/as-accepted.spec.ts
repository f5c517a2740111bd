import { expect, it } from 'vitest';
import { isAsAccepted } from './as-accepted.js';
import { exampleFlight } from './week-example.js';
import type { Week } from './week-read.js';

const cost = { flight: 1, fuel: 1, handling: 1, total: 3, litres: 0, perLitre: null };
const plan = { id: '1', number: 1, asOf: '2027-06-14T06:00Z', acceptedByName: 'Ana', cost, moneyGap: null };
const holds = (flight: Parameters<typeof exampleFlight>[0], heardSince: Week['heardSince'] = []) =>
  isAsAccepted({ plan, flights: [exampleFlight(flight)], heardSince });

it('the gap of a plan stands beside its costs until a strip is heard of or a flight is changed', () => {
  expect(holds({ lastAct: 'approve', changedAt: '2027-06-14T06:05:00.000Z' })).toBe(true);
  const soft = { place: 'XLOR', state: 'soft', at: '2027-06-14T06:00Z', by: 'strip helper' };
  expect(holds({ lastAct: 'offer' }, [soft])).toBe(false);
  expect(holds({ lastAct: 'amend', changedAt: '2027-06-14T06:05:00.000Z' })).toBe(false);
  expect(holds({ needsDecision: '14 drums stood filled.' })).toBe(false);
});

it('an amendment from before the plan was asked for is part of the plan', () => {
  expect(holds({ lastAct: 'amend', changedAt: '2027-06-14T05:40:00.000Z' })).toBe(true);
});
