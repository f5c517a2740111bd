import { expect, it } from 'vitest';
import { offeredWords, weakProofWords } from './plan-words.js';

it('a first plan of few flights that could save 93 % by its bound says that the proof is weak', () => {
  expect(weakProofWords({ moneyGap: { savedAtMost: 529_200, share: 0.93 } })).toContain('weak proof');
});

it('a bound that is close, or none, is said as it is', () => {
  expect(weakProofWords({ moneyGap: { savedAtMost: 23_700, share: 0.0045 } })).toBeUndefined();
  expect(weakProofWords({ moneyGap: null })).toBeUndefined();
});

it('flights that were offered are named in the order of their numbers', () => {
  const flights = ['F02', 'F010', 'F08'].map((flight) => ({ flight }));
  expect(offeredWords(flights)).toBe('Offered: F02, F08, F010.');
});
