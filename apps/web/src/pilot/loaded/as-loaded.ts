import { asLoaded, type DrumAsLoaded, makeLoadSheet } from '@drumline/loading';
import type { OpenedFlight } from '../day/opened-flight.js';
import type { ReportedDrum } from '../reports/own-reports.js';

/**
 * The flight with its drums as they stand in the cabin: positions, both totals, balance, go-back lines and code square
 * follow, by the same program as at base. Fetched by itself: few loads are other than planned.
 * What is not among `aboard` stays behind.
 */
export const flightAsLoaded = (flight: OpenedFlight, aboard: readonly DrumAsLoaded[]): OpenedFlight => {
  const numbers = new Map(aboard.map(({ planned, number }) => [planned, number]));
  const { load } = flight.request!;
  const going = { ...load, drums: load.drums.filter(({ number }) => numbers.has(number)) };
  const request = asLoaded({ ...flight.request!, load: going }, aboard);
  return {
    ...flight,
    request,
    sheet: makeLoadSheet(request),
    stops: flight.stops.map((stop) => ({
      ...stop,
      drums: stop.drums.flatMap((number) => numbers.get(number) ?? []),
    })),
    changedFrom: flight.changedFrom ?? flight.sheet!.checkCode,
  };
};

/** The flight as it flies on: what was brought back stays aboard to the end, what was left is off from there. */
export const flightAsFlown = (flight: OpenedFlight, drums: readonly ReportedDrum[]): OpenedFlight => {
  const request = flight.request!;
  const said = new Map(drums.map((drum) => [drum.drum, drum]));
  const last = flight.route.length - 2;
  const flown = request.load.drums.map((drum) => {
    const report = said.get(drum.number);
    if (report === undefined) return drum;
    return { ...drum, offAfterLeg: report.kind === 'left at' ? report.leg - 1 : last };
  });
  const asFlown = { ...request, isUnderWay: true as const, load: { ...request.load, drums: flown } };
  return { ...flight, request: asFlown, sheet: makeLoadSheet(asFlown) };
};
