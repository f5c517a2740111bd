import {
  type MovementBody,
  type MovementOutbox,
  movementBodySchema,
  movementOutboxSchema,
} from '@drumline/contract';
import {
  enteredMovementAnswer,
  outboxAnswersAnswer,
  pageOf,
  reportedAnswer,
} from '@drumline/contract/answers';
import { Body, Controller, Get, HttpCode, Param, Post, Put, Query } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import { Answered } from '../../http/answers.js';
import { Me, OfTheOperator } from '../../people/access.js';
import type { Account } from '../../people/account.table.js';
import { LedgerPagesService } from './ledger-pages.service.js';
import { MovementsService } from './movements.service.js';
import { type MovementsQuery, movementId, movementsQuery } from './queries.js';

const id = { schema: movementId };

/** Who may report what is asked by the service: it depends on the kind of movement. */
@ApiTags('movements')
@OfTheOperator()
@Controller('api/movements')
export class MovementsController {
  constructor(
    private readonly movements: MovementsService,
    private readonly pages: LedgerPagesService,
  ) {}

  @Answered(pageOf(enteredMovementAnswer))
  @Get()
  list(@Query({ schema: movementsQuery }) query: MovementsQuery) {
    return this.pages.movements(query);
  }

  @Answered(enteredMovementAnswer)
  @Get(':id')
  get(@Param('id', id) movement: string) {
    return this.pages.movement(movement);
  }

  @Answered(reportedAnswer)
  @Put(':id')
  put(
    @Param('id', id) movement: string,
    @Body({ schema: movementBodySchema }) body: MovementBody,
    @Me() me: Account,
  ) {
    return this.movements.report(movement, body, me);
  }

  @Answered(outboxAnswersAnswer)
  @Post()
  @HttpCode(200)
  async send(@Body({ schema: movementOutboxSchema }) outbox: MovementOutbox, @Me() me: Account) {
    return { items: await this.movements.reportAll(outbox, me), next: null };
  }
}
