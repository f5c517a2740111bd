import { type FlightToCome, standingState } from '@drumline/planning';
import type { Board } from '../flights/board.service.js';
import type { Whereabouts } from '../stock/stock.service.js';

type Flight = Board['flights'][number];
type Load = Board['loads'][number];

const accountedFor: readonly Flight['state'][] = ['reported', 'closed', 'turned back', 'ended elsewhere'];

/**
 * The flights with the drums that they have still to set down: of a flight under way, the drums that the ledger has
 * seen set down, brought home or lost on the way are no longer among them.
 */
export const stillToCome = (
  { flights, loads }: Pick<Board, 'flights' | 'loads'>,
  drums: ReadonlyMap<string, Whereabouts>,
): readonly FlightToCome[] =>
  flights.flatMap((flight) => {
    const state = standingState(flight.state);
    if (state === null || accountedFor.includes(flight.state)) return [];
    const own = loads.filter(({ flightId }) => flightId === flight.id);
    const isToCome = ({ drum }: Load) => drum === null || isUnderWay(drums.get(drum), flight);
    const { id, date, needsDecision, planned } = flight;
    const stops = flight.stops.map(({ place, drums: planned }, stop) => ({
      place,
      drums: own.length === 0 ? planned : own.filter((load) => load.stop === stop && isToCome(load)).length,
    }));
    return [{ id, state, date, half: planned.half, needsDecision, stops }];
  });

/** Aboard, or not loaded yet as far as the ledger knows. */
const isUnderWay = (drum: Whereabouts | undefined, { fromPlace }: Flight): boolean => {
  if (drum === undefined) return true;
  const { where, since } = drum;
  if (where.kind === 'at') return where.place === fromPlace && since !== 'brought home';
  return where.kind === 'aboard';
};
