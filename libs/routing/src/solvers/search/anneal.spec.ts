import { describe, expect, it } from 'vitest';
import { Anneal } from './anneal.js';

/** A budget of so many rounds after so many of them. */
const after = (iterations: number, of: number) => ({ iterations, used: iterations / of });

describe('anneal', () => {
  it('one anneal in a budget too short for two: hot at the beginning, cold at the end', () => {
    const anneal = new Anneal(10);
    const temperatures = [0, 500, 5000, 10_000].map((rounds) => anneal.temperature(after(rounds, 10_000)));
    expect(temperatures).toEqual(temperatures.toSorted((a, b) => b - a));
    expect(temperatures.at(0)).toBeCloseTo(0.1);
    expect(temperatures.at(-1)).toBeCloseTo(0.003);
    expect([500, 9999, 10_000].some((rounds) => anneal.isOver(after(rounds, 10_000)))).toBe(false);
  });

  it('from a good plan it begins cooler, and is cold when the budget is used all the same', () => {
    const anneal = new Anneal(10);
    anneal.again(after(6000, 10_000));
    expect(anneal.temperature(after(6000, 10_000))).toBeLessThan(0.05);
    expect(anneal.temperature(after(10_000, 10_000))).toBeCloseTo(0.003);
  });

  it('the farther a plan is above the bound, the hotter it begins, never hotter than from nowhere', () => {
    const hotFrom = (gap: number) => {
      const anneal = new Anneal(10);
      anneal.again(after(0, 10_000), gap);
      return anneal.temperature(after(0, 10_000));
    };
    expect([0.001, 0.005].map(hotFrom)).toEqual([hotFrom(0), hotFrom(0)]);
    expect(hotFrom(0.02)).toBeGreaterThan(hotFrom(0.01));
    expect(hotFrom(0.5)).toBeCloseTo(0.1);
  });

  it('a long budget has several anneals, each cold at its end', () => {
    const anneal = new Anneal(10);
    const ends: number[] = [];
    let before = 0;
    for (let rounds = 0; rounds <= 100_000; rounds++) {
      const now = after(rounds, 100_000);
      if (anneal.isOver(now)) {
        ends.push(before);
        anneal.again(now);
      }
      before = anneal.temperature(now);
    }
    expect(ends.length).toBeGreaterThan(3);
    for (const end of [...ends, before]) expect(end).toBeCloseTo(0.003, 4);
  });
});
