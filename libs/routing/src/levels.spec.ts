import { describe, expect, it } from 'vitest';
import { storeCourse } from './levels.js';
import { cache } from './testing/plain-problem.js';

const nothing = [0, 0, 0];

describe('storeCourse', () => {
  it('order of a day: arrivals and deliveries, losses, demand, then the level is tested', () => {
    const store = { ...cache, opening: 1, arrivals: [1, 0, 0], losses: [0, 1, 0] };
    expect(storeCourse(store, [3, 0, 0])).toEqual({ levels: [3, 0, 0], unmet: [0, 0, 2] });
  });

  it('demand stops at the floor; what cannot be drawn is unmet and lost', () => {
    expect(storeCourse({ ...cache, opening: 4, floor: 1 }, nothing)).toEqual({
      levels: [2, 1, 1],
      unmet: [0, 1, 2],
    });
  });

  it('a level below the floor is left as it is', () => {
    expect(storeCourse({ ...cache, opening: 0.5, floor: 1 }, nothing)).toEqual({
      levels: [0.5, 0.5, 0.5],
      unmet: [2, 2, 2],
    });
  });

  it('a loss of what is not there counts as unmet', () => {
    expect(storeCourse({ ...cache, opening: 1, losses: [3, 0, 0] }, nothing).unmet[0]).toBe(2 + 2);
  });
});
