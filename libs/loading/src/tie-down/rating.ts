import type { Pounds } from '@drumline/units';

/**
 * What a strap, an end fitting or a floor ring holds in an aircraft: its ultimate load, with the document that says so.
 * A road figure is another type, so that it cannot be given in its place.
 */
export interface AircraftRating {
  readonly use: 'aircraft';
  readonly ultimateLb: Pounds;
  /** Approval, standard or manual that rates it for aircraft. */
  readonly reference: string;
}

/** A working load for the road. It says nothing of aircraft: 0.8 g forward on a road, many times that in a cabin. */
export interface RoadRating {
  readonly use: 'road';
  readonly workingLoadLb: Pounds;
}

/** A rating as somebody writes it down, before it is known to be one for aircraft. */
export type WrittenRating = AircraftRating | RoadRating;

/** The rating if it is one for aircraft with its reference; else why not. */
export function aircraftRating(
  written: WrittenRating,
): { readonly ok: true; readonly rating: AircraftRating } | { readonly ok: false; readonly why: string } {
  if (written.use === 'road')
    return {
      ok: false,
      why: 'A working load for the road is no aircraft restraint. Give the ultimate load and the document that rates it for aircraft.',
    };
  if (written.reference.trim() === '')
    return {
      ok: false,
      why: 'No document is named. Give the approval, standard or manual that rates it for aircraft.',
    };
  if (!(written.ultimateLb > 0)) return { ok: false, why: 'The ultimate load must be more than 0 lb.' };
  return { ok: true, rating: written };
}
