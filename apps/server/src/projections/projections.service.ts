import type { ProjectionAnswer, ProjectionsAnswer } from '@drumline/contract';
import { type CacheOutlook, cacheOutlooks, leftToDraw, suggestedMinimums } from '@drumline/planning';
import { silentHours } from '@drumline/stock';
import { daysFrom } from '@drumline/units';
import { Injectable } from '@nestjs/common';
import { type Board, BoardService } from '../flights/board.service.js';
import { Problem } from '../http/problem.js';
import { SessionsService } from '../people/sessions.service.js';
import { inTheField } from '../stock/holds.service.js';
import { StockService } from '../stock/stock.service.js';
import { StockFiguresService } from '../stock/stock-figures.service.js';
import { cachePage } from './cache-page.js';
import { stillToCome } from './still-to-come.js';

/** Where the stock of the caches leads: without deliveries, with the approved flights, and with the offered ones. */
@Injectable()
export class ProjectionsService {
  constructor(
    private readonly board: BoardService,
    private readonly stock: StockService,
    private readonly figures: StockFiguresService,
    private readonly sessions: SessionsService,
  ) {}

  /** Every cache in the order of the territory. `serviceLevelPercent`: of the suggested minimum. */
  async all(serviceLevelPercent: number): Promise<ProjectionsAnswer> {
    const { board, outlooks } = await this.ahead();
    const { scenario } = board.facts;
    const suggestions = suggestedMinimums(scenario, serviceLevelPercent / 100);
    const { figures } = await this.figures.current();
    const notHeardFrom = await this.sessions.notSeenSince(silentSince(), inTheField);
    const { asOf, firstDay, days, policy } = scenario;
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
      });
    });
    return {
      asOf,
      firstDay,
      dates: daysFrom(firstDay, days),
      fillLitres: policy.drum.fillLitres,
      serviceLevelPercent,
      notHeardFrom,
      items,
      next: null,
    };
  }

  /** What lies ahead of every cache, and the board that it was read from. */
  async ahead(): Promise<{ readonly board: Board; readonly outlooks: readonly CacheOutlook[] }> {
    const board = await this.board.read();
    const { scenario, drawn } = board.facts;
    const named = board.loads.flatMap(({ drum }) => drum ?? []);
    const toCome = stillToCome(board, await this.stock.whereabouts(named));
    return { board, outlooks: cacheOutlooks(leftToDraw(scenario, drawn), toCome) };
  }

  async one(place: string, serviceLevelPercent: number): Promise<ProjectionAnswer> {
    const { items, next: _, ...rest } = await this.all(serviceLevelPercent);
    const found = items.find((each) => each.place === place);
    if (found !== undefined) return { ...rest, ...found };
    throw new Problem('not-found', `There is no cache at ${place}. See /api/projections.`);
  }
}

const silentSince = (): Date => new Date(Date.now() - silentHours * 3_600_000);
