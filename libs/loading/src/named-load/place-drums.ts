import { poundsFromKilograms } from '@drumline/units';
import type { DrumAboard } from '../cabin.js';
import { checkBalance } from '../check-balance.js';
import { findPositions } from '../find-positions.js';
import { printedLbOf } from '../printed-weights.js';
import {
  cabinOf,
  drumsAboard,
  type NamedDrum,
  type NamedLoad,
  printedCabinOf,
  type StandingDrumAboard,
} from './named-load.js';

/** Named drums in positions that hold, or why there are none. */
export type PlacedDrums =
  | { readonly found: true; readonly drums: readonly StandingDrumAboard[]; readonly moved: number }
  | { readonly found: false; readonly why: string };

/**
 * Positions for named drums, each with its own weight, beside the cargo that has its places: the fewest half-full rows,
 * then the fewest drums moved from where they stand (`standing`: drum number to position). Holds by exact and printed
 * figures. `load.drums` is not looked at.
 */
export function placeDrums(
  load: NamedLoad,
  drums: readonly NamedDrum[],
  standing: ReadonlyMap<string, string> = new Map(),
): PlacedDrums {
  const aboard = (weigh: (drum: NamedDrum) => DrumAboard['weightLb']): DrumAboard[] =>
    drums.map((drum) => ({ id: drum.number, weightLb: weigh(drum), offAfterLeg: drum.offAfterLeg }));
  const exact = findPositions(
    cabinOf(load),
    aboard(({ grossKg }) => poundsFromKilograms(grossKg)),
    standing,
  );
  if (!exact.found) return exact;
  const byExact = inPositions(exact.drums);
  if (checkBalance(printedCabinOf({ ...load, drums: byExact }), drumsAboard(byExact, 'printed')).holds)
    return { found: true, drums: byExact, moved: exact.moved };

  const printed = findPositions(
    printedCabinOf({ ...load, drums: byExact }),
    aboard(({ grossKg }) => printedLbOf(grossKg)),
    standing,
  );
  if (!printed.found) return printed;
  const byPrinted = inPositions(printed.drums);
  return checkBalance(cabinOf(load), drumsAboard(byPrinted, 'exact')).holds
    ? { found: true, drums: byPrinted, moved: printed.moved }
    : { found: false, why: 'No positions hold with the weights rounded to whole pounds; take fewer' };

  function inPositions(placed: readonly { readonly id: string; readonly position: string }[]) {
    return drums.map((drum, index) => ({ ...drum, position: placed[index]!.position }));
  }
}
