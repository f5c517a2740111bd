import type { Fault } from '../flight-plan.js';
import { dayWords } from '../wording.js';
import type { FlownLeg } from './recompute-legs.js';
import type { SurveyedFlight } from './survey.js';

/** A fault of one flight: "F05, Tue 15 Jun", and the leg or place where it shows. */
export const flightFault = (
  { flight }: SurveyedFlight,
  at: FlownLeg | string | null,
  what: string,
  mend: string,
): Fault => {
  const spot = at === null || typeof at === 'string' ? at : `${at.from.code}-${at.to.code}`;
  return {
    where: [flight.id, dayWords(flight.date), ...(spot ? [spot] : [])].join(', '),
    what,
    mend,
    flights: [flight.id],
  };
};

/** A fault in one line: "F05, Tue 15 Jun: XLOR is reported closed. Wait for a report that it is open." */
export const faultWords = ({ where, what, mend }: Fault): string => `${where}: ${what} ${mend}`;
