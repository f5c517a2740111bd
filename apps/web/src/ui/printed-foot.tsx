import type { ReactNode } from 'react';
import { useCalendar, useMe } from '../api/index.js';

/** At the foot of a print, and on paper only: when, by whom, and what else a reader of paper must know. */
export const PrintedFoot = ({ children }: { readonly children: ReactNode }) => {
  const { operatingDate, time, now } = useCalendar();
  const { fullName } = useMe();
  return (
    <p className="printed-foot">
      {operatingDate !== '' && `Printed ${operatingDate}, ${time(now)}, ${fullName}. `}
      {children}
    </p>
  );
};
