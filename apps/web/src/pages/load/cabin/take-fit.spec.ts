import { expect, it } from 'vitest';
import { insteadWords, tooFewFit } from './standing.js';

it('all held drums for fit ones in one act; where fewer stand there, how many', () => {
  const held = ['0523', '0524', '0525', '0526'];
  const enough = { held, fit: ['0573', '0574', '0575', '0576'] };
  expect(insteadWords(enough)).toBe('Take 4 fit drums instead: 0573, 0574, 0575 …');
  expect(tooFewFit(enough, 'XMER')).toBeUndefined();
  expect(tooFewFit({ held, fit: ['0573'] }, 'XMER')).toBe(
    '4 drums are on HOLD, and 1 fit drum stands free at XMER. Fill more, or amend the flight.',
  );
});
