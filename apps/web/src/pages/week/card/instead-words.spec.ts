import { describe, expect, it } from 'vitest';
import type { ComparedFlight } from '../compare/differences-read.js';
import { insteadWords } from './instead-words.js';

const cost = { flight: 0, fuel: 0, handling: 0, total: 0, litres: 0, perLitre: null };
const flight = (id: string, place: string, rest: Partial<ComparedFlight> = {}): ComparedFlight => ({
  id,
  kind: 'positioning',
  state: 'offered',
  date: '2027-06-15',
  departs: '07:00',
  aircraft: 'A1',
  pilot: null,
  from: 'XMER',
  stops: [{ place, drums: 4 }],
  legs: [],
  drums: 4,
  litres: 800,
  blockHours: 1,
  cost,
  reason: { protects: null, text: 'Moves 1 drum.' },
  ...rest,
});
const plan = {
  removed: [flight('F05', 'XLOR'), flight('F08', 'XHAS')],
  moved: [{ before: flight('F06', 'XGAN'), after: flight('F06', 'XGAN', { aircraft: 'A2' }) }],
  drumsChanged: [],
  added: [flight('P01', 'XLOR'), flight('P02', 'XISK'), flight('P03', 'XLOR', { date: '2027-06-16' })],
};
const day = (date: string) => date.slice(8);

describe('what a plan that waits does in the place of a flight', () => {
  it('removed: the flights that come to the same strip', () => {
    expect(insteadWords(plan, 'F05', day)).toBe('A1 15, XMER-XLOR, 4 drums; A1 16, XMER-XLOR, 4 drums.');
    expect(insteadWords(plan, 'F08', day)).toBe('it is removed, and none comes in its place.');
  });

  it('moved: where to; left alone: nothing is said', () => {
    expect(insteadWords(plan, 'F06', day)).toBe('A2 15, same load.');
    expect(insteadWords(plan, 'F09', day)).toBeNull();
  });
});
