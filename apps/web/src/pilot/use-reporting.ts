import { useState } from 'react';
import { useLocation } from 'wouter';
import { clockNow, goRound, keep, type Person, type Report } from '../phone/index.js';
import type { Reporter } from './reports.js';

/** Keep: written to the phone, read back, and off to base when there is a line. It returns at once. */
export const useReporting = (person: Person) => {
  const [notKept, setNotKept] = useState<string | null>(null);
  const [, go] = useLocation();
  const report = async (
    make: (reporter: Reporter) => Report | readonly Report[],
    then: string,
  ): Promise<void> => {
    const made = make({ by: person.fullName, clock: clockNow(), newId: () => crypto.randomUUID() });
    for (const one of Array.isArray(made) ? (made as readonly Report[]) : [made as Report]) {
      const why = await keep(one);
      // The page stays as it is: what is on it has to be written on paper.
      if (why !== null) return setNotKept(why);
    }
    void goRound();
    go(then);
  };
  return { report, notKept };
};
