import { describe, expect, it } from 'vitest';
import { courseScale, moneyTicks, steps, withPoint } from './course.js';

const at = (seconds: number, best: number | null, bound: number | null) => ({
  stage: 'search',
  seconds,
  best,
  bound,
  gap: null,
});

describe('the course of a search', () => {
  it('grows by what is new, and not by what was heard before', () => {
    const first = withPoint([], at(1, 60_000, null));
    const same = withPoint(first, at(1, 60_000, null));
    expect(same).toBe(first);
    expect(withPoint(same, at(2, 55_000, 54_000))).toEqual([
      { seconds: 1, best: 60_000, bound: null },
      { seconds: 2, best: 55_000, bound: 54_000 },
    ]);
  });

  it('begins anew where another worker took the run up', () => {
    const course = withPoint(withPoint([], at(5, 60_000, null)), at(9, 58_000, null));
    expect(withPoint(course, at(1, 61_000, null))).toEqual([{ seconds: 1, best: 61_000, bound: null }]);
  });
});

describe('its graph', () => {
  const course = [
    { seconds: 1, best: 9_000_000, bound: null },
    { seconds: 2, best: 5_600_000, bound: 5_300_000 },
    { seconds: 8, best: 5_560_000, bound: 5_420_000 },
  ];

  it('shows the money that the search is about now, a poor first plan at the edge', () => {
    const scale = courseScale(course, 20)!;
    expect(scale.down(9_000_000)).toBe(0);
    expect(scale.down(5_600_000)).toBeGreaterThan(0);
    expect(scale.down(5_300_000)).toBeLessThan(1);
    expect(scale.across(10)).toBe(0.5);
  });

  it('has round money beside it, whatever the search is about', () => {
    const scale = courseScale(course, 20)!;
    expect(moneyTicks(scale).map((cents) => cents / 100)).toEqual([56_000, 55_000, 54_000, 53_000]);
    expect(moneyTicks({ top: 5_230_700, bottom: 5_230_600 })).toEqual([5_230_700, 5_230_600]);
  });

  it('holds an amount until the next is known, and leaves out what is not known yet', () => {
    const scale = courseScale(course, 20)!;
    const bound = steps(course, scale, (point) => point.bound);
    expect(bound.map(([across]) => across)).toEqual([0.1, 0.4, 0.4]);
    expect(bound[1]![1]).toBe(bound[0]![1]);
    expect(courseScale([{ seconds: 1, best: null, bound: null }], 20)).toBeNull();
  });
});
