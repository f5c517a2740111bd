import { openingStock } from '@drumline/stock';
import { type IsoInstant, type Litres, localDate, print } from '@drumline/units';
import { Injectable } from '@nestjs/common';
import { BoardService } from '../../flights/board/board.service.js';
import { Problem } from '../../http/problem.js';
import type { Account } from '../../people/account.table.js';
import { StockFiguresService } from '../../stock/figures/stock-figures.service.js';
import { levelWord } from '../day-pack/level-word.js';
import type { PaperSize } from '../pdf/paper-size.js';
import { dayOfYear } from '../pdf/print-stamp.js';
import { type Print, PrintsService } from '../prints.service.js';
import { type CacheBoard, cacheBoardPage } from './cache-board.js';

/** The board of a cache, to be pinned up where the drums stand. */
@Injectable()
export class CacheBoardsService {
  constructor(
    private readonly board: BoardService,
    private readonly figures: StockFiguresService,
    private readonly prints: PrintsService,
  ) {}

  async print(place: string, paper: PaperSize, me: Account): Promise<Print> {
    const board = await this.of(place);
    const { timeZone } = await this.figures.scenario();
    const stamp = await this.prints.stamp(timeZone, me);
    return this.prints.make(
      {
        title: `Cache board ${place}`,
        paper,
        pages: [cacheBoardPage(board, stamp)],
        fileName: `board-${place}.pdf`,
      },
      { subject: `cache board ${place}`, detail: {} },
      me,
    );
  }

  private async of(code: string): Promise<CacheBoard> {
    const { facts } = await this.board.read();
    const { scenario } = facts;
    const { figures } = await this.figures.current();
    const place = scenario.places.find((each) => each.code === code);
    const at = figures.get(code);
    if (place === undefined || at === undefined)
      throw new Problem(
        'not-found',
        `There is no cache at ${code} and nothing stands there. See /api/stock.`,
      );
    const { drums, batches, counts, asOf, firstDay, policy } = scenario;
    const picture = { drums, batches, counts, asOf, countTolerance: policy.countTolerance };
    const stock = openingStock([code], picture, firstDay).get(code)!;
    const there = stock.drums;
    const isOver = ({ retestDue }: (typeof there)[number]) => retestDue !== null && retestDue < firstDay;
    const { cache } = at;
    return {
      place: code,
      name: place.name,
      radioTime: place.radioTime ?? null,
      inOrder: there.filter((drum) => !drum.held && !isOver(drum)),
      held: there.filter((drum) => drum.held || isOver(drum)).map(({ number }) => number),
      usableLitres: at.usableLitres,
      bookLitres: at.bookLitres,
      drums: at.sealedDrums + at.partUsedDrums,
      lastCount: stock.lastCount === null ? null : countWords(stock.lastCount.count, scenario.timeZone),
      empties: at.emptyDrums,
      levels:
        cache === null
          ? null
          : {
              word: levelWord(at),
              minimumLitres: cache.minimumLitres,
              criticalLitres: cache.criticalLitres,
              reserveLitres: cache.medevacReserveLitres,
            },
    };
  }
}

const countWords = ({ litres, at }: { readonly litres: Litres; readonly at: IsoInstant }, timeZone: string) =>
  `${print(litres, 'L')} on ${dayOfYear(localDate(at, timeZone))}`;
