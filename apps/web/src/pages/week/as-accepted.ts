import type { Week } from './week-read.js';

const changing = ['amend', 'decline', 'let go', 'mark', 'add drums'];

/**
 * The standing plan is still the one that was accepted: no surface heard since, no flight changed or marked since. Flights
 * called off do not tell: the acceptance itself calls off those that the plan does without.
 */
export const isAsAccepted = ({
  flights,
  heardSince,
  plan,
}: Pick<Week, 'flights' | 'heardSince' | 'plan'>): boolean =>
  plan !== null &&
  heardSince.length === 0 &&
  flights.every(
    ({ lastAct, changedAt, needsDecision }) =>
      needsDecision === null &&
      !(changing.includes(lastAct) && Date.parse(changedAt) > Date.parse(plan.asOf)),
  );
