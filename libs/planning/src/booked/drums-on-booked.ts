import { passengersAndDrums } from '@drumline/loading';
import type { IsoDate } from '@drumline/units';
import { checkFlights } from '../check/check-flights.js';
import { faultWords } from '../check/fault.js';
import type { Fault } from '../flight-plan.js';
import { approvalsOnFile } from '../load-sheet/approvals.js';
import type { BookedFlight, Scenario, StandingFlight } from '../scenario.js';
import { drumWords } from '../wording.js';
import { type BookedRoom, bookedSpares } from './booked-room.js';

/** Drums for one of its landings. */
export interface ForLanding {
  readonly place: string;
  readonly drums: number;
}

/** It with drums for a landing, as a plan counts it. */
export const standingWith = ({ id, date, aircraft, legs, departs }: BookedFlight, stop: ForLanding) =>
  ({
    id,
    state: 'offered',
    date,
    aircraft,
    from: legs[0]!.from,
    stops: [stop],
    to: legs.at(-1)!.to,
    ...(departs === undefined ? {} : { departs }),
  }) satisfies StandingFlight;

/** Asks what stands in the way of drums on a booked flight, that does not stand there without them. */
export const faultsOfAdding = (scenario: Scenario, booked: BookedFlight) => {
  const known = new Set(checkFlights(scenario, scenario.flights).map(faultWords));
  return (stop: ForLanding): readonly Fault[] => {
    const off = booked.legs.findIndex(({ to }) => to === stop.place);
    if (off < 0) return [doesNotLand(booked, stop)];
    const refused = booked.legs
      .slice(0, off + 1)
      .flatMap((leg) => passengerFault(scenario, booked, { ...leg, drums: stop.drums }) ?? []);
    if (refused.length > 0) return refused;
    return checkFlights(scenario, [...scenario.flights, standingWith(booked, stop)]).filter(
      (fault) => fault.flights.includes(booked.id) && !known.has(faultWords(fault)),
    );
  };
};

const doesNotLand = ({ id }: BookedFlight, { place }: ForLanding): Fault => ({
  where: `${id}, place`,
  what: `${id} does not land at ${place}.`,
  mend: 'Name one of its landings.',
  flights: [id],
});

/** The rule on a leg that the drums fly, with its document; null: it lets them. */
const passengerFault = (
  scenario: Scenario,
  { id, date, aircraft, approval }: BookedFlight,
  leg: Pick<BookedFlight['legs'][number], 'from' | 'to' | 'passengers'> & { readonly drums: number },
): Fault | null => {
  const { from, to, passengers, drums } = leg;
  const answer = passengersAndDrums(
    { from, to, date, aircraft, passengers, drums },
    scenario.policy.passengers,
    { number: approval ?? null, onFile: approvalsOnFile(scenario) },
  );
  if (answer.allowed) return null;
  const mend = 'Cite an approval that is on file, or take a leg without passengers.';
  return { where: `${id}, leg ${from}-${to}`, what: answer.words, mend, flights: [id] };
};

/** A landing of a booked flight that could take drums. */
export interface SpareElsewhere {
  readonly flight: string;
  readonly date: IsoDate;
  readonly from: string;
  readonly to: string;
  readonly drums: number;
  /** "X3 MER-HAS, 3 drums". */
  readonly words: string;
}

/** Other booked flights than `not` that carry no drums yet and could take some. */
export const spareElsewhere = (scenario: Scenario, not: string): readonly SpareElsewhere[] =>
  bookedSpares(scenario).flatMap(({ id, drums, to }) => {
    const flight = scenario.bookedFlights.find((each) => each.id === id);
    const carries = scenario.flights.some((each) => each.id === id);
    if (flight === undefined || to === null || drums === 0 || id === not || carries) return [];
    const { from } = flight.legs[0]!;
    const words = `${id} ${from}-${to}, ${drumWords(drums)}`;
    return [{ flight: id, date: flight.date, from, to, drums, words }];
  });

/** Drums that go on a leg or come off at a landing, and what lets no more. */
interface MostDrums {
  readonly drums: number;
  readonly by: string;
}

export interface RoomByRules {
  readonly legs: readonly (MostDrums & { readonly from: string; readonly to: string })[];
  readonly landings: readonly (MostDrums & { readonly place: string })[];
}

interface ByWhat {
  readonly room: BookedRoom | null;
  readonly faultsOf: ReturnType<typeof faultsOfAdding>;
}

/** Room as the limits leave it, less what strip, site, crew or anything else of the plan refuses; without room: none. */
export function roomByRules(
  scenario: Scenario,
  booked: BookedFlight,
  { room, faultsOf }: ByWhat,
): RoomByRules {
  if (room === null) return { legs: [], landings: [] };
  const legs = room.legs.map(({ from, to, drums, limit }, at) => {
    const { passengers } = booked.legs[at]!;
    const rule = passengerFault(scenario, booked, { from, to, passengers, drums: drums + 1 });
    const named = limit.place === null ? limit.name : `${limit.place} ${limit.name}`;
    return { from, to, drums, by: room.closed ?? rule?.what ?? named };
  });
  const landings = room.landings.map(({ place, drums: onLegs, leg }) => {
    let [drums, by] = [onLegs, legs[leg]!.by];
    for (; drums > 0; drums -= 1) {
      const [fault] = faultsOf({ place, drums });
      if (fault === undefined) break;
      by = fault.what;
    }
    return { place, drums, by };
  });
  return { legs, landings };
}
