import { expect, it } from 'vitest';
import { letGoBeforePlanWords, letGoWords, wereLetGoWords } from './let-go-words.js';

const approved = { id: 'F05', state: 'approved' };
const given = { id: 'F06', state: 'given' };

it('a flight that is let go has to be approved anew; the pilot who has it is to be told', () => {
  expect(letGoWords([approved])).toBe(
    'F05 is offered again: a re-plan may change it, and to fly it must be approved anew. Its named drums go back to the pick list.',
  );
  expect(letGoWords([approved, given])).toBe(
    'F05, F06 are offered again: a re-plan may change them, and to fly they must be approved anew. Their named drums go back to the pick list. Tell the pilot of F06.',
  );
});

it('"Let go and plan" lets go before there is a plan, and says so before the press and beside the plan', () => {
  expect(letGoBeforePlanWords([approved])).toMatch(
    /^Before the plan is made, at this press: F05 is offered again: .* This stays so, whether the plan is accepted or not\.$/,
  );
  expect(wereLetGoWords(['F05', 'F06'])).toBe(
    'F05, F06 were let go when this plan was asked for. Keeping what stands does not bring that back: approve them anew on Week.',
  );
});
