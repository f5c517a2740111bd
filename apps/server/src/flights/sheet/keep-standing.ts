import { standAfter } from '@drumline/loading';
import type { Board } from '../board/board.service.js';
import type { Flight, Load } from '../store/flight.table.js';
import { namedFlight } from './named-flight.js';

interface Amending {
  readonly before: Flight;
  readonly own: readonly Load[];
  readonly flight: Flight;
  readonly loads: readonly Load[];
}

/**
 * Drums that stay aboard stay where they stood. Where some come out and none come in, each keeps its place, kept by
 * hand or found, or the fewest move so that it holds: the same as the lines "if soft" say. Null positions are found.
 */
export const keepStanding = (board: Board, { before, own, flight, loads }: Amending): readonly Load[] => {
  if (flight.aircraft !== before.aircraft) return loads;
  const keptAt = new Map(own.map(({ drum, position }) => [drum, position]));
  const asKept = loads.map((load) => ({ ...load, position: keptAt.get(load.drum) ?? null }));
  const isLess = loads.length < own.length && loads.every(({ drum }) => drum !== null && keptAt.has(drum));
  const stood = isLess ? namedFlight(board, before, own) : null;
  if (!stood?.found) return asKept;
  const stoodAt = new Map(stood.load.drums.map(({ number, position }) => [number, position]));
  const less = namedFlight(board, flight, asKept, stoodAt);
  const stands = less.found ? standAfter(less.load, less.load.drums) : null;
  if (stands === null) return asKept;
  const standsAt = new Map(stands.map(({ number, position }) => [number, position]));
  return asKept.map((load) => ({ ...load, position: standsAt.get(load.drum!) ?? null }));
};
