import type { BookedFlight } from '@drumline/planning';

export const routeOfBooked = ({ legs }: BookedFlight): readonly string[] => [
  ...legs.slice(0, 1).map(({ from }) => from),
  ...legs.map(({ to }) => to),
];

/** On its fullest leg. */
export const mostPassengers = ({ legs }: BookedFlight): number =>
  Math.max(0, ...legs.map(({ passengers }) => passengers));
