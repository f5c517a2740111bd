import {
  type CaseClosingRequest,
  caseClosingSchema,
  type HoldBody,
  type HoldQuery,
  holdBodySchema,
  holdQuerySchema,
} from '@drumline/contract';
import {
  cacheLevelsAnswer,
  closedCaseAnswer,
  holdCallsAnswer,
  holdEffectAnswer,
  latestReleaseAnswer,
  listedCaseAnswer,
  notHeardOfHoldAnswer,
  pageOf,
  setHoldAnswer,
  shownProposalAnswer,
  standingHoldAnswer,
  wholeList,
} from '@drumline/contract/answers';
import { Body, Controller, Get, Param, Put, Query } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import { Answered } from '../../http/answers.js';
import type { PageQuery } from '../../http/page.js';
import { Act, Me, OfTheOperator } from '../../people/access.js';
import type { Account } from '../../people/account.table.js';
import { CasePagesService } from '../cases/case-pages.service.js';
import { CasesService } from '../cases/cases.service.js';
import { StockPagesService } from '../figures/stock-pages.service.js';
import { MovementsService } from '../ledger/movements.service.js';
import { closedCasesQuery, movementId, drumNumber as nameText } from '../ledger/queries.js';
import { HoldCallsService } from './hold-calls.service.js';
import { HoldsService } from './holds.service.js';
import { ReleasesService } from './releases.service.js';
import { StandingHoldsService } from './standing-holds.service.js';

const id = { schema: movementId };
const called = { schema: nameText };

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
    private readonly calls: HoldCallsService,
    private readonly pages: StockPagesService,
    private readonly releases: ReleasesService,
  ) {}

  /** Holds that stand. */
  @Act('hold', 'view')
  @Answered(wholeList(standingHoldAnswer))
  @Get('holds')
  async standingHolds() {
    return { items: await this.standing.all(), next: null };
  }

  /** Asked before the hold is set. */
  @Act('hold', 'view')
  @Answered(holdEffectAnswer)
  @Get('holds/consequence')
  consequence(@Query({ schema: holdQuerySchema }) query: HoldQuery) {
    return this.holds.effect(query);
  }

  /** Who released it last, and whom to call back: asked where no hold of it stands. */
  @Act('hold', 'view')
  @Answered(latestReleaseAnswer)
  @Get('holds/latest-release')
  async latestRelease(@Query({ schema: holdQuerySchema }) query: HoldQuery) {
    return { release: await this.releases.latest(query) };
  }

  /** Sets the hold, and answers with what it takes out of use. Who may is asked by the service. */
  @OfTheOperator()
  @Answered(setHoldAnswer)
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

  /** Whose device has not asked since, and who has been called. */
  @Act('hold', 'view')
  @Answered(notHeardOfHoldAnswer)
  @Get('holds/:id/not-heard')
  async notHeard(@Param('id', id) movement: string) {
    const calls = await this.calls.of(movement);
    return { ...(await this.holds.notHeard(movement)), calls, next: null };
  }

  /** `called`: the place or the flight that has been told by radio. */
  @Act('hold', 'enter')
  @Answered(holdCallsAnswer)
  @Put('holds/:id/calls/:called')
  async call(@Param('id', id) movement: string, @Param('called', called) name: string, @Me() me: Account) {
    return { calls: await this.calls.record(movement, name, me) };
  }

  @OfTheOperator()
  @Answered(wholeList(listedCaseAnswer))
  @Get('cases')
  async open() {
    return { items: await this.casePages.open(), next: null };
  }

  @OfTheOperator()
  @Answered(pageOf(closedCaseAnswer))
  @Get('closed-cases')
  closed(@Query({ schema: closedCasesQuery }) query: PageQuery) {
    return this.casePages.closed(query);
  }

  /** Two people close a case: see /api/proposals for the second. `count` is the id of the count. */
  @OfTheOperator()
  @Answered(shownProposalAnswer)
  @Put('cases/:count/closing')
  close(
    @Param('count', id) count: string,
    @Body({ schema: caseClosingSchema }) request: CaseClosingRequest,
    @Me() me: Account,
  ) {
    return this.cases.propose(count, request, me);
  }

  @Act('cache levels in words', 'view')
  @Answered(cacheLevelsAnswer)
  @Get('cache-levels')
  async levels() {
    return { items: await this.pages.levels(), next: null };
  }
}
