import { useState } from 'react';
import { clockNow, keep, type Report } from './outbox.js';
import type { Reporter } from './reporting.js';
import { goRound } from './round.js';
import type { Person } from './who.js';

/** Keep: written to the phone, read back, and off to base when there is a line. False: it could not be kept. */
export const useKeeping = (person: Person) => {
  const [notKept, setNotKept] = useState<string | null>(null);
  const keepReports = async (make: (reporter: Reporter) => readonly Report[]): Promise<boolean> => {
    const made = make({ by: person.fullName, clock: clockNow(), newId: () => crypto.randomUUID() });
    for (const one of made) {
      const why = await keep(one);
      setNotKept(why);
      // The page stays as it is: what is on it has to be written on paper.
      if (why !== null) return false;
    }
    void goRound();
    return true;
  };
  const keepReport = (make: (reporter: Reporter) => Report): Promise<boolean> =>
    keepReports((reporter) => [make(reporter)]);
  return { keepReport, keepReports, notKept };
};
