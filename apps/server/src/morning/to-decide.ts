import { ifDeclinedByFlight, markableStates } from '@drumline/planning';
import { epochMinutes } from '@drumline/units';
import type { Board } from '../flights/board.service.js';
import type { Account } from '../people/account.table.js';
import { mayBeOneOfTwo } from '../people/permission.js';
import type { ProposalsService } from '../proposals/proposals.service.js';
import type { CasePagesService } from '../stock/case-pages.service.js';
import { decideBy } from './decide-by.js';
import type { DecideCase, DecideFlight, DecideProposal } from './morning-answer.js';

/** Marked flights, and those that are offered; first due first. */
export const toDecide = ({ flights, scenario }: Board): readonly DecideFlight[] => {
  const reasonOf = ifDeclinedByFlight(scenario);
  return flights
    .filter(
      ({ state, needsDecision }) =>
        state === 'offered' || (needsDecision !== null && markableStates.includes(state)),
    )
    .map((flight) => ({
      id: flight.id,
      state: flight.state,
      needsDecision: flight.needsDecision,
      by: decideBy(flight, scenario.firstDay, scenario.timeZone),
      date: flight.date,
      departs: flight.departs,
      aircraft: flight.aircraft,
      pilot: flight.pilot,
      route: [flight.fromPlace, ...flight.stops.map(({ place }) => place), flight.toPlace],
      drums: flight.stops.reduce((sum, { drums }) => sum + drums, 0),
      ...reasonOf(flight.id),
    }))
    .toSorted(
      (one, other) => epochMinutes(one.by) - epochMinutes(other.by) || (one.departs < other.departs ? -1 : 1),
    );
};

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

/** `aheadMs`: of the territory's clock before the one on the wall, by which proposals are stamped. */
export const decideProposal =
  (me: Account, aheadMs: number) =>
  (open: Awaited<ReturnType<ProposalsService['listOpen']>>[number]): DecideProposal => ({
    id: open.id,
    subject: open.subject,
    act: open.act,
    proposedAt: new Date(open.proposedAt.getTime() + aheadMs).toISOString(),
    signedBy: open.signedBy,
    stillToSign: open.stillToSign,
    mayAgree: mayBeOneOfTwo(me, open.act) && !open.agreed.includes(me.id),
  });
