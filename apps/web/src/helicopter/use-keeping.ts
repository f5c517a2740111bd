import { useState } from 'react';
import { clockNow, goRound, keep, type Person, type Report } from '../phone/index.js';
import type { Reporter } from '../pilot/reports.js';

/** Keep: written to the phone, read back, and off to base when there is a line. False: it could not be kept. */
export const useKeeping = (person: Person) => {
  const [notKept, setNotKept] = useState<string | null>(null);
  const keepReport = async (make: (reporter: Reporter) => Report): Promise<boolean> => {
    const made = make({ by: person.fullName, clock: clockNow(), newId: () => crypto.randomUUID() });
    const why = await keep(made);
    setNotKept(why);
    if (why === null) void goRound();
    return why === null;
  };
  return { keepReport, notKept };
};
