import type { BookedFlight } from '../scenario.js';

/** Every place of a booked flight in order, where it starts first. */
export const routeOfBooked = ({ legs }: BookedFlight): readonly string[] => [
  ...legs.slice(0, 1).map(({ from }) => from),
  ...legs.map(({ to }) => to),
];

/** Passengers on its fullest leg. */
export const mostPassengers = ({ legs }: BookedFlight): number =>
  Math.max(0, ...legs.map(({ passengers }) => passengers));
