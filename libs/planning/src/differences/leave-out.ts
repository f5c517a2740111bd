import type { IsoDate } from '@drumline/units';
import type { PlanDifference, PlannedFlight } from '../flight-plan.js';
import { asStandingFlight } from '../flights/as-standing-flight.js';
import type { StandingFlight } from '../scenario.js';

/** A line of the list of differences that can be left out: what would stand and what would come do not change places. */
export interface OpenLine {
  /** Number of the flight in the plan; of a flight that the plan does without, the one it has. */
  readonly key: string;
  /** Flight of the plan that does not come; null: the line removes one. */
  readonly planned: string | null;
  /** Flight that stays as it stands; null: none stood. */
  readonly standing: string | null;
}

/**
 * The lines on which something is decided by accepting the plan: a flight is offered, or one that stands is taken away
 * or changed. `standing`: numbers of the flights that stand. Ideas of both plans are no such lines.
 */
export function openLines(
  { removed, moved, drumsChanged, added }: PlanDifference,
  standing: ReadonlySet<string>,
  lastOfferedDay: IsoDate,
): readonly OpenLine[] {
  const isOffered = ({ state, date }: PlannedFlight): boolean =>
    state === 'offered' && date <= lastOfferedDay;
  const lines = [
    ...removed.map((before) => ({ before, after: null })),
    ...moved,
    ...drumsChanged,
    ...added.map((after) => ({ before: null, after })),
  ];
  return lines.flatMap(({ before, after }) => {
    const stays = before !== null && standing.has(before.id) ? before.id : null;
    if (stays === null && (after === null || !isOffered(after))) return [];
    return [{ key: (after ?? before).id, planned: after?.id ?? null, standing: stays }];
  });
}

/** The flights of a plan with these lines left out: what the plan changes by them stays as it stands. */
export function withoutLines(
  planned: readonly PlannedFlight[],
  standing: readonly StandingFlight[],
  lines: readonly OpenLine[],
): readonly StandingFlight[] {
  const stays = new Set(lines.map((line) => line.standing));
  const gone = new Set([...stays, ...lines.map((line) => line.planned)]);
  return [
    ...planned.filter(({ id }) => !gone.has(id)).map(asStandingFlight),
    ...standing.filter(({ id }) => stays.has(id)),
  ];
}
