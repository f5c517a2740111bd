import type { SurfaceState } from '@drumline/network';
import type { Pounds } from '@drumline/units';

/** What the soft landing limit of a strip is held against. */
interface SoftLanding {
  /** What is heard of the surface: "dry 14 June 05:58", "unknown". */
  readonly heard: string | undefined;
  readonly plannedOn: SurfaceState;
  /** What the landing limit leaves when soft; undefined: it is the same, or the strip closes. Negative: over. */
  readonly softSpareLb: Pounds | undefined;
  /** What the nearest of the weights leaves that the leg is planned under. */
  readonly nearestSpareLb: Pounds;
}

/**
 * Whether the soft landing limit is the nearest of the weights of a leg, on every page and paper: nobody knows the surface,
 * unknown counts as soft, and it leaves less than every limit that the leg is planned under. Common practice, no source.
 */
export const isSoftNearest = ({ heard, plannedOn, softSpareLb, nearestSpareLb }: SoftLanding): boolean =>
  heard === 'unknown' && plannedOn !== 'soft' && softSpareLb !== undefined && softSpareLb < nearestSpareLb;
