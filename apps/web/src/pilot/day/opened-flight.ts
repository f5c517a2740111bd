import type { PhoneFlight } from '@drumline/contract';

/** The load that a person has open on the phone. */
export interface OpenedFlight extends PhoneFlight {
  /** Check code of base's sheet, where it was loaded otherwise than that sheet has it; absent: as it is. */
  readonly changedFrom?: string;
}

/**
 * Whether base has another load than the one that is open: another version, or the same by other facts. What this phone
 * itself has reported as loaded is no news, before base has heard it and after.
 */
export const isNewer = (opened: OpenedFlight, newest: PhoneFlight): boolean => {
  if (opened.version !== newest.version) return true;
  const code = newest.sheet?.checkCode;
  if (code === opened.sheet?.checkCode || code === opened.changedFrom) return false;
  // Base may be without a sheet of it: that is no other load.
  return newest.sheet !== null || numbersOf(newest).join() !== numbersOf(opened).join();
};

export const numbersOf = ({ stops }: PhoneFlight): readonly string[] => stops.flatMap(({ drums }) => drums);
