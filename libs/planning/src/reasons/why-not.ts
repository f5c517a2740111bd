import { checkFlights } from '../check/check-flights.js';
import type { EndTarget, Fault, PlannedFlight } from '../flight-plan.js';
import { describeFlights } from '../flights/describe-flights.js';
import { sketchFlight } from '../flights/flight-sketch.js';
import { flightLoads } from '../problem/flight-loads.js';
import { territoryOf } from '../problem/territory.js';
import type { Scenario, StandingFlight } from '../scenario.js';

/** A flight that somebody asks about: without drums the most that it may carry to its first stop. */
export interface FlightQuestion {
  readonly aircraft: string;
  readonly date: string;
  readonly stops: readonly { readonly place: string; readonly drums?: number }[];
  readonly pilot?: string;
  /** Absent: the aircraft's home. */
  readonly from?: string;
}

export type WhyNot =
  | {
      /** The first rule it breaks, with what would have to change; then the others. */
      readonly verdict: 'breaks a rule';
      readonly flight: StandingFlight;
      readonly fault: Fault;
      readonly others: readonly Fault[];
    }
  | {
      /** Nothing forbids it: what it would cost, and what it would be for. */
      readonly verdict: 'allowed';
      readonly flight: StandingFlight;
      readonly described: PlannedFlight;
    };

/**
 * Why a flight is not in a plan: it is added to the plan's flights and the rules are asked again. Offered flights may
 * take other times to make room. Throws where the question names what the scenario does not have.
 */
export function whyNot(
  scenario: Scenario,
  flights: readonly StandingFlight[],
  question: FlightQuestion,
  endTarget: EndTarget,
): WhyNot {
  const movable = flights.map(withoutTime);
  const asked = askedFlight(scenario, question);
  const before = new Set(checkFlights(scenario, movable).map(faultKey));
  const faults = checkFlights(scenario, [...movable, asked]).filter((fault) => !before.has(faultKey(fault)));
  const [fault, ...others] = faults;
  if (fault) return { verdict: 'breaks a rule', flight: asked, fault, others };
  const described = describeFlights(scenario, [...movable, asked], endTarget);
  return {
    verdict: 'allowed',
    flight: asked,
    described: described.flights.find(({ id }) => id === asked.id)!,
  };
}

const faultKey = ({ where, what }: Fault): string => `${where}: ${what}`;

function withoutTime(flight: StandingFlight): StandingFlight {
  const { departs: _, ...untimed } = flight;
  return flight.state === 'offered' ? untimed : flight;
}

function askedFlight(
  scenario: Scenario,
  { aircraft, date, stops, pilot, from }: FlightQuestion,
): StandingFlight {
  const tail = scenario.aircraft.find((each) => each.tail === aircraft);
  if (!tail)
    throw new Error(
      `There is no aircraft ${aircraft}; the scenario has ${scenario.aircraft.map((each) => each.tail).join(', ')}.`,
    );
  const base = from ?? tail.home;
  const empty: StandingFlight = {
    id: 'asked',
    state: 'offered',
    date,
    aircraft,
    from: base,
    stops: stops.map(({ place }) => ({ place, drums: 0 })),
    to: base,
    ...(pilot !== undefined && { pilot }),
  };
  const loads = flightLoads(scenario, territoryOf(scenario));
  const [toFirst] = sketchFlight(scenario, loads, empty).onDay.load.legs;
  const asked = stops.reduce((sum, { drums }) => sum + (drums ?? 0), 0);
  const most = Math.max(0, toFirst!.drums - asked);
  const open = stops.findIndex(({ drums }) => drums === undefined);
  return {
    ...empty,
    stops: stops.map(({ place, drums }, index) => ({ place, drums: drums ?? (index === open ? most : 0) })),
  };
}
