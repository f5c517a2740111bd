import type { IsoInstant } from '@drumline/units';
import type { CountTolerance } from '../drum.js';
import { toleranceOfCount } from '../opening-stock.js';
import { bookOf, drumsEverAt, isAt } from './book-at.js';
import type { DrumState, LedgerState } from './ledger-state.js';
import { litresOf, type Millilitres } from './millilitres.js';
import type { Counted } from './movement.js';
import { byHappened, compareInstants } from './order.js';
import { standingCounts } from './standing-counts.js';

/** Book and count differ beyond the tolerance: an open question, until two people close it. */
export interface DifferenceCase {
  /** Id of the count that opened it. */
  readonly count: string;
  readonly place: string;
  readonly countedBy: readonly string[];
  readonly countedMillilitres: Millilitres;
  /** The book at the moment of the count, with everything known today. */
  readonly bookMillilitres: Millilitres;
  /** Count less book: negative, less was found. */
  readonly differenceMillilitres: number;
  readonly toleranceMillilitres: number;
  /** Id of the last count before it that was agreed; null: there was none. */
  readonly agreedCount: string | null;
  /** Ids of what happened at the place since the last agreed count, to look through. */
  readonly movementsSince: readonly string[];
}

export const differenceCauses = ['recount', 'missing report', 'spill', 'theft', 'unknown'] as const;

export type DifferenceCause = (typeof differenceCauses)[number];

/** What two people found; the litres themselves move by entries of their own. */
export interface CaseClosing {
  readonly count: string;
  readonly cause: DifferenceCause;
  readonly words: string;
  readonly by: string;
  readonly second: string;
  readonly at: IsoInstant;
}

/**
 * Whether the book counts again in full after a case was closed: only where counting again has shown the count to be
 * wrong. After any other cause what was not found stays off usable stock, until entries or a new count say otherwise.
 */
export const bookStandsAfter = (cause: DifferenceCause): boolean => cause === 'recount';

export type ClosingAnswer =
  | { readonly kind: 'closed'; readonly closing: CaseClosing }
  | { readonly kind: 'refused'; readonly words: string };

/**
 * The open case of each place: its last count that stands, where it is outside the tolerance and not closed. Late
 * reports count: a case that they explain is gone.
 */
export function differenceCases(
  state: LedgerState,
  tolerance: CountTolerance,
  closings: readonly CaseClosing[],
): readonly DifferenceCase[] {
  const closed = new Set(closings.map(({ count }) => count));
  const ever = drumsEverAt(state);
  return [...state.counts.keys()].sort().flatMap((place) => {
    const drums = ever.get(place) ?? [];
    const counts = standingCounts(state, place);
    const last = counts.at(-1);
    if (!last || closed.has(last.id)) return [];
    const found = compare(drums, last, tolerance);
    if (isAgreed(found)) return [];
    const agreed = counts.findLast(
      (count) => count !== last && (closed.has(count.id) || isAgreed(compare(drums, count, tolerance))),
    );
    const since = movementsAt(drums, place, agreed?.happenedAt ?? null, last.happenedAt);
    const ordered = since.map((id) => state.movements.get(id)!).sort(byHappened);
    return [{ ...found, agreedCount: agreed?.id ?? null, movementsSince: ordered.map(({ id }) => id) }];
  });
}

/** Closes a case, or says why not: two people, neither of whom counted. */
export function closeCase(open: DifferenceCase, closing: Omit<CaseClosing, 'count'>): ClosingAnswer {
  const { by, second } = closing;
  if (by === second) return refused(`${by} is named twice: a second person has to agree.`);
  const counter = [by, second].find((person) => open.countedBy.includes(person));
  if (counter !== undefined)
    return refused(
      `${counter} made the count at ${open.place} and cannot close its case: somebody else has to.`,
    );
  return { kind: 'closed', closing: { count: open.count, ...closing } };
}

const refused = (words: string): ClosingAnswer => ({ kind: 'refused', words });

type Compared = Omit<DifferenceCase, 'movementsSince' | 'agreedCount'>;

const isAgreed = ({ differenceMillilitres, toleranceMillilitres }: Compared): boolean =>
  Math.abs(differenceMillilitres) <= toleranceMillilitres;

function compare(drums: readonly DrumState[], counted: Counted, tolerance: CountTolerance): Compared {
  const book = bookOf(drums, counted.place, counted.happenedAt);
  return {
    count: counted.id,
    place: counted.place,
    countedBy: [...new Set([counted.by, ...counted.witnesses])],
    countedMillilitres: counted.millilitres,
    bookMillilitres: book,
    differenceMillilitres: counted.millilitres - book,
    toleranceMillilitres: toleranceOfCount(litresOf(book), counted.openDrums, tolerance) * 1000,
  };
}

/** Ids of the movements that found a drum at the place or set it down there. */
function movementsAt(
  drums: readonly DrumState[],
  place: string,
  after: IsoInstant | null,
  until: IsoInstant,
): string[] {
  const ids = drums.flatMap(({ steps }) =>
    steps
      .filter((step, index) => isAt(step.where, place) || isAt(steps[index - 1]?.where, place))
      .filter(({ from }) => after === null || compareInstants(from, after) > 0)
      .filter(({ from }) => compareInstants(from, until) <= 0)
      .map(({ movement }) => movement),
  );
  return [...new Set(ids)];
}
