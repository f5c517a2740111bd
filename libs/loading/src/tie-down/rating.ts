import type { Pounds } from '@drumline/units';

/**
 * What a strap, an end fitting or a floor ring holds in an aircraft: its ultimate load, with the document that says so.
 * A road figure is another type, so that it cannot be given in its place.
 */
export interface AircraftRating {
  readonly figure: 'ultimate load in an aircraft';
  readonly ultimateLb: Pounds;
  /** Approval, standard or manual that rates it for aircraft. */
  readonly reference: string;
}

/** A working load for the road. It says nothing of aircraft: 0.8 g forward on a road, many times that in a cabin. */
export interface RoadRating {
  readonly figure: 'working load for the road';
  readonly workingLoadLb: Pounds;
}

/** A rating as somebody writes it down; the door of the scenario document lets in those for aircraft only. */
export type WrittenRating = AircraftRating | RoadRating;
