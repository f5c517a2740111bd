import { describeFlights, type PlannedFlight, type Scenario } from '@drumline/planning';

type IfDeclined = Pick<PlannedFlight['reason'], 'ifDeclined' | 'protects'>;

/** As the card has it (flights/consequence.ts), in one piece of work for every flight that stands. */
export const ifDeclinedToday = (scenario: Scenario): ((id: string) => IfDeclined) => {
  const { flights } = describeFlights(scenario, scenario.flights, 'operator');
  const reasons = new Map(flights.map(({ id, reason }) => [id, reason]));
  return (id) => reasons.get(id) ?? nothingChanges;
};

const nothingChanges: IfDeclined = {
  ifDeclined: 'It is no part of the days ahead: nothing changes.',
  protects: null,
};
