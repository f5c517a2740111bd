import type { AddDrums, BookedLoadAnswer } from '@drumline/contract';
import { passengersAndDrums } from '@drumline/loading';
import {
  approvalsOnFile,
  type BookedFlight,
  bookedSpares,
  checkFlights,
  type Fault,
  faultWords,
  type Scenario,
  type StandingFlight,
} from '@drumline/planning';
import { Problem } from '../../http/problem.js';
import type { Board } from '../board/board.service.js';

/** Drums for one of its landings. */
export type ForLanding = Pick<AddDrums, 'place' | 'drums'>;

/** A flight that flies anyway and carries no drum yet. */
export const bookedOf = ({ scenario, flights }: Board, id: string): BookedFlight => {
  const booked = scenario.bookedFlights.find((flight) => flight.id === id);
  if (booked === undefined) throw new Problem('not-found', `No booked flight ${id} is ahead.`);
  const carries = flights.find((flight) => flight.id === id);
  if (carries === undefined || carries.state === 'declined' || carries.state === 'called off') return booked;
  throw new Problem('conflict', `${id} carries drums already (${carries.state}): amend it.`);
};

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
export const passengerFault = (
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

/** Other booked flights that could take some. */
export const insteadOf = (scenario: Scenario, not: string): BookedLoadAnswer['instead'] =>
  bookedSpares(scenario).flatMap(({ id, drums, to }) => {
    const flight = scenario.bookedFlights.find((each) => each.id === id);
    const carries = scenario.flights.some((each) => each.id === id);
    if (flight === undefined || to === null || drums === 0 || id === not || carries) return [];
    const { from } = flight.legs[0]!;
    const words = `${id} ${from}-${to}, ${drums} ${drums === 1 ? 'drum' : 'drums'}`;
    return [{ flight: id, date: flight.date, from, to, drums, words }];
  });
