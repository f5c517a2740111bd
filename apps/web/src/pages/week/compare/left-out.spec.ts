import { describe, expect, it } from 'vitest';
import { differenceGroups } from './difference-lines.js';
import type { Differences } from './differences-read.js';
import { acceptWords, leftOutOff } from './left-out.js';
import { lineRanges } from './line-ranges.js';
import { day, softTuesday } from './testing/soft-tuesday.js';

const groupsOf = (differences: Differences) =>
  differenceGroups(differences, day).flatMap(({ lines }) => lines);

describe('lines that are left out', () => {
  const without = (leftOut: readonly string[], faultsAfter: Differences['faultsAfter'] = []) => {
    const differences = { ...softTuesday, leftOut: [...leftOut], faultsAfter };
    return { differences, groups: differenceGroups(differences, day) };
  };

  it('can be those that decide something: no idea, no flight that stays', () => {
    expect(groupsOf(softTuesday).map(({ key }) => key)).toEqual(['F05', 'F06', 'P01', null, null, null]);
  });

  it('change nothing, and the sums are of the lines that are taken', () => {
    const [removed] = without(['F05']).groups;
    expect(removed!.lines[0]).toMatchObject({ isLeftOut: true, litres: null, flightCost: null });
    expect(groupsOf(without(['F05']).differences)[1]).toMatchObject({ isLeftOut: false });
  });

  it('are named where the plan is accepted', () => {
    expect(acceptWords(without([]).groups)).toBe('Accept lines 1 to 4');
    expect(acceptWords(without(['F06']).groups)).toBe('Accept lines 1, 3, 4');
    expect(lineRanges([1, 2, 3, 5, 7, 8])).toBe('lines 1 to 3, 5, 7, 8');
    expect(lineRanges([4])).toBe('line 4');
  });

  it('keep Accept off while they are checked, when nothing is left, and when what is left breaks a limit', () => {
    const part = without(['F05']);
    expect(leftOutOff(part.differences, ['F05'], part.groups)).toBeUndefined();
    expect(leftOutOff(part.differences, [], part.groups)).toBe('What is left is being checked.');
    const none = without(['F05', 'F06', 'P01']);
    expect(leftOutOff(none.differences, ['P01', 'F05', 'F06'], none.groups)).toBe(
      'Every line is left out: nothing would change.',
    );
    const broken = without(['F05'], [{ flights: ['F05', 'P01'], text: 'XLOR unloads 6 drums a day.' }]);
    expect(leftOutOff(broken.differences, ['F05'], broken.groups)).toBe(
      'Without line 1 it breaks a limit. XLOR unloads 6 drums a day.',
    );
  });
});
