import { describe, expect, it } from 'vitest';
import { findingOf } from './finding.js';
import { find, money, softTuesday, totals } from './testing/soft-tuesday.js';

describe('the finding', () => {
  it('says the flight bill and the whole plan, and what the rise is about', () => {
    expect(findingOf(softTuesday, 'cr')).toBe(
      'The flight bill falls by 876 cr and the whole plan rises by 406 cr, because ten more drums come from XMER.',
    );
  });

  it('names the drums in all where more are landed than come from another base', () => {
    const { before } = softTuesday.totals;
    const from = (XALD: number, XMER: number) =>
      find({
        after: {
          ...before,
          cost: money(2_202_100, 3_754_000, 65_700),
          drumsFromBase: [
            { place: 'XALD', drums: XALD },
            { place: 'XMER', drums: XMER },
          ],
        },
      });
    expect(from(29, 66)).toMatch(/because 22 more drums are landed\.$/);
    expect(from(17, 68)).toMatch(/because twelve more drums come from XMER\.$/);
    expect(from(9, 68)).toMatch(/because twelve more drums come from XMER\.$/);
  });

  it('names flights where the flight bill makes the difference', () => {
    const after = totals(money(2_000_000, 3_254_000, 65_700), { flights: 14 });
    expect(find({ after })).toBe(
      'The flight bill falls by 2,021 cr and the whole plan falls by 2,021 cr, because two fewer flights are flown.',
    );
  });

  it('gives no cause where none of its figures goes the way of the whole', () => {
    const { before } = softTuesday.totals;
    expect(find({ after: { ...before, cost: money(2_202_100, 3_254_000, 75_700) } })).toBe(
      'The flight bill stays and the whole plan rises by 100 cr.',
    );
  });

  it('of a first plan, and of one that changes nothing', () => {
    const before = totals(money(0, 0, 0), { drums: 0 });
    expect(find({ before })).toBe('16 flights land 71 drums for 55,624 cr; no plan stood before.');
    const nothing = { ...softTuesday, removed: [], moved: [], added: [] };
    expect(findingOf(nothing, 'cr')).toBe('Nothing changes: the flights that stand are the plan.');
    const short = { ...nothing, cannotKeep: [{ text: 'XLOR is below critical.', blockedBy: 'the night.' }] };
    expect(findingOf(short, 'cr')).toBe(
      'No better flights were found than those that stand, and what is short stays so: see what it cannot keep, and why.',
    );
    const none = { ...short.totals.after, flights: 0 };
    expect(findingOf({ ...short, totals: { ...short.totals, after: none } }, 'cr')).toBe(
      'No flight was found, and what is short stays so: see what it cannot keep, and why.',
    );
  });
});
