import {
  bookedFaults,
  faultWords,
  ifDeclinedByFlight,
  isUnheardOf,
  markableStates,
  mostPassengers,
  routeOfBooked,
} from '@drumline/planning';
import { epochMinutes, instantAt, instantOf, minutes } from '@drumline/units';
import { fillListsOf } from '../drum-lists/fill-lists.service.js';
import type { Board } from '../flights/board/board.service.js';
import type { Flight } from '../flights/store/flight.table.js';
import type { Account } from '../people/account.table.js';
import { mayBeOneOfTwo } from '../people/permission.js';
import type { ProposalsService } from '../proposals/proposals.service.js';
import type { CasePagesService } from '../stock/cases/case-pages.service.js';
import { decideBy } from './decide-by.js';
import type {
  DecideBooked,
  DecideCase,
  DecideFlight,
  DecideProposal,
  MorningAnswer,
  UnheardFlight,
} from './morning-answer.js';

/** Marked flights, those that are offered, and approved ones past their hour that nobody has given; first due first. */
export const toDecide = ({ flights, scenario }: Board): readonly DecideFlight[] => {
  const reasonOf = ifDeclinedByFlight(scenario);
  return flights
    .filter((flight) => isToDecide(flight, scenario))
    .map((flight) => ({
      ...inShort(flight),
      state: flight.state,
      needsDecision: flight.needsDecision,
      by: isNotGiven(flight, scenario)
        ? instantOf(flight.date, flight.departs, scenario.timeZone)
        : decideBy(asked(flight), scenario.firstDay, scenario.timeZone),
      ...reasonOf(flight.id),
    }))
    .toSorted(
      (one, other) => epochMinutes(one.by) - epochMinutes(other.by) || (one.departs < other.departs ? -1 : 1),
    );
};

/** Booked flights that today's facts forbid as they are booked; first due first. */
export const bookedToDecide = ({ scenario }: Board): readonly DecideBooked[] => {
  const faults = bookedFaults(scenario);
  const { asOf, firstDay, timeZone, policy } = scenario;
  return scenario.bookedFlights
    .flatMap((flight) => {
      const fault = faults.get(flight.id);
      if (fault === undefined) return [];
      const { id, date, aircraft, purpose, departs = policy.flyingDay.firstDeparture } = flight;
      return {
        ...{ id, date, aircraft, purpose },
        route: routeOfBooked(flight),
        passengers: mostPassengers(flight),
        needsDecision: faultWords(fault),
        by: decideBy({ date, departs, askedAt: asOf }, firstDay, timeZone),
      };
    })
    .toSorted((one, other) => epochMinutes(one.by) - epochMinutes(other.by));
};

type ToDecide = Pick<Flight, 'state' | 'needsDecision' | 'date' | 'departs'>;
type Moment = Pick<Board['scenario'], 'asOf' | 'timeZone'>;

export const isToDecide = (flight: ToDecide, moment: Moment): boolean =>
  flight.state === 'offered' ||
  (flight.needsDecision !== null && markableStates.includes(flight.state)) ||
  isNotGiven(flight, moment);

/** It should be off, and its pilot was never told to go. */
const isNotGiven = ({ state, needsDecision, date, departs }: ToDecide, { asOf, timeZone }: Moment): boolean =>
  state === 'approved' &&
  needsDecision === null &&
  epochMinutes(instantOf(date, departs, timeZone)) < epochMinutes(asOf);

/** What was done last offered the flight or marked it. */
const asked = ({ date, departs, changedAt }: Flight) => ({
  date,
  departs,
  askedAt: instantAt(minutes(Math.floor(changedAt.getTime() / 60_000))),
});

/** Of days that are over: nobody has said whether they flew; the first day first. */
export const didTheyFly = (
  unfinished: readonly Flight[],
  { firstDay }: Board['scenario'],
): readonly UnheardFlight[] =>
  unfinished
    .filter((flight) => isUnheardOf(flight, firstDay))
    .map((flight) => ({ state: flight.state, needsDecision: flight.needsDecision, ...inShort(flight) }))
    .toSorted((one, other) => (`${one.date} ${one.departs}` < `${other.date} ${other.departs}` ? -1 : 1));

const inShort = ({ id, date, departs, aircraft, pilot, fromPlace, stops, toPlace }: Flight) => ({
  ...{ id, date, departs, aircraft, pilot },
  route: [fromPlace, ...stops.map(({ place }) => place), toPlace],
  drums: stops.reduce((sum, { drums }) => sum + drums, 0),
});

/** Bases that cannot fill in time what approved and given flights want, with those flights. */
export const fillsShort = (board: Board): MorningAnswer['fillsShort'] =>
  fillListsOf(board).flatMap(({ place, lines, short }) => {
    const [first] = lines;
    if (short.length === 0 || first === undefined) return [];
    const flights = [...new Set(lines.map(({ flight }) => flight))];
    const by = instantOf(first.date, first.departs, board.scenario.timeZone);
    return [{ place, short, flights, by }];
  });

export const decideCase = (open: Awaited<ReturnType<CasePagesService['open']>>[number]): DecideCase => ({
  count: open.count,
  place: open.place,
  at: open.counted.happenedAt,
  countedBy: open.countedBy,
  countedLitres: Math.round(open.countedMillilitres / 1000),
  bookLitres: Math.round(open.bookMillilitres / 1000),
  toleranceLitres: Math.round(open.toleranceMillilitres / 1000),
  proposed: open.proposals.length,
});

/** `proposedAt`: by the clock of the territory. */
export const decideProposal = (
  me: Account,
  open: Awaited<ReturnType<ProposalsService['listOpen']>>[number],
): DecideProposal => ({
  id: open.id,
  subject: open.subject,
  act: open.act,
  proposedAt: open.proposedAt.toISOString(),
  signedBy: open.signedBy,
  stillToSign: open.stillToSign,
  mayAgree: mayBeOneOfTwo(me, open.act) && !open.agreed.includes(me.id),
});
