import type { Intent, Limit, PermittedAct } from '@drumline/contract';
import type { Means, Movement, MovementKind } from '@drumline/stock';

/** The line of the permission table that a report falls under, and how far it has to go. */
export interface ReportRight {
  readonly act: PermittedAct;
  readonly intent: Intent;
}

const acts: Readonly<Record<Exclude<MovementKind, 'corrected'>, PermittedAct>> = {
  received: 'fill',
  filled: 'fill',
  weighed: 'fill',
  loaded: 'load',
  'left at': 'delivery',
  'brought home': 'delivery',
  slung: 'delivery',
  opened: 'draw',
  drawn: 'draw',
  emptied: 'draw',
  transferred: 'draw',
  spilled: 'draw',
  dipped: 'count',
  counted: 'count',
  lost: 'count',
  found: 'count',
  joined: 'count',
  held: 'hold',
  condemned: 'hold',
  released: 'release hold',
  'retest passed': 'release hold',
};

/** What makes fuel usable that was not, and what takes a hold back, takes two people. */
export const isForTwo = (root: Movement): boolean =>
  root.kind === 'held' ||
  root.kind === 'condemned' ||
  root.kind === 'released' ||
  root.kind === 'retest passed';

/**
 * What somebody needs to report this. `root` is the movement itself, or the one that a correction is about in the
 * end: taking a report back asks for the same right as making it, with `means` that of the correction: what a crew sent by
 * phone, base may put right as the crew says it by radio. Whose flight it is, is not asked of a report.
 */
export const reportRight = (
  root: Movement,
  isBase: (place: string) => boolean,
  means: Means = root.means,
): ReportRight => {
  const within: readonly (Limit | false)[] = [
    'as commander',
    [root.means, means].some(isTakenDown) && 'by radio',
    placesOf(root).every(isBase) && 'at base',
    isOfOneDrum(root) && 'one drum',
  ];
  const to = root.kind === 'held' && !isOfOneDrum(root) ? 'decide' : 'enter';
  return { act: actOf(root), intent: { to, own: true, within: within.filter((limit) => limit !== false) } };
};

/** Written down by base as somebody in the field says it, or from their paper. */
const isTakenDown = (means: Means): boolean => means === 'radio' || means === 'paper';

/** A correction of what has not arrived is somebody's own slip, known to their phone only. */
const actOf = (root: Movement): PermittedAct => {
  if (root.kind === 'corrected') return 'count';
  return root.kind === 'drawn' && root.medevac !== undefined ? 'medevac draw' : acts[root.kind];
};

const placesOf = (movement: Movement): readonly string[] => {
  if (movement.kind === 'slung') return [movement.from, movement.to];
  return 'place' in movement ? [movement.place] : [];
};

const isOfOneDrum = (movement: Movement): boolean => !('of' in movement) || 'drum' in movement.of;
