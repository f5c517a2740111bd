import {
  type AuthorityApproval,
  configurationOf,
  type PassengerLeg,
  passengersAndDrums,
  type RouteRequest,
} from '@drumline/loading';
import type { BookedFlight, Scenario } from '../scenario.js';

/** The approvals of the authority on file, with the two people who put their names to each. */
export const approvalsOnFile = ({ approvals = [] }: Scenario): readonly AuthorityApproval[] =>
  approvals.map(({ agreedBy = [], ...approval }) => ({
    ...approval,
    enteredBy: agreedBy[0] ?? 'nobody yet',
    confirmedBy: agreedBy[1] ?? null,
  }));

/** The request of a booked flight with the drums that the approval it cites lets fly beside its passengers. */
export function withApproval(request: RouteRequest, scenario: Scenario, flight: BookedFlight): RouteRequest {
  const cited = { number: flight.approval ?? null, onFile: approvalsOnFile(scenario) };
  if (cited.number === null) return request;
  const { drumPositions } = configurationOf(request.type, request.configuration);
  const legs = request.legs.map((leg) => {
    const asked = (drums: number): PassengerLeg => ({
      from: leg.from.place.code,
      to: leg.to.place.code,
      date: flight.date,
      aircraft: flight.aircraft,
      passengers: leg.passengers,
      drums,
    });
    const may = drumPositions.filter(
      (_, at) => passengersAndDrums(asked(at + 1), request.passengerRule, cited).allowed,
    );
    return { ...leg, drumsByApproval: may.length };
  });
  return { ...request, legs };
}
