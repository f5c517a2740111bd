import { expect, it } from 'vitest';
import { offeredWords, progressWords, weakProofWords } from './plan-words.js';

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

it('a search without a possible flight costs little: what falls short is counted apart, and is no money', () => {
  const progress = { stage: 'search', seconds: 3, best: 841_891_500, bestMoney: 0, bound: null, gap: null };
  const words = progressWords(progress, 'CAD');
  expect(words.cost).toBe('0 CAD');
  expect(words.counted).toBe('8,418,915 CAD, not paid');
});

it('a search with nothing short counts nothing beside its cost', () => {
  const progress = {
    ...{ stage: 'search', seconds: 3, gap: 0.1 },
    ...{ best: 5_200_000, bestMoney: 5_200_000, bound: 4_700_000 },
  };
  const words = progressWords(progress, 'cr');
  expect([words.cost, words.counted, words.best]).toEqual(['52,000 cr', 'nothing', '52,000 cr']);
});
