import type {
  ProjectionAnswer,
  ProjectionChange,
  ProjectionChangeAnswer,
  ProjectionsAnswer,
} from '@drumline/contract';
import {
  type CacheOutlook,
  cacheOutlooks,
  type FlightToCome,
  leftToDo,
  type Scenario,
  slingRemedies,
  standingState,
  stillToCome,
  suggestedMinimums,
} from '@drumline/planning';
import { silentHours } from '@drumline/stock';
import { daysFrom } from '@drumline/units';
import { Injectable } from '@nestjs/common';
import { ChangesService } from '../changes/changes.service.js';
import { type Board, BoardService } from '../flights/board/board.service.js';
import { KeptAnswers } from '../http/kept-answers.js';
import { Problem } from '../http/problem.js';
import { SessionsService } from '../people/sessions.service.js';
import { StandingPlanService } from '../plans/standing-plan.service.js';
import { DoneService } from '../stock/figures/done.service.js';
import { StockFiguresService } from '../stock/figures/stock-figures.service.js';
import { inTheField } from '../stock/holds/holds.service.js';
import { StockService } from '../stock/stock.service.js';
import { ClockService } from '../territory/clock.service.js';
import { TerritoryService } from '../territory/territory.service.js';
import { cachePage } from './cache-page.js';
import { changedCaches, changedProgrammes } from './changed-caches.js';
import { withKeptSlings } from './kept-remedies.js';

/** Where the stock of the caches leads: without deliveries, with the approved flights, and with the offered ones. */
@Injectable()
export class ProjectionsService {
  /** By service level. */
  private readonly kept = new KeptAnswers<string, ProjectionsAnswer>({
    mayServe: (made, now) => made === now,
    most: 50,
  });

  constructor(
    private readonly board: BoardService,
    private readonly stock: StockService,
    private readonly figures: StockFiguresService,
    private readonly done: DoneService,
    private readonly sessions: SessionsService,
    private readonly changes: ChangesService,
    private readonly clock: ClockService,
    private readonly territory: TerritoryService,
    private readonly plans: StandingPlanService,
  ) {}

  /**
   * Every cache in the order of the territory. `serviceLevelPercent`: of the suggested minimum. Made again when stock,
   * flights or territory have changed, and every minute: ages are to the minute. Those who ask meanwhile share it.
   */
  async all(serviceLevelPercent: number): Promise<ProjectionsAnswer> {
    const level = String(serviceLevelPercent);
    const make = () => this.make(serviceLevelPercent);
    return (await this.kept.read(level, await this.madeFrom(), make)).answer;
  }

  /** The caches that one change of the territory would touch, before and after. */
  async consequence(change: ProjectionChange): Promise<ProjectionChangeAnswer> {
    const { board, outlooks, toCome } = await this.ahead();
    const { scenario, done } = board.facts;
    const changed = await this.territory.changed(scenario, change);
    const left = leftToDo(changed, done);
    const items = changedCaches(
      { scenario, outlooks },
      { scenario: changed, outlooks: cacheOutlooks(left, toCome) },
    );
    const touched = new Set(items.map(({ place }) => place));
    const remedies = await this.remedies(left, toCome);
    return {
      firstDay: scenario.firstDay,
      dates: daysFrom(scenario.firstDay, scenario.days),
      items,
      programmes: changedProgrammes(scenario, changed, costed(board)),
      slingRemedies: remedies.filter(({ place }) => touched.has(place)),
    };
  }

  private async madeFrom(): Promise<string> {
    const { territory, stock, flights } = await this.changes.versions();
    const minute = (await this.clock.now()).toISOString().slice(0, 16);
    return [territory, stock, flights, minute].join(' ');
  }

  private async make(serviceLevelPercent: number): Promise<ProjectionsAnswer> {
    const { board, outlooks, left, toCome } = await this.ahead();
    const { scenario } = board.facts;
    const suggestions = suggestedMinimums(scenario, serviceLevelPercent / 100);
    const { figures } = await this.figures.current();
    const notHeardFrom = await this.sessions.notSeenSince(silentSince(), inTheField);
    const { asOf, firstDay, days, policy } = scenario;
    const notReported = await this.done.notReported(scenario);
    const items = scenario.caches.flatMap((cache, index) => {
      // A cache that was taken out since the board was read has no figures any more.
      const at = figures.get(cache.place);
      if (at === undefined || at.cache === null) return [];
      return cachePage({
        cache,
        outlook: outlooks[index]!,
        figures: { ...at, cache: at.cache },
        suggested: suggestions[index]!,
        asOf,
        silentPhones: notHeardFrom.length,
        notReported: notReported.filter(({ place }) => place === cache.place),
      });
    });
    return {
      asOf,
      firstDay,
      dates: daysFrom(firstDay, days),
      fillLitres: policy.drum.fillLitres,
      serviceLevelPercent,
      laterIdeas: await this.plans.laterIdeas(firstDay),
      notHeardFrom: notHeardFrom.map(({ lastSeenAt, ...who }) => ({
        ...who,
        lastSeenAt: lastSeenAt.toISOString(),
      })),
      items,
      slingRemedies: await this.remedies(left, toCome),
      next: null,
    };
  }

  /** What lies ahead of every cache, and the board that it was read from. */
  async ahead(): Promise<Ahead> {
    const board = await this.board.read();
    const { scenario, done } = board.facts;
    const named = board.loads.flatMap(({ drum }) => drum ?? []);
    const toCome = stillToCome(board.flights, board.loads, await this.stock.whereabouts(named));
    const left = leftToDo(scenario, done);
    return { board, left, toCome, outlooks: cacheOutlooks(left, toCome) };
  }

  private async remedies(left: Scenario, toCome: readonly FlightToCome[]) {
    const found = slingRemedies(left, toCome);
    return found.length === 0 ? [] : withKeptSlings(found, await this.territory.all('slings'));
  }

  async one(place: string, serviceLevelPercent: number): Promise<ProjectionAnswer> {
    const { items, slingRemedies: _remedies, next: _, ...rest } = await this.all(serviceLevelPercent);
    const found = items.find((each) => each.place === place);
    if (found !== undefined) return { ...rest, ...found };
    throw new Problem('not-found', `There is no cache at ${place}. See /api/projections.`);
  }
}

/** Flights that stand, with what each costs as it is planned. */
const costed = ({ flights }: Board) =>
  flights
    .filter(({ state }) => standingState(state) !== null)
    .map(({ stops, planned }) => ({ stops, cost: planned.cost }));

interface Ahead {
  readonly board: Board;
  /** The territory with its programme less what has been done of it. */
  readonly left: Scenario;
  readonly outlooks: readonly CacheOutlook[];
  readonly toCome: readonly FlightToCome[];
}

const silentSince = (): Date => new Date(Date.now() - silentHours * 3_600_000);
