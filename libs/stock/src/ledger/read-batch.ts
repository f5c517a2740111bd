import type { IsoInstant } from '@drumline/units';
import type { Hold } from '../drum.js';
import type { BatchState, HistoryEntry } from './ledger-state.js';
import { mergeReports } from './merge-reports.js';
import type { Movement, Released } from './movement.js';
import { compareInstants } from './order.js';
import { raise } from './raise.js';

/** Holds and retests of a batch, from every movement that names it. */
export function readBatch(
  batch: string,
  movements: readonly Movement[],
  reversedBy: (id: string) => readonly string[],
): BatchState {
  const { history } = mergeReports(batch, movements, reversedBy);
  const standing = history.filter((entry) => entry.reversedBy.length === 0);
  return {
    batch,
    holds: readHolds(standing),
    retest: standing.reduce<BatchState['retest']>(
      (last, { movement }) =>
        movement.kind === 'retest passed'
          ? { certificate: movement.certificate, retestDue: movement.retestDue }
          : last,
      null,
    ),
    history,
    raised: standing
      .map(({ movement }) => movement)
      .filter(
        (movement): movement is Released => movement.kind === 'released' && movement.by === movement.second,
      )
      .map((movement) =>
        raise('released by one person', [movement], {
          what: `Batch ${batch}: "released" by ${movement.by} names one person twice.`,
          whatNext: 'A second person has to agree.',
        }),
      ),
  };
}

/** A release ends every hold that stands at that moment. */
function readHolds(standing: readonly HistoryEntry[]): BatchState['holds'] {
  const releases = standing.filter(({ movement }) => movement.kind === 'released');
  return standing.flatMap((entry, index) => {
    const { movement } = entry;
    if (movement.kind !== 'held') return [];
    const { reason, by, happenedAt } = movement;
    const release = releases.find((each) => standing.indexOf(each) > index);
    const until = release?.movement.happenedAt ?? null;
    return [{ hold: { reason, by, at: happenedAt }, from: happenedAt, until }];
  });
}

/** The hold of the batch that stands now, or null. */
export function standingHold(batch: BatchState | undefined): Hold | null {
  return batch?.holds.find(({ until }) => until === null)?.hold ?? null;
}

/** The hold of the batch that stood at a moment, or null. */
export function holdAt(batch: BatchState | undefined, at: IsoInstant): Hold | null {
  const period = batch?.holds.find(
    ({ from, until }) => compareInstants(from, at) <= 0 && (until === null || compareInstants(at, until) < 0),
  );
  return period?.hold ?? null;
}
