import type { PickListAnswer } from '@drumline/contract';
import type { Board } from '../flights/board/board.service.js';

type Flight = Board['flights'][number];

/** A flight for which the store makes drums ready, and what of it every list says. */
export interface ReadiedFlight {
  readonly flight: Flight;
  readonly head: Omit<PickListAnswer, 'stops'>;
}

/** Flights that are approved or given, by date and time. */
export const readiedFlights = (flights: readonly Flight[]): readonly ReadiedFlight[] =>
  flights
    .flatMap((flight) => {
      const { id, version, state, needsDecision, date, departs, aircraft, pilot, fromPlace } = flight;
      if (state !== 'approved' && state !== 'given') return [];
      const head = {
        flight: id,
        version,
        state,
        needsDecision,
        date,
        departs,
        aircraft,
        pilot,
        from: fromPlace,
      };
      return [{ flight, head }];
    })
    .sort((one, other) => whenOf(one).localeCompare(whenOf(other)));

const whenOf = ({ head: { date, departs, flight } }: ReadiedFlight): string => `${date} ${departs} ${flight}`;
