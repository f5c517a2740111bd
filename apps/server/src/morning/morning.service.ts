import { cachesBelowCritical, cachesBelowMinimum, oneWindow } from '@drumline/planning';
import { type BaseStock, freshCountHours } from '@drumline/stock';
import { addDays, type IsoInstant, instantOf } from '@drumline/units';
import { Injectable } from '@nestjs/common';
import { DataSource } from 'typeorm';
import { ChangesService } from '../changes/changes.service.js';
import { AwayFlightsService } from '../flights/away/away-flights.service.js';
import { type Board, BoardService } from '../flights/board/board.service.js';
import { FlightStoreService } from '../flights/store/flight-store.service.js';
import { HandoversService } from '../handover/handovers.service.js';
import { KeptAnswers } from '../http/kept-answers.js';
import type { Account } from '../people/account.table.js';
import { ProjectionsService } from '../projections/projections.service.js';
import { ProposalsService } from '../proposals/proposals.service.js';
import { CasePagesService } from '../stock/cases/case-pages.service.js';
import type { PlaceFigures } from '../stock/figures/place-figures.js';
import { StockFiguresService } from '../stock/figures/stock-figures.service.js';
import { OpenCallsService } from '../stock/holds/open-calls.service.js';
import { RaisedService } from '../stock/raised/raised.service.js';
import { ClockService } from '../territory/clock.service.js';
import { ChangedSinceService } from './changed-since.service.js';
import { crewsNotHeard } from './crews-not-heard.js';
import { packTime } from './decide-by.js';
import { firstTakeOff } from './first-take-off.js';
import type { FuelAt, FuelAtBase, MorningAnswer, NotHeard, StripNow } from './morning-answer.js';
import { stripsNow } from './strips-now.js';
import { bookedToDecide, decideCase, decideProposal, didTheyFly, fillsShort, toDecide } from './to-decide.js';

type Projections = Awaited<ReturnType<ProjectionsService['all']>>;

type Shared = Omit<MorningAnswer, 'proposals' | 'handover' | 'handedOverAt'>;

/** The dispatcher's picture in one read, so that its parts agree. */
@Injectable()
export class MorningService {
  /** By the moment since when changes are told. */
  private readonly kept = new KeptAnswers<string, Shared>({
    mayServe: (made, now) => made === now,
    most: 50,
  });

  constructor(
    private readonly database: DataSource,
    private readonly board: BoardService,
    private readonly store: FlightStoreService,
    private readonly away: AwayFlightsService,
    private readonly projections: ProjectionsService,
    private readonly figures: StockFiguresService,
    private readonly cases: CasePagesService,
    private readonly proposals: ProposalsService,
    private readonly raised: RaisedService,
    private readonly openCalls: OpenCallsService,
    private readonly changedSince: ChangedSinceService,
    private readonly handovers: HandoversService,
    private readonly changes: ChangesService,
    private readonly clock: ClockService,
  ) {}

  /**
   * `since` absent: 17:00 of the day before. Made again when anything that a page watches has changed, and every minute, as
   * time alone makes a flight overdue. What depends on the person who asks, and the handover, is read for each.
   */
  async read(me: Account, since?: IsoInstant): Promise<MorningAnswer> {
    const now = await this.clock.now();
    const { handovers: _, ...versions } = await this.changes.versions();
    const madeFrom = JSON.stringify([versions, now.toISOString().slice(0, 16)]);
    const { answer } = await this.kept.read(since ?? '', madeFrom, () => this.make(me, since));
    return {
      ...answer,
      handedOverAt: await this.handovers.lastClosedAt(),
      handover: await this.handovers.waiting(),
      proposals: await this.openProposals(me),
    };
  }

  private async openProposals(me: Account): Promise<MorningAnswer['proposals']> {
    const open = await this.proposals.listOpen();
    const proposedAt = await this.clock.saidAt(open.map((each) => each.proposedAt));
    return open.map((each, at) => decideProposal(me, { ...each, proposedAt: proposedAt[at]! }));
  }

  /** Whoever may read the morning sees every flight. */
  private async make(me: Account, since?: IsoInstant): Promise<Shared> {
    const board = await this.board.read();
    const { scenario } = board;
    const { asOf, firstDay: today, timeZone, policy } = scenario;
    const from = since ?? instantOf(addDays(today, -1), packTime, timeZone);
    const unfinished = await this.store.unfinishedBefore(this.database.manager, today);
    const away = await this.away.list(me);
    const projections = await this.projections.all(95);
    const strips = stripsNow(scenario);
    const raised = await this.raised.firstOpen(20);
    const levels = projections.items.map(levelsOffered);
    const ahead = { dates: projections.dates, offeredDays: scenario.offeredDays };
    return {
      asOf,
      today,
      since: from,
      flights: toDecide(board),
      booked: bookedToDecide(board),
      didTheyFly: didTheyFly(unfinished, scenario),
      fillsShort: fillsShort(board),
      flightsStanding: scenario.flights.length,
      belowCritical: cachesBelowCritical(levels, ahead),
      belowMinimum: cachesBelowMinimum(levels, ahead),
      slingRemedies: projections.slingRemedies,
      openCalls: await this.openCalls.all(),
      cases: (await this.cases.open()).map(decideCase),
      raised: raised.items.map(({ id, mayHurt, place, what, whatNext }) => ({
        id,
        mayHurt,
        place,
        what,
        whatNext,
      })),
      moreRaised: raised.more,
      changed: await this.changedSince.list(new Date(from), scenario),
      notHeard: {
        ...cachesAndPhones(projections),
        crews: crewsNotHeard([...unfinished, ...board.flights], away, { asOf, timeZone }),
      },
      oneWindow: oneWindow(scenario),
      strips,
      away,
      overdueRule: policy.overdue ?? null,
      firstTakeOff: firstTakeOff(board),
      worstOdds: worstOdds(board, strips),
      fuel: projections.items.map(fuelAt).toSorted((one, other) => other.usableLitres - one.usableLitres),
      bases: scenario.bases.map(fuelAtBase((await this.figures.current()).figures)),
    };
  }
}

const levelsOffered = ({
  place,
  minimumLitres,
  criticalLitres,
  projections: { offered },
}: Projections['items'][number]) => ({
  place,
  minimumLitres,
  criticalLitres,
  ...offered,
});

const worstOdds = ({ scenario }: Board, strips: readonly StripNow[]): MorningAnswer['worstOdds'] => {
  const codes = new Set(strips.map(({ place }) => place));
  const odds = scenario.weather.filter(({ place }) => codes.has(place));
  return odds.toSorted((one, other) => other.morningCancel - one.morningCancel)[0] ?? null;
};

const cachesAndPhones = ({ items, notHeardFrom }: Projections): Omit<NotHeard, 'crews'> => ({
  draws: items.flatMap(({ notReported }) => notReported),
  caches: items
    .filter(({ stock: { lastCount } }) => lastCount === null || lastCount.ageHours > freshCountHours)
    .toSorted((one, other) => ageOf(other) - ageOf(one))
    .map(({ place, stock: { lastCount, why } }) => ({ place, countedAt: lastCount?.count.at ?? null, why })),
  phones: notHeardFrom.map(({ person, lastSeenAt }) => ({
    person,
    hoursSilent: Math.floor((Date.now() - Date.parse(lastSeenAt)) / 3_600_000),
  })),
});

const ageOf = ({ stock: { lastCount } }: Projections['items'][number]): number =>
  lastCount?.ageHours ?? Number.POSITIVE_INFINITY;

const fuelAtBase =
  (figures: ReadonlyMap<string, PlaceFigures>) =>
  ({ place, bulkLitres }: BaseStock): FuelAtBase => {
    const at = figures.get(place);
    const { sealedHeldDrums = 0, sealedPastRetestDrums = 0 } = at ?? {};
    return {
      place,
      usableLitres: at?.usableLitres ?? 0,
      usableDrums: (at?.sealedDrums ?? 0) - sealedHeldDrums - sealedPastRetestDrums,
      heldDrums: sealedHeldDrums,
      pastRetestDrums: sealedPastRetestDrums,
      bulkLitres,
    };
  };

const fuelAt = ({
  place,
  medevacReserveLitres,
  stock,
  notReported,
}: Projections['items'][number]): FuelAt => ({
  place,
  usableLitres: stock.usableLitres,
  bookLitres: stock.bookLitres,
  heldLitres: stock.heldLitres,
  pastRetestLitres: stock.pastRetestLitres,
  reserveLitres: Math.max(0, Math.min(medevacReserveLitres, stock.usableLitres)),
  reserveSetLitres: medevacReserveLitres,
  notReportedLitres: notReported.reduce((sum, { litres }) => sum + litres, 0),
  countedAt: stock.lastCount?.count.at ?? null,
  confidence: stock.confidence,
});
