import { type Pounds, pounds, print } from '@drumline/units';
import type { AircraftRating } from './rating.js';
import { type StrapAngles, type StrapShare, strapShare } from './strap-share.js';

/** Ultimate load factors that the operator cites for the type, in g. */
export interface LoadFactors {
  readonly forward: number;
  readonly aft: number;
  readonly sideways: number;
  readonly up: number;
  /** Flight manual, type certificate basis or approved loading manual, with its revision. */
  readonly reference: string;
}

/** The parts of one strap's path; each is rated for aircraft. */
export interface TieDownKit {
  readonly strap: AircraftRating;
  readonly fitting: AircraftRating;
  readonly floorRing: AircraftRating;
  readonly angles: StrapAngles;
}

export type RestraintDirection = 'forward' | 'aft' | 'sideways' | 'up';

/** What must be held in one direction, and by how many straps that pull that way. */
export interface RestraintNeed {
  readonly direction: RestraintDirection;
  readonly neededLb: Pounds;
  /** What one strap holds that way at its angles. */
  readonly eachLb: Pounds;
  /** Sideways: on each side. Null: straps at these angles hold nothing that way. */
  readonly straps: number | null;
}

/** A planning aid: what the approved loading manual says goes before it. */
export interface TieDown {
  readonly loadLb: Pounds;
  readonly deciding: { readonly part: 'strap' | 'fitting' | 'floor ring' } & AircraftRating;
  readonly needs: readonly RestraintNeed[];
  /** Straps in pairs, one to each side: those that hold forward, and those that hold aft. Null: not possible so. */
  readonly layout: { readonly forwardStraps: number; readonly aftStraps: number } | null;
  /** Straps by direction and in all, what decides, and by which figures. */
  readonly words: string;
  /** The same in one breath, for paper. */
  readonly brief: string;
  readonly caution: string;
}

/** Rounding noise in straps: four that just hold are not five. */
const noise = 1e-9;

/** Stands wherever straps are counted, and where they cannot be. */
export const tieDownCaution = 'Planning aid: the approved loading manual decides.';

/**
 * Straps for a load: load factor times weight in each direction against the weakest of strap, end fitting and floor ring
 * at the angles of the strap. Factors and ratings are both ultimate. Throws nothing; a direction that straps at these
 * angles cannot hold has no count.
 */
export function tieDown(loadLb: Pounds, factors: LoadFactors, kit: TieDownKit): TieDown {
  const deciding = weakest(kit);
  const share = strapShare(kit.angles);
  const needs = restraintNeeds(loadLb, factors, deciding.ultimateLb, share);
  const layout = strapLayout(needs);
  const counted = { loadLb, deciding, needs, layout };
  return {
    ...counted,
    words: wordsOf(counted, factors, kit.angles),
    brief: briefOf(counted, factors, kit.angles),
    caution: tieDownCaution,
  };
}

function weakest({ strap, fitting, floorRing }: TieDownKit): TieDown['deciding'] {
  const parts = [
    { part: 'strap', ...strap },
    { part: 'fitting', ...fitting },
    { part: 'floor ring', ...floorRing },
  ] as const;
  return parts.reduce((least, one) => (one.ultimateLb < least.ultimateLb ? one : least));
}

function restraintNeeds(
  loadLb: Pounds,
  factors: LoadFactors,
  ultimateLb: Pounds,
  share: StrapShare,
): RestraintNeed[] {
  const need = (direction: RestraintDirection, part: number): RestraintNeed => {
    const neededLb = loadLb * factors[direction];
    const eachLb = ultimateLb * part;
    const holds = eachLb > ultimateLb * noise;
    const straps = neededLb <= 0 ? 0 : holds ? Math.ceil(neededLb / eachLb - noise) : null;
    return { direction, neededLb: pounds(neededLb), eachLb: pounds(eachLb), straps };
  };
  return [
    need('forward', share.along),
    need('aft', share.along),
    need('sideways', share.across),
    need('up', share.up),
  ];
}

/** Fewest straps in pairs: each pair holds one way along, has one strap for either side, and both hold the load down. */
function strapLayout(needs: readonly RestraintNeed[]): TieDown['layout'] {
  const [forward, aft, sideways, up] = needs.map(({ straps }) => straps);
  if (forward == null || aft == null || sideways == null || up == null) return null;
  const forwardPairs = Math.ceil(forward / 2);
  const aftPairs = Math.ceil(aft / 2);
  const missing = Math.max(
    0,
    sideways - forwardPairs - aftPairs,
    Math.ceil(up / 2) - forwardPairs - aftPairs,
  );
  return { forwardStraps: 2 * forwardPairs, aftStraps: 2 * (aftPairs + missing) };
}

type Counted = Omit<TieDown, 'words' | 'brief' | 'caution'>;

function wordsOf(
  { loadLb, deciding, needs, layout }: Counted,
  factors: LoadFactors,
  { aboveFloorDeg, offAxisDeg }: StrapAngles,
): string {
  const inAll =
    layout === null
      ? notHeld
      : `in pairs ${layout.forwardStraps} against forward, ${layout.aftStraps} against aft`;
  const decides = `The ${deciding.part} decides: ${print(deciding.ultimateLb, 'lb')} (${deciding.reference})`;
  const g = `${factors.forward} g forward, ${factors.aft} aft, ${factors.sideways} sideways, ${factors.up} up (${factors.reference})`;
  const angles = `straps ${aboveFloorDeg}° above the floor, ${offAxisDeg}° off the axis`;
  return `Straps for ${print(loadLb, 'lb')}: ${countsOf(needs)}; ${inAll}. ${decides}. ${g}; ${angles}; friction not counted.`;
}

function briefOf(
  { deciding, needs, layout }: Counted,
  { reference }: LoadFactors,
  { aboveFloorDeg, offAxisDeg }: StrapAngles,
): string {
  const inAll =
    layout === null ? notHeld : `in pairs ${layout.forwardStraps} forward, ${layout.aftStraps} aft`;
  return `straps ${countsOf(needs)} (${inAll}) at ${aboveFloorDeg}° up, ${offAxisDeg}° off axis. The ${deciding.part} decides, ${print(deciding.ultimateLb, 'lb')}; ${reference}.`;
}

const notHeld = 'straps at these angles do not hold every direction: change the angles';

const countsOf = (needs: readonly RestraintNeed[]): string =>
  needs.map(({ direction, straps }) => `${straps ?? 'none hold'} ${directionWords[direction]}`).join(', ');

const directionWords: Readonly<Record<RestraintDirection, string>> = {
  forward: 'forward',
  aft: 'aft',
  sideways: 'to each side',
  up: 'up',
};
