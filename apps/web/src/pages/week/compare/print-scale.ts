import type { DifferenceGroup } from './difference-lines.js';

/** What stands on one landscape page at full size, in lines of the list, its title, finding and foot taken off: measured. */
const linesDownAPage = 44;

/** As high as so many lines: the heads and the sum of the list, then totals, levels and notes beside each other. */
const headsAndUnder = 38;

/** Nine points at full size; below eight it is not read any more. */
const smallest = 8 / 9;

/** By how much the list and what stands under it are made smaller to stand on one page; at full size on two where that is too small. */
export const printScale = (groups: readonly Pick<DifferenceGroup, 'lines'>[]): number => {
  const lines = groups.reduce((sum, group) => sum + group.lines.length, 0);
  const onOnePage = linesDownAPage / (headsAndUnder + lines);
  return onOnePage < smallest ? 1 : Math.min(1, onOnePage);
};
