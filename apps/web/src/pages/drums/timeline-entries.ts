import type { HistoryEntry } from '@drumline/stock';
import type { DrumLife } from './drums-read.js';

/** Entries of the drum and of its batch as one list, in the order in which they happened. */
export const timelineEntries = ({
  timeline,
  batchTimeline,
}: Pick<DrumLife, 'timeline' | 'batchTimeline'>): readonly HistoryEntry[] => {
  const own = new Set(timeline.map(({ movement }) => movement.id));
  const ofBatch = batchTimeline.filter(({ movement }) => !own.has(movement.id));
  return [...timeline, ...ofBatch].sort(
    (one, other) => Date.parse(one.movement.happenedAt) - Date.parse(other.movement.happenedAt),
  );
};
