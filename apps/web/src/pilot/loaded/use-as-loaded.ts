import type { DrumAsLoaded } from '@drumline/loading';
import { useMemo } from 'react';
import { usePart } from '../../phone/index.js';
import type { OpenedFlight } from '../day/opened-flight.js';
import type { ReportedDrum } from '../reports/own-reports.js';

const part = () => import('./as-loaded.js');

/** The flight as it is loaded. Undefined: the phone is working it out; null: that part of the program is not here. */
export const useAsLoaded = (
  flight: OpenedFlight | undefined,
  aboard: readonly DrumAsLoaded[],
): OpenedFlight | null | undefined => {
  const isOther = aboard.length > 0;
  const program = usePart(part, isOther);
  const code = flight?.sheet?.checkCode;
  // biome-ignore lint/correctness/useExhaustiveDependencies: a flight is another one when its sheet is
  const other = useMemo(
    () => (program && flight && isOther ? program.flightAsLoaded(flight, aboard) : undefined),
    [program, code, aboard],
  );
  if (!isOther || flight === undefined) return flight;
  return program === null ? null : other;
};

/** The flight as it flies on by what this phone has reported of its drums. Undefined and null as above. */
export const useAsFlown = (
  flight: OpenedFlight | undefined,
  drums: readonly ReportedDrum[],
): OpenedFlight | null | undefined => {
  const isOther = drums.length > 0 && flight?.sheet != null && flight.request !== null;
  const program = usePart(part, isOther);
  const said = drums.map(({ id }) => id).join();
  const code = flight?.sheet?.checkCode;
  // biome-ignore lint/correctness/useExhaustiveDependencies: a flight is another one when its sheet is, drums when their reports are
  const sheet = useMemo(
    () => (program && flight && isOther ? program.flightAsFlown(flight, drums) : undefined),
    [program, code, said, isOther],
  );
  if (!isOther || flight === undefined) return flight;
  if (program === null || sheet === undefined) return program === null ? null : undefined;
  // State and versions are those of now; what stands on the sheet is what flies on.
  return { ...flight, sheet: sheet.sheet, request: sheet.request };
};
