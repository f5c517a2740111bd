import { describe, expect, it } from 'vitest';
import { type DrumOfFlight, deliveryDifferences, drumsMissing } from './flight-drums.js';

const left = (drum: string, place: string): DrumOfFlight => ({
  drum,
  off: { kind: 'left at', place },
  aboard: false,
});
const home = (drum: string): DrumOfFlight => ({
  drum,
  off: { kind: 'brought home', place: 'XMER' },
  aboard: false,
});
const aboard = (drum: string): DrumOfFlight => ({ drum, off: null, aboard: true });
const load = (...drums: readonly (string | null)[]) => drums.map((drum) => ({ drum, place: 'XGAN' }));

describe('every drum accounted for', () => {
  it('three left and one brought home are four', () => {
    const moved = [left('0431', 'XGAN'), left('0432', 'XGAN'), left('0433', 'XGAN'), home('0434')];
    expect(drumsMissing(load('0431', '0432', '0433', '0434'), moved)).toEqual([]);
  });

  it('one still aboard is missing, and so is one that no report names', () => {
    expect(drumsMissing(load('0431', '0432', '0433'), [left('0431', 'XGAN'), aboard('0432')])).toEqual([
      'Drum 0432 is still aboard: say where it was left, or that it came home.',
      'Drum 0433 is on the load and no report names it: loaded, left or home?',
    ]);
  });

  it('a drum that was planned without a number is one of those that the reports name', () => {
    expect(drumsMissing(load('0431', null), [left('0431', 'XGAN')])).toEqual([
      '1 drum without a number was planned: enter which.',
    ]);
    expect(drumsMissing(load('0431', null), [left('0431', 'XGAN'), left('0500', 'XGAN')])).toEqual([]);
  });
});

describe('what was left against the plan', () => {
  const stops = [{ place: 'XGAN', drums: 3 }];

  it('drums at a place of no plan are one thing to look at', () => {
    const moved = [left('0431', 'XCIN'), left('0432', 'XCIN'), left('0433', 'XGAN')];
    expect(deliveryDifferences(stops, moved, false)).toEqual([
      '2 drums left at XCIN, which is not on its plan: 0431 and 0432.',
    ]);
  });

  it('what a stop is short of is said when the flight is over, what it has too many at once', () => {
    const two = [left('0431', 'XGAN'), left('0432', 'XGAN')];
    expect(deliveryDifferences(stops, two, false)).toEqual([]);
    expect(deliveryDifferences(stops, two, true)).toEqual(['XGAN: 2 drums left, 3 planned.']);
    const four = [...two, left('0433', 'XGAN'), left('0434', 'XGAN')];
    expect(deliveryDifferences(stops, four, false)).toEqual(['XGAN: 4 drums left, 3 planned.']);
    expect(deliveryDifferences(stops, four.slice(1), true)).toEqual([]);
  });
});
