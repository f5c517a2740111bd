import { checkLoad } from '../named-load/check-load.js';
import type { DrumAsLoaded } from './as-loaded.js';
import type { LoadSheetRequest } from './load-sheet.js';
import { makeLoadSheet } from './make-load-sheet.js';

/** What a crew can do with a load that does not hold; each way is worked out, and holds. */
export interface WaysToHold {
  /** "move two drums from row 3 to row 1", with every drum where it then stands; null: no standing of these drums holds. */
  readonly move: { readonly words: string; readonly aboard: readonly DrumAsLoaded[] } | null;
  /** Sets of drums without which the rest holds where it stands; empty: none was found. */
  readonly leave: readonly (readonly DrumAsLoaded[])[];
}

/** More single drums than this, and they are no help to choose from. */
const mostSingle = 2;

/**
 * Ways in which a load of named drums holds by its sheet (weights, balance, rules), where it does not hold as it stands:
 * the fewest moves; the drums to leave behind. Of single drums two at most, one that was not planned first; where none
 * will do alone, the heaviest one after the other until the rest holds. At least one drum stays aboard.
 * `request`: of the sheet with these drums where they stand (`asLoaded`); `aboard`: the same drums, each with the one in
 * whose place it came. Common practice, no source.
 */
export function waysToHold(request: LoadSheetRequest, aboard: readonly DrumAsLoaded[]): WaysToHold {
  return { move: mendingMove(request, aboard), leave: fewestToLeave(request, aboard) };
}

/** A move that mends the balance may leave a weight or a rule in the way: then it is none. */
function mendingMove(request: LoadSheetRequest, aboard: readonly DrumAsLoaded[]): WaysToHold['move'] {
  const { mend } = checkLoad(request.load);
  if (mend === null || mend.moves.length === 0) return null;
  const places = new Map(mend.moves.map(({ drum, to }) => [drum, to]));
  const moved = aboard.map((drum) => ({ ...drum, position: places.get(drum.number) ?? drum.position }));
  return holdsWith(request, moved) ? { words: mend.text, aboard: moved } : null;
}

function fewestToLeave(request: LoadSheetRequest, aboard: readonly DrumAsLoaded[]): WaysToHold['leave'] {
  const without = (off: readonly DrumAsLoaded[]) => aboard.filter((drum) => !off.includes(drum));
  const isOther = ({ planned, number }: DrumAsLoaded): number => (planned === number ? 0 : 1);
  const likeliest = [...aboard].sort((one, other) => isOther(other) - isOther(one));
  const single = likeliest.filter((drum) => holdsWith(request, without([drum])));
  if (single.length > 0) return single.slice(0, mostSingle).map((drum) => [drum]);
  const heaviest = [...aboard].sort((one, other) => other.grossKg - one.grossKg);
  const sets = heaviest.slice(1, -1).map((_, at) => heaviest.slice(0, at + 2));
  const least = sets.find((off) => holdsWith(request, without(off)));
  return least === undefined ? [] : [least];
}

/** With those drums alone, where they stand. */
function holdsWith(request: LoadSheetRequest, aboard: readonly DrumAsLoaded[]): boolean {
  const places = new Map(aboard.map(({ number, position }) => [number, position]));
  const drums = request.load.drums.flatMap((drum) => {
    const position = places.get(drum.number);
    return position === undefined ? [] : [{ ...drum, position }];
  });
  return drums.length > 0 && makeLoadSheet({ ...request, load: { ...request.load, drums } }).holds;
}
