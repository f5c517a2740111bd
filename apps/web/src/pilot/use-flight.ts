import type { MyDay, PhoneFlight } from '@drumline/contract';
import type { SurfaceReport } from '@drumline/network';
import { type ShownEntry, useEntries } from '../phone/index.js';
import { useDay, useOpened } from './day/day.js';
import { isNewer, type OpenedFlight } from './day/opened-flight.js';
import { heldHere, type OwnReports, ownReports, surfacesKnown } from './reports/own-reports.js';

/** One flight with everything that is known of it on this phone. */
export interface FlightHere {
  /** As it was opened, or as it was loaded since; its state is that of now. */
  readonly flight: OpenedFlight;
  /** False: this is the first look at it. */
  readonly isOpened: boolean;
  /** Base has another; null: it is the newest. `gone`: base no longer names it as this crew's. */
  readonly newer: PhoneFlight | 'gone' | null;
  readonly day: MyDay;
  readonly readAt: string;
  readonly own: OwnReports;
  readonly surfaces: readonly SurfaceReport[];
  /** By base or by this phone. */
  readonly held: ReadonlyMap<string, string>;
}

/** Undefined: the phone is looking; null: no such flight here. */
export const useFlight = (id: string): FlightHere | null | undefined => {
  const read = useDay();
  const opened = useOpened(id);
  const entries = useEntries();
  if (read === undefined || opened === undefined || entries === undefined) return undefined;
  const newest = read?.day.flights.find((flight) => flight.id === id) ?? null;
  const flight = opened ?? newest;
  if (read === null || flight === null) return null;
  const { state, needsDecision } = newest ?? flight;
  return {
    flight: { ...flight, state, needsDecision, request: requestOf(flight, newest) },
    isOpened: opened !== null,
    newer: newerThan(flight, newest),
    day: read.day,
    readAt: read.at,
    own: ownReports(entries, id),
    surfaces: surfacesKnown(read.day.surfaceReports, entries),
    held: heldOf(read.day, entries),
  };
};

/** Opened before phones were told what a sheet is made from: base has told it since. */
const requestOf = (flight: OpenedFlight, newest: PhoneFlight | null): OpenedFlight['request'] =>
  flight.request ?? (newest?.sheet?.checkCode === flight.sheet?.checkCode ? newest?.request : null) ?? null;

const newerThan = (flight: OpenedFlight, newest: PhoneFlight | null): FlightHere['newer'] => {
  if (newest === null) return 'gone';
  return isNewer(flight, newest) ? newest : null;
};

const heldOf = ({ drums }: MyDay, entries: readonly ShownEntry[]): ReadonlyMap<string, string> =>
  new Map([
    ...drums.flatMap(({ number, held }) => (held === null ? [] : [[number, held] as const])),
    ...[...heldHere(entries)].map((number) => [number, 'reported on this phone'] as const),
  ]);
