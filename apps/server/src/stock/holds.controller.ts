import {
  type CaseClosingRequest,
  caseClosingSchema,
  type HoldBody,
  type HoldQuery,
  holdBodySchema,
  holdQuerySchema,
} from '@drumline/contract';
import { Body, Controller, Get, Param, Put, Query } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import type { PageQuery } from '../http/page.js';
import { Act, Me, OfTheOperator } from '../people/access.js';
import type { Account } from '../people/account.table.js';
import { CasePagesService } from './case-pages.service.js';
import { CasesService } from './cases.service.js';
import { HoldsService } from './holds.service.js';
import { MovementsService } from './movements.service.js';
import { closedCasesQuery, movementId } from './queries.js';
import { StandingHoldsService } from './standing-holds.service.js';
import { StockPagesService } from './stock-pages.service.js';

const id = { schema: movementId };

/** Holds and difference cases: what takes fuel out of use until people have looked. */
@ApiTags('stock')
@Controller('api')
export class HoldsController {
  constructor(
    private readonly holds: HoldsService,
    private readonly movements: MovementsService,
    private readonly cases: CasesService,
    private readonly casePages: CasePagesService,
    private readonly standing: StandingHoldsService,
    private readonly pages: StockPagesService,
  ) {}

  /** Holds that stand. */
  @Act('hold', 'view')
  @Get('holds')
  async standingHolds() {
    return { items: await this.standing.all(), next: null };
  }

  /** Asked before the hold is set. */
  @Act('hold', 'view')
  @Get('holds/consequence')
  consequence(@Query({ schema: holdQuerySchema }) query: HoldQuery) {
    return this.holds.effect(query);
  }

  /** Sets the hold, and answers with what it takes out of use. Who may is asked by the service. */
  @OfTheOperator()
  @Put('holds/:id')
  async hold(
    @Param('id', id) movement: string,
    @Body({ schema: holdBodySchema }) body: HoldBody,
    @Me() me: Account,
  ) {
    const reported = await this.movements.report(movement, { kind: 'held', ...body }, me);
    const hold = { by: body.by ?? me.fullName, reason: body.reason, at: body.happenedAt };
    return { ...reported, consequence: await this.holds.effect(body.of, hold) };
  }

  @Act('hold', 'view')
  @Get('holds/:id/not-heard')
  async notHeard(@Param('id', id) movement: string) {
    return { ...(await this.holds.notHeard(movement)), next: null };
  }

  @OfTheOperator()
  @Get('cases')
  async open() {
    return { items: await this.casePages.open(), next: null };
  }

  @OfTheOperator()
  @Get('closed-cases')
  closed(@Query({ schema: closedCasesQuery }) query: PageQuery) {
    return this.casePages.closed(query);
  }

  /** Two people close a case: see /api/proposals for the second. `count` is the id of the count. */
  @OfTheOperator()
  @Put('cases/:count/closing')
  close(
    @Param('count', id) count: string,
    @Body({ schema: caseClosingSchema }) request: CaseClosingRequest,
    @Me() me: Account,
  ) {
    return this.cases.propose(count, request, me);
  }

  @Act('cache levels in words', 'view')
  @Get('cache-levels')
  async levels() {
    return { items: await this.pages.levels(), next: null };
  }
}
