import type { FlightReportBody, MovementBody, PhoneFlight } from '@drumline/contract';
import type { SurfaceState } from '@drumline/network';
import type { KeptRequest, Report } from '../phone/index.js';
import { happened, type Reporter, written } from '../phone/reporting.js';
import type { Condition } from './own-reports.js';

/** What was done with one drum. */
export interface DrumDone {
  readonly drum: string;
  readonly kind: 'left at' | 'brought home';
  readonly condition: Condition;
}

const entry = (reporter: Reporter, rest: Pick<Report, 'words' | 'flight' | 'requests'>): Report => ({
  by: reporter.by,
  clock: reporter.clock,
  ...rest,
});

const movement = (reporter: Reporter, body: MovementBody): KeptRequest => ({
  path: `/api/movements/${reporter.newId()}`,
  body,
});

const flightReport = (reporter: Reporter, body: FlightReportBody): KeptRequest => ({
  path: `/api/flight-reports/${reporter.newId()}`,
  body,
});

/** "3 left at XGAN, 1 brought back". */
export const doneWords = (done: readonly DrumDone[], place: string): string => {
  const left = done.filter(({ kind }) => kind === 'left at').length;
  const back = done.length - left;
  return [
    ...(left > 0 ? [`${left} left at ${place}`] : []),
    ...(back > 0 ? [`${back} brought back`] : []),
  ].join(', ');
};

/** Drum by drum, at a place of the plan or any other; `leg` counted from 1. */
export const drumsDone = (
  reporter: Reporter,
  flight: PhoneFlight,
  { done, place, leg }: { readonly done: readonly DrumDone[]; readonly place: string; readonly leg: number },
): Report => {
  const home = flight.route.at(-1)!;
  return entry(reporter, {
    words: doneWords(done, place),
    flight: flight.id,
    requests: done.map(({ drum, kind, condition }) => {
      const isLeft = kind === 'left at';
      return movement(reporter, {
        kind,
        ...written(reporter),
        drum,
        place: isLeft ? place : home,
        flight: flight.id,
        // What is not left rides to the end of the flight, wherever it was that nobody took it off.
        leg: isLeft ? leg : flight.route.length - 1,
        condition,
        foundMillilitres: null,
      });
    }),
  });
};

export interface LoadedTotals {
  readonly loadLb: number;
  readonly byHandLb: number;
  readonly takeoffLb: number;
  readonly byAircraftLb: number;
  readonly signed: { readonly by: string; readonly reason: string } | null;
  readonly bySoftFigures: boolean;
}

export const loaded = (reporter: Reporter, flight: PhoneFlight, totals: LoadedTotals): Report =>
  entry(reporter, {
    words: `${flight.id} loaded, version ${flight.version}`,
    flight: flight.id,
    requests: [
      flightReport(reporter, {
        kind: 'load',
        flight: flight.id,
        ...written(reporter),
        version: flight.version,
        totals: {
          load: { bySheetLb: totals.loadLb, byHandLb: totals.byHandLb },
          takeOff: { bySheetLb: totals.takeoffLb, byAircraftLb: totals.byAircraftLb },
        } as Extract<FlightReportBody, { kind: 'load' }>['totals'],
        drums: flight.stops.flatMap(({ place, drums }) =>
          drums.map((drum) => ({ movement: reporter.newId(), drum, to: place })),
        ),
        ...(totals.signed === null ? {} : { signed: totals.signed }),
        bySoftFigures: totals.bySoftFigures,
      }),
    ],
  });

export const tookOff = (reporter: Reporter, { id }: PhoneFlight): Report =>
  entry(reporter, {
    words: `${id} took off`,
    flight: id,
    requests: [flightReport(reporter, { kind: 'take off', flight: id, ...written(reporter) })],
  });

/** Down at the end; where every drum is accounted for on this phone, that is said with it. */
export const landed = (reporter: Reporter, { id, route }: PhoneFlight, everyDrumIsSaid: boolean): Report => {
  const place = route.at(-1)!;
  return entry(reporter, {
    words: `${id} down at ${place}`,
    flight: id,
    requests: [
      flightReport(reporter, { kind: 'land', flight: id, place, ...written(reporter) }),
      ...(everyDrumIsSaid
        ? [flightReport(reporter, { kind: 'report', flight: id, ...written(reporter) })]
        : []),
    ],
  });
};

export const refused = (reporter: Reporter, { id }: PhoneFlight): Report =>
  entry(reporter, {
    words: `${id}: I will not fly this`,
    flight: id,
    requests: [flightReport(reporter, { kind: 'refuse', flight: id, ...written(reporter) })],
  });

export type ProblemWhat = Extract<FlightReportBody, { kind: 'problem' }>['what'];

export const problem = (
  reporter: Reporter,
  { id }: PhoneFlight,
  { what, words }: { readonly what: ProblemWhat; readonly words: string },
): Report =>
  entry(reporter, {
    words: `${id}: ${what}`,
    flight: id,
    requests: [
      flightReport(reporter, {
        kind: 'problem',
        flight: id,
        ...written(reporter),
        what,
        ...(words.trim() === '' ? {} : { words: words.trim() }),
      }),
    ],
  });

export const surfaceSeen = (
  reporter: Reporter,
  place: string,
  { state, seen }: { readonly state: SurfaceState; readonly seen: 'on the ground' | 'from the air' },
): Report =>
  entry(reporter, {
    words: `Surface at ${place}: ${state}`,
    flight: null,
    requests: [
      {
        path: `/api/surface-reports/${reporter.newId()}`,
        body: {
          place,
          state,
          at: happened(reporter),
          by: seen === 'from the air' ? `${reporter.by}, from the air` : reporter.by,
        },
      },
    ],
  });
