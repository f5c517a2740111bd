import type { FlightReportBody } from '@drumline/contract';
import type { Flight, Load } from '../store/flight.table.js';

/** What a crew says of the loading of its flight. */
export type LoadBody = Extract<FlightReportBody, { readonly kind: 'load' }>;

/** The drums that are aboard, in the place of those that were set aside. */
export const loadsAboard = (
  { id, stops }: Flight,
  { drums }: LoadBody,
  { settled, before }: { readonly settled: boolean; readonly before: readonly Load[] },
): readonly Load[] =>
  drums.map(({ drum, to, position, grossKg }, at) => ({
    flightId: id,
    load: at + 1,
    stop: Math.max(
      0,
      stops.findIndex(({ place }) => place === to),
    ),
    place: to,
    drum,
    settled,
    position: position ?? before.find((load) => load.drum === drum)?.position ?? null,
    toldKg: grossKg ?? null,
  }));
