import type { MyDay, PhoneFlight } from '@drumline/contract';
import type { SurfaceReport } from '@drumline/network';
import { type ShownEntry, useEntries } from '../phone/index.js';
import { useDay, useOpened } from './day.js';
import { isNewer } from './newer-version.js';
import { heldHere, type OwnReports, ownReports, surfacesKnown } from './own-reports.js';

/** One flight with everything that is known of it on this phone. */
export interface FlightHere {
  /** As it was opened. */
  readonly flight: PhoneFlight;
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
  return {
    flight,
    newer: newerThan(flight, newest),
    day: read.day,
    readAt: read.at,
    own: ownReports(entries, id),
    surfaces: surfacesKnown(read.day.surfaceReports, entries),
    held: heldOf(read.day, entries),
  };
};

const newerThan = (flight: PhoneFlight, newest: PhoneFlight | null): FlightHere['newer'] => {
  if (newest === null) return 'gone';
  return isNewer(flight, newest) ? newest : null;
};

const heldOf = ({ drums }: MyDay, entries: readonly ShownEntry[]): ReadonlyMap<string, string> =>
  new Map([
    ...drums.flatMap(({ number, held }) => (held === null ? [] : [[number, held] as const])),
    ...[...heldHere(entries)].map((number) => [number, 'reported on this phone'] as const),
  ]);
