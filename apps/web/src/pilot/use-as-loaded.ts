import type { DrumAsLoaded } from '@drumline/loading';
import { useMemo } from 'react';
import { usePart } from '../phone/index.js';
import type { OpenedFlight } from './opened-flight.js';

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
