import type { StandingDrumAboard } from '../named-load/named-load.js';
import type { LoadSheetRequest } from './load-sheet.js';

/** A drum as it stands in the cabin, where another was planned or it was to stand elsewhere. */
export interface DrumAsLoaded extends Omit<StandingDrumAboard, 'offAfterLeg'> {
  /** Number of the planned drum whose place in the load it has; its own where only the position is another. */
  readonly planned: string;
}

/**
 * The request of a sheet with the drums as they were loaded at the base: each comes out where the one that it replaces
 * was to come out. Whether the load still holds is for the sheet to say. Throws where a planned drum is not on the load.
 */
export function asLoaded(request: LoadSheetRequest, aboard: readonly DrumAsLoaded[]): LoadSheetRequest {
  const { load } = request;
  const lost = aboard.find(({ planned }) => !load.drums.some(({ number }) => number === planned));
  if (lost) throw new Error(`drum ${lost.planned} is not on the load of ${request.flight.id}`);
  const drums = load.drums.map((drum) => {
    const other = aboard.find(({ planned }) => planned === drum.number);
    if (!other) return drum;
    const { planned: _, ...standing } = other;
    return { ...standing, offAfterLeg: drum.offAfterLeg };
  });
  return { ...request, load: { ...load, drums } };
}
