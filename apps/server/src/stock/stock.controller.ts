import { knownAtSchema } from '@drumline/contract';
import {
  placeAsKnownAtAnswer,
  stockAnswer,
  stockAsKnownAtAnswer,
  stockAtPlaceAnswer,
  stockDifferenceAnswer,
  wholeList,
} from '@drumline/contract/answers';
import { Controller, Get, Header, HttpCode, Param, Post, Query } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import type { z } from 'zod';
import { Answered, AnsweredBy } from '../http/answers.js';
import { writtenOut } from '../http/page.js';
import { Problem } from '../http/problem.js';
import { Act, Me, OfTheOperator } from '../people/access.js';
import type { Account } from '../people/account.table.js';
import { StockCheckService } from './figures/stock-check.service.js';
import { StockPagesService } from './figures/stock-pages.service.js';
import { KnownAtService } from './ledger/known-at.service.js';
import { drumNumber as placeText } from './ledger/queries.js';

type KnownAt = z.output<typeof knownAtSchema>;
const place = { schema: placeText };

@ApiTags('stock')
@OfTheOperator()
@Controller('api/stock')
export class StockController {
  constructor(
    private readonly pages: StockPagesService,
    private readonly knownAt: KnownAtService,
    private readonly check: StockCheckService,
  ) {}

  @AnsweredBy({ 200: stockAnswer })
  @Get()
  @Header('Content-Type', writtenOut)
  all() {
    return this.pages.all();
  }

  @Answered(stockAsKnownAtAnswer)
  @Get('as-known-at')
  async asKnownAt(@Query({ schema: knownAtSchema }) { at }: KnownAt) {
    return { asOf: at, items: await this.knownAt.figures(at), next: null };
  }

  /** Whether what is kept is what the movements make. */
  @Act('audit', 'view')
  @Answered(wholeList(stockDifferenceAnswer))
  @Get('check')
  async differences() {
    return { items: await this.check.differences(), next: null };
  }

  @Act('import and export', 'decide')
  @Answered(wholeList(stockDifferenceAnswer))
  @Post('rebuild')
  @HttpCode(200)
  async rebuild(@Me() by: Account) {
    return { items: await this.check.rebuild(by), next: null };
  }

  @AnsweredBy({ 200: stockAtPlaceAnswer })
  @Get(':place')
  @Header('Content-Type', writtenOut)
  one(@Param('place', place) code: string) {
    return this.pages.one(code);
  }

  @Answered(placeAsKnownAtAnswer)
  @Get(':place/as-known-at')
  async oneAsKnownAt(@Param('place', place) code: string, @Query({ schema: knownAtSchema }) { at }: KnownAt) {
    const found = (await this.knownAt.figures(at)).find((each) => each.place === code);
    if (found !== undefined) return { asOf: at, ...found };
    throw new Problem('not-found', `Nothing was known of stock at ${code} at ${at}.`);
  }
}
