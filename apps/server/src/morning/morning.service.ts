import { markableStates, oneWindow } from '@drumline/planning';
import { addDays, epochMinutes, type IsoInstant, instantOf } from '@drumline/units';
import { Injectable } from '@nestjs/common';
import { AwayFlightsService } from '../flights/away-flights.service.js';
import { type Board, BoardService } from '../flights/board.service.js';
import type { Flight } from '../flights/flight.table.js';
import { HandoversService } from '../handover/handovers.service.js';
import type { Account } from '../people/account.table.js';
import { mayBeOneOfTwo } from '../people/permission.js';
import { ProjectionsService } from '../projections/projections.service.js';
import { ProposalsService } from '../proposals/proposals.service.js';
import { CasePagesService } from '../stock/case-pages.service.js';
import { RaisedService } from '../stock/raised.service.js';
import { ClockService } from '../territory/clock.service.js';
import { cachesBelowCritical } from './caches-below-critical.js';
import { ChangedSinceService } from './changed-since.service.js';
import { crewsNotHeard } from './crews-not-heard.js';
import { decideBy, packTime } from './decide-by.js';
import { ifDeclinedToday } from './if-declined.js';
import type {
  DecideCase,
  DecideFlight,
  DecideProposal,
  FuelAt,
  MorningAnswer,
  NotHeard,
} from './morning-answer.js';
import { stripsNow } from './strips-now.js';

type Projections = Awaited<ReturnType<ProjectionsService['all']>>;

/** The dispatcher's picture in one read, so that its parts agree. */
@Injectable()
export class MorningService {
  constructor(
    private readonly board: BoardService,
    private readonly away: AwayFlightsService,
    private readonly projections: ProjectionsService,
    private readonly cases: CasePagesService,
    private readonly proposals: ProposalsService,
    private readonly raised: RaisedService,
    private readonly changedSince: ChangedSinceService,
    private readonly handovers: HandoversService,
    private readonly clock: ClockService,
  ) {}

  /** `since` absent: 17:00 of the day before. */
  async read(me: Account, since?: IsoInstant): Promise<MorningAnswer> {
    const board = await this.board.read();
    const { scenario } = board;
    const { asOf, firstDay: today, timeZone, policy, weather } = scenario;
    const from = since ?? instantOf(addDays(today, -1), packTime, timeZone);
    const away = await this.away.list(me);
    const projections = await this.projections.all(95);
    const aheadMs = (await this.clock.now()).getTime() - Date.now();
    const strips = stripsNow(scenario);
    const stripCodes = new Set(strips.map(({ place }) => place));
    return {
      asOf,
      today,
      since: from,
      handedOverAt: await this.handovers.lastClosedAt(),
      flights: toDecide(board),
      flightsStanding: scenario.flights.length,
      belowCritical: cachesBelowCritical(projections, scenario.offeredDays),
      slingRemedies: projections.slingRemedies,
      cases: (await this.cases.open()).map(decideCase),
      proposals: (await this.proposals.listOpen()).map(decideProposal(me)),
      raised: (await this.raised.list({ limit: 20, state: 'open' })).items.map(({ id, what, whatNext }) => ({
        id,
        what,
        whatNext,
      })),
      changed: await this.changedSince.list(new Date(from), aheadMs),
      notHeard: {
        ...cachesAndPhones(projections),
        crews: crewsNotHeard(board.flights, away, { asOf, timeZone }),
      },
      oneWindow: oneWindow(scenario),
      strips,
      away,
      overdueRule: policy.overdue ?? null,
      firstTakeOff: firstTakeOff(board),
      worstOdds:
        weather
          .filter(({ place }) => stripCodes.has(place))
          .toSorted((one, other) => other.morningCancel - one.morningCancel)[0] ?? null,
      fuel: projections.items.map(fuelAt).toSorted((one, other) => other.usableLitres - one.usableLitres),
      bases: scenario.bases.map(({ place, bulkLitres }) => ({ place, bulkLitres })),
    };
  }
}

/** Marked flights, and those that are offered; first due first. */
const toDecide = ({ flights, scenario }: Board): readonly DecideFlight[] => {
  const today = ifDeclinedToday(scenario);
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
      ifDeclined: today(flight.id).ifDeclined,
      protects: today(flight.id).protects,
    }))
    .toSorted(
      (one, other) => epochMinutes(one.by) - epochMinutes(other.by) || (one.departs < other.departs ? -1 : 1),
    );
};

const decideCase = (open: Awaited<ReturnType<CasePagesService['open']>>[number]): DecideCase => ({
  count: open.count,
  place: open.place,
  at: open.counted.happenedAt,
  countedBy: open.countedBy,
  countedLitres: Math.round(open.countedMillilitres / 1000),
  bookLitres: Math.round(open.bookMillilitres / 1000),
  toleranceLitres: Math.round(open.toleranceMillilitres / 1000),
  proposed: open.proposals.length,
});

const decideProposal =
  (me: Account) =>
  (open: Awaited<ReturnType<ProposalsService['listOpen']>>[number]): DecideProposal => ({
    id: open.id,
    subject: open.subject,
    act: open.act,
    proposedAt: open.proposedAt.toISOString(),
    agreedBy: open.agreedBy,
    mayAgree: mayBeOneOfTwo(me, open.act) && !open.agreed.includes(me.id),
  });

const oldHours = 7 * 24;

const cachesAndPhones = ({ items, notHeardFrom }: Projections): Omit<NotHeard, 'crews'> => ({
  caches: items
    .filter(({ stock: { lastCount } }) => lastCount === null || lastCount.ageHours > oldHours)
    .toSorted((one, other) => ageOf(other) - ageOf(one))
    .map(({ place, stock: { lastCount, why } }) => ({ place, countedAt: lastCount?.count.at ?? null, why })),
  phones: notHeardFrom.map(({ person, lastSeenAt }) => ({
    person,
    hoursSilent: Math.floor((Date.now() - lastSeenAt.getTime()) / 3_600_000),
  })),
});

const ageOf = ({ stock: { lastCount } }: Projections['items'][number]): number =>
  lastCount?.ageHours ?? Number.POSITIVE_INFINITY;

const fuelAt = ({ place, medevacReserveLitres, stock }: Projections['items'][number]): FuelAt => ({
  place,
  usableLitres: stock.usableLitres,
  reserveLitres: Math.min(medevacReserveLitres, stock.usableLitres),
  countedAt: stock.lastCount?.count.at ?? null,
  confidence: stock.confidence,
});

const yetToLeave: readonly Flight['state'][] = ['offered', 'approved', 'given', 'loaded'];

const firstTakeOff = ({ flights, scenario }: Board): MorningAnswer['firstTakeOff'] => {
  const first = flights
    .filter(({ date, state }) => date === scenario.firstDay && yetToLeave.includes(state))
    .toSorted((one, other) => (one.departs < other.departs ? -1 : 1))[0];
  return first === undefined ? null : { at: first.departs, flight: first.id, aircraft: first.aircraft };
};
