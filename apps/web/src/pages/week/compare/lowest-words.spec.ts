import { describe, expect, it } from 'vitest';
import { keptByIdeasWords } from './lowest-words.js';

describe('the lowest levels', () => {
  // a-diff: the first plan of the demo.
  const lowest = (place: string, afterLitres: number, withIdeas: number) => ({
    ...{ place, minimumLitres: 1000, criticalLitres: 600, beforeLitres: -1, afterLitres },
    withIdeas: { beforeLitres: -1, afterLitres: withIdeas },
  });

  it('name the caches that only ideas keep, which no line of what it cannot keep has', () => {
    expect(
      keptByIdeasWords([lowest('XFAL', 5, 1005), lowest('XKNA', -20, 1400), lowest('XMAR', 375, 375)]),
    ).toBe('Kept by ideas only, not offered yet: XFAL (5 L without them), XKNA (runs out).');
    expect(keptByIdeasWords([lowest('XMAR', 375, 375), lowest('XGAN', 1480, 1480)])).toBeNull();
  });
});
