import type { DifferenceGroup, DifferenceLine } from './difference-lines.js';
import type { Differences } from './differences-read.js';
import { lineRanges } from './line-ranges.js';

/** Lines that change something, the last group being of flights that stay. */
const changes = (groups: readonly DifferenceGroup[]): readonly DifferenceLine[] =>
  groups.filter(({ name }) => name !== 'Same').flatMap(({ lines }) => lines);

/** "Accept lines 1 to 3, 5". */
export const acceptWords = (groups: readonly DifferenceGroup[]): string => {
  const taken = changes(groups).filter(({ isLeftOut }) => !isLeftOut);
  return ['Accept', lineRanges(taken.map(({ number }) => number))].filter((word) => word !== '').join(' ');
};

/** Why what is left cannot be accepted; undefined: it can. `wanted`: keys that the person has left out by now. */
export const leftOutOff = (
  { leftOut, faultsAfter }: Pick<Differences, 'leftOut' | 'faultsAfter'>,
  wanted: readonly string[],
  groups: readonly DifferenceGroup[],
): string | undefined => {
  if ([...wanted].sort().join() !== [...leftOut].sort().join()) return 'What is left is being checked.';
  const open = changes(groups).filter(({ key }) => key !== null);
  if (open.length > 0 && open.every(({ isLeftOut }) => isLeftOut))
    return 'Every line is left out: nothing would change.';
  const [fault, ...more] = faultsAfter;
  if (fault === undefined) return undefined;
  const others = more.length === 0 ? '' : ` And ${more.length} more.`;
  return `Without ${leftOutLines(groups)} it breaks a limit. ${fault.text}${others}`;
};

/** "line 2": those that are left out. */
export const leftOutLines = (groups: readonly DifferenceGroup[]): string =>
  lineRanges(
    changes(groups)
      .filter(({ isLeftOut }) => isLeftOut)
      .map(({ number }) => number),
  );
