import type { MovementKind, Where } from '@drumline/stock';
import type { FlightToCome } from './cache-outlooks.js';
import { standingState } from './flight-states/index.js';
import type { FlightState, StandingFlight } from './scenario.js';

/** A flight as it is kept, in any state. */
interface KeptFlight extends Pick<StandingFlight, 'id' | 'date' | 'stops'> {
  readonly state: FlightState;
  readonly needsDecision: string | null;
  readonly fromPlace: string;
  readonly planned: Pick<FlightToCome, 'half'>;
}

/** One drum of a flight; `drum` null: still to be filled. `stop`: index into its stops. */
interface KeptLoad {
  readonly flightId: string;
  readonly stop: number;
  readonly drum: string | null;
}

interface SeenDrum {
  readonly where: Where;
  /** The movement by which it is there. */
  readonly since: MovementKind | null;
  /** By itself or with its batch. */
  readonly isHeld: boolean;
}

const accountedFor: readonly FlightState[] = ['reported', 'closed', 'turned back', 'ended elsewhere'];

/**
 * The flights with the drums that they have still to set down: of a flight under way, the drums that the ledger has
 * seen set down, brought home or lost on the way are no longer among them. `drums`: what the ledger has of each, by number.
 */
export function stillToCome(
  flights: readonly KeptFlight[],
  loads: readonly KeptLoad[],
  drums: ReadonlyMap<string, SeenDrum>,
): readonly FlightToCome[] {
  return flights.flatMap((flight) => {
    const state = standingState(flight.state);
    if (state === null || accountedFor.includes(flight.state)) return [];
    const own = loads.filter(({ flightId }) => flightId === flight.id);
    const isToCome = ({ drum }: KeptLoad) => drum === null || isUnderWay(drums.get(drum), flight.fromPlace);
    const { id, date, needsDecision, planned } = flight;
    const isHeld = ({ drum }: KeptLoad) => drum !== null && drums.get(drum)?.isHeld === true;
    const stops = flight.stops.map(({ place, drums: planned }, index) => {
      const coming = own.filter((load) => load.stop === index && isToCome(load));
      return {
        place,
        drums: own.length === 0 ? planned : coming.length,
        heldDrums: coming.filter(isHeld).length,
      };
    });
    return [{ id, state, date, half: planned.half, needsDecision, stops }];
  });
}

/** Aboard, or not loaded yet as far as the ledger knows. */
function isUnderWay(drum: SeenDrum | undefined, fromPlace: string): boolean {
  if (drum === undefined) return true;
  const { where, since } = drum;
  if (where.kind === 'at') return where.place === fromPlace && since !== 'brought home';
  return where.kind === 'aboard';
}
