import { asLoaded, checkLoad, type DrumAsLoaded, makeLoadSheet } from '@drumline/loading';
import type { OpenedFlight } from './opened-flight.js';

/**
 * The flight with its drums as they stand in the cabin: positions, both totals, balance, go-back lines and code square
 * follow, by the same program as at base. Fetched by itself: few loads are other than planned.
 */
export const flightAsLoaded = (flight: OpenedFlight, aboard: readonly DrumAsLoaded[]): OpenedFlight => {
  const request = asLoaded(flight.request!, aboard);
  const numbers = new Map(aboard.map(({ planned, number }) => [planned, number]));
  return {
    ...flight,
    request,
    sheet: makeLoadSheet(request),
    balance: checkLoad(request.load).balance.moments,
    stops: flight.stops.map((stop) => ({
      ...stop,
      drums: stop.drums.map((number) => numbers.get(number) ?? number),
    })),
    changedFrom: flight.changedFrom ?? flight.sheet!.checkCode,
  };
};
