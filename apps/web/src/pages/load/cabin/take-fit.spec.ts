import { expect, it } from 'vitest';
import { insteadWords, tooFewFit } from './standing.js';

const held = ['0523', '0524', '0525', '0526'];

it('all held drums for fit ones in one act; where fewer stand there, how many', () => {
  const enough = { held, fit: ['0573', '0574', '0575', '0576'], setAside: [] };
  expect(insteadWords(enough)).toBe('Take 4 fit drums instead: 0573, 0574, 0575 …');
  expect(tooFewFit(enough, 'XMER')).toBeUndefined();
  expect(tooFewFit({ held, fit: ['0573'], setAside: [] }, 'XMER')).toBe(
    '4 drums are on HOLD, and 1 fit drum stands free at XMER. Fill more, or amend the flight.',
  );
});

it('where the fit ones are set aside it says for which offered flights', () => {
  const setAside = [
    { flight: 'F06', drums: 4 },
    { flight: 'F08', drums: 2 },
  ];
  const none = { held: ['0523'], fit: [], setAside };
  expect(insteadWords(none)).toBe('Take 1 fit drum instead');
  expect(tooFewFit(none, 'XMER')).toBe(
    '1 drum is on HOLD, and no fit drum stands free at XMER. Fit ones there are set aside for offered flights: 4 for F06, 2 for F08. Decline or amend one of them on Week, fill more, or amend this one.',
  );
});
