import { type CabinConfiguration, configurationOf } from './aircraft-type.js';
import type { FlightCabin, PlacedDrum } from './cabin.js';
import { findPositions } from './find-positions.js';

/** The handling that mends a loading. */
export interface MoveSuggestion {
  /** "move two drums from row 3 to row 1". */
  readonly text: string;
  readonly moves: readonly { readonly drum: string; readonly from: string; readonly to: string }[];
  /** The loading after the moves; it passes `checkBalance`. */
  readonly drums: readonly PlacedDrum[];
}

/**
 * The fewest moves that make a hand-made loading hold, without leaving one side of a row empty where that can be
 * avoided; null when no standing of these drums holds. No moves when nothing need move.
 */
export function suggestMove(cabin: FlightCabin, drums: readonly PlacedDrum[]): MoveSuggestion | null {
  const standing = new Map(drums.map(({ id, position }) => [id, position]));
  const positions = findPositions(cabin, drums, standing);
  if (!positions.found) return null;
  const moves = positions.drums
    .map(({ id, position }) => ({ drum: id, from: standing.get(id)!, to: position }))
    .filter(({ from, to }) => from !== to);
  const row = rowNumbers(configurationOf(cabin.type, cabin.configuration));
  return { moves, text: moveWords(moves, row), drums: positions.drums };
}

function moveWords(moves: MoveSuggestion['moves'], row: ReadonlyMap<string, number>): string {
  const counts = new Map<string, number>();
  for (const { from, to } of moves) {
    const way =
      row.get(from) === row.get(to)
        ? `from ${from} to ${to}`
        : `from row ${row.get(from)} to row ${row.get(to)}`;
    counts.set(way, (counts.get(way) ?? 0) + 1);
  }
  const ways = [...counts].map(
    ([way, drums]) => `${numberWords[drums] ?? drums} ${drums === 1 ? 'drum' : 'drums'} ${way}`,
  );
  return ways.length === 0 ? 'nothing need move' : `move ${ways.join(', and ')}`;
}

const numberWords = ['no', 'one', 'two', 'three', 'four', 'five', 'six', 'seven', 'eight', 'nine', 'ten'];

/** Rows of drum positions, counted from the front. */
function rowNumbers({ drumPositions }: CabinConfiguration): Map<string, number> {
  const arms = [...new Set(drumPositions.map(({ armIn }) => armIn))].sort((a, b) => a - b);
  return new Map(drumPositions.map(({ id, armIn }) => [id, arms.indexOf(armIn) + 1]));
}
