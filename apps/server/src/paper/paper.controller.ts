import { Controller, Get, Param, Query, StreamableFile } from '@nestjs/common';
import { ApiProduces, ApiTags } from '@nestjs/swagger';
import { z } from 'zod';
import { AnsweredBy } from '../http/answers.js';
import { Act, Me, OfTheOperator } from '../people/access.js';
import type { Account } from '../people/account.table.js';
import { CacheBoardsService } from './cache-board/cache-boards.service.js';
import { DayPacksService } from './day-pack/day-packs.service.js';
import { paperSizes } from './pdf/paper-size.js';
import type { Print } from './prints.service.js';
import { SheetPrintsService } from './sheet/sheet-prints.service.js';
import { SlipNumbersService } from './slips/slip-numbers.service.js';

const name = z
  .string()
  .regex(/^[^\p{Cc}\p{Cs}]{1,100}$/u, 'a name is 1 to 100 characters that can be written down');

const printQuery = z.strictObject({
  paper: z.enum(paperSizes).default('a4').meta({ description: 'Size of the paper in the printer' }),
});
type PrintQuery = z.output<typeof printQuery>;

const dayPackQuery = printQuery.extend({
  date: z.iso
    .date('a day is written YYYY-MM-DD')
    .regex(/^(19|20|21)/, 'a day is of the years 1900 to 2199')
    .optional()
    .meta({ description: 'Absent: today before noon, else tomorrow' }),
});

const slipQuery = printQuery.extend({ kind: z.enum(['count', 'draw']) });

/** What is printed, as PDF. Each print is in the audit: who, which version, when. */
@ApiTags('paper')
@ApiProduces('application/pdf')
@Controller('api')
export class PaperController {
  constructor(
    private readonly sheets: SheetPrintsService,
    private readonly packs: DayPacksService,
    private readonly slips: SlipNumbersService,
    private readonly boards: CacheBoardsService,
  ) {}

  /** The load sheet of a flight; a second stop makes a second page. */
  @Act('approve flight', 'view', { conditions: 'asked by the route' })
  @AnsweredBy({ 200: 'application/pdf' })
  @Get('flights/:id/sheet.pdf')
  async sheet(
    @Param('id', { schema: name }) id: string,
    @Query({ schema: printQuery }) { paper }: PrintQuery,
    @Me() me: Account,
  ) {
    return asFile(await this.sheets.print(id, paper, me));
  }

  /** Cover, every load sheet of the day, radio script, slips, a blank load sheet. */
  @Act('approve flight', 'view')
  @AnsweredBy({ 200: 'application/pdf' })
  @Get('day-pack.pdf')
  async dayPack(
    @Query({ schema: dayPackQuery }) { date, paper }: z.output<typeof dayPackQuery>,
    @Me() me: Account,
  ) {
    return asFile(await this.packs.print(date, paper, me));
  }

  /** Four slips with numbers that were never given before. */
  @OfTheOperator()
  @AnsweredBy({ 200: 'application/pdf' })
  @Get('slips.pdf')
  async slipPage(
    @Query({ schema: slipQuery }) { kind, paper }: z.output<typeof slipQuery>,
    @Me() me: Account,
  ) {
    return asFile(await this.slips.print(kind, paper, me));
  }

  @OfTheOperator()
  @AnsweredBy({ 200: 'application/pdf' })
  @Get('caches/:place/board.pdf')
  async board(
    @Param('place', { schema: name }) place: string,
    @Query({ schema: printQuery }) { paper }: PrintQuery,
    @Me() me: Account,
  ) {
    return asFile(await this.boards.print(place, paper, me));
  }
}

const asFile = ({ pdf, fileName }: Print): StreamableFile =>
  new StreamableFile(pdf, {
    type: 'application/pdf',
    disposition: `inline; filename="${fileName.replace(/[^\w.-]/g, '_')}"`,
    length: pdf.length,
  });
