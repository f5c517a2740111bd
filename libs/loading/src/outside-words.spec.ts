import { expect, it } from 'vitest';
import { outsideWords } from './outside-words.js';

// The demo's T8 and M16 (product.md): wrong positions of C1, and fuel that moves B out of its envelope.
it('both arms of a refusal stand in the same parts of an inch: tenths, or finer where tenths are the same', () => {
  const c1 = { moment: 'zero fuel', armIn: 211.9477, forwardIn: 199.5, aftIn: 211 };
  expect(outsideWords(c1)).toBe('zero fuel 211.9 in against aft 211.0 in');
  const b = { moment: 'take-off', armIn: 193.8465, forwardIn: 178, aftIn: 193.8 };
  expect(outsideWords(b)).toBe('take-off 193.85 in against aft 193.80 in');
  expect(outsideWords({ ...b, armIn: 177.2 })).toBe('take-off 177.2 in against forward 178.0 in');
});
