import type { BookedFlight } from '@drumline/planning';
import { Problem } from '../../http/problem.js';
import type { Board } from '../board/board.service.js';

/** A flight that flies anyway and carries no drum yet. */
export const bookedOf = ({ scenario, flights }: Board, id: string): BookedFlight => {
  const booked = scenario.bookedFlights.find((flight) => flight.id === id);
  if (booked === undefined) throw new Problem('not-found', `No booked flight ${id} is ahead.`);
  const carries = flights.find((flight) => flight.id === id);
  if (carries === undefined || carries.state === 'declined' || carries.state === 'called off') return booked;
  throw new Problem('conflict', `${id} carries drums already (${carries.state}): amend it.`);
};
