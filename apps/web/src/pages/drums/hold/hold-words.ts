import type { Movement } from '@drumline/stock';
import { inWords } from '../../../ui/index.js';
import type { HoldEffect, Proposal, StandingHold } from '../drums-read.js';

/** What is held or to be held: a batch, or one drum. */
export type Subject = { readonly batch: string } | { readonly drum: string };

export const subjectWords = (of: Subject): string =>
  'batch' in of ? `batch ${of.batch}` : `drum ${of.drum}`;

export const isSame = (one: Subject, other: Subject): boolean => subjectWords(one) === subjectWords(other);

const query = (of: Subject): string =>
  'batch' in of ? `batch=${encodeURIComponent(of.batch)}` : `drum=${encodeURIComponent(of.drum)}`;

export const consequencePath = (of: Subject): string => `/api/holds/consequence?${query(of)}`;
export const latestReleasePath = (of: Subject): string => `/api/holds/latest-release?${query(of)}`;

/** "44 drums, 8,800 L, in 7 places." */
export const sizeWords = ({ drums, litres, places }: HoldEffect): string =>
  `${inWords(drums, 'drums')}, ${inWords(litres, 'L')}, in ${inWords(places.length, 'places')}.`;

/** What it does to the caches, in one sentence. */
export const cachesWords = ({ belowMinimum, belowCritical }: HoldEffect): string => {
  const count = belowMinimum.length;
  if (count === 0) return 'No cache falls short.';
  const critical =
    belowCritical.length === 0
      ? 'none of them below critical'
      : `${belowCritical.length} of them below critical`;
  return `With it ${count === 1 ? '1 cache is' : `${count} caches are`} below minimum, ${critical}.`;
};

/** The worst first, then the bases; by what is left against the levels. */
export const worstFirst = (places: HoldEffect['places']): HoldEffect['places'] =>
  [...places].sort((one, other) => rank(one) - rank(other) || one.place.localeCompare(other.place));

const ranks = ['below critical', 'below minimum', 'enough', null];
const rank = ({ levelAfter }: HoldEffect['places'][number]): number => ranks.indexOf(levelAfter);

/** Says the level that a place has with the hold; at the minimum is not below it. */
export const levelWords = (
  { levelAfter, usableLitresAfter }: HoldEffect['places'][number],
  minimumLitres: number | undefined,
): { readonly level: 'above' | 'below' | 'critical'; readonly words?: string } | null => {
  if (levelAfter === null) return null;
  if (levelAfter === 'below critical') return { level: 'critical' };
  if (levelAfter === 'below minimum') return { level: 'below' };
  return usableLitresAfter === minimumLitres ? { level: 'above', words: 'At minimum' } : { level: 'above' };
};

export const standingHoldOf = (holds: readonly StandingHold[], of: Subject): StandingHold | undefined =>
  holds.find((hold) => isSame(hold.of, of));

/** The open proposal to release this, if somebody has made one. */
export const releaseOf = (proposals: readonly Proposal[], of: Subject): Proposal | undefined =>
  proposals.find((proposal) => {
    const released = releasedBy(proposal);
    return released !== null && isSame(released, of);
  });

/** What a proposal would release; null: it is about something else. */
export const releasedBy = ({ payload }: Pick<Proposal, 'payload'>): Subject | null => {
  const movement = payload.movement as Partial<Movement> | undefined;
  return movement?.kind === 'released' ? (movement.of ?? null) : null;
};
