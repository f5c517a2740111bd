import { type RaisedActRequest, raisedActSchema } from '@drumline/contract';
import {
  drumLifeAnswer,
  drumNowAnswer,
  pageOf,
  raisedActAnswer,
  raisedNowAnswer,
} from '@drumline/contract/answers';
import { Body, Controller, Get, Param, Put, Query } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import { Answered } from '../http/answers.js';
import { Act, Me, OfTheOperator } from '../people/access.js';
import type { Account } from '../people/account.table.js';
import { DrumsService } from './drums.service.js';
import {
  type DrumsQuery,
  drumNumber,
  drumsQuery,
  movementId,
  type RaisedQuery,
  raisedQuery,
} from './ledger/queries.js';
import { RaisedService } from './raised/raised.service.js';

@ApiTags('stock')
@OfTheOperator()
@Controller('api')
export class DrumsController {
  constructor(
    private readonly drums: DrumsService,
    private readonly raised: RaisedService,
  ) {}

  @Answered(pageOf(drumNowAnswer))
  @Get('drums')
  list(@Query({ schema: drumsQuery }) query: DrumsQuery) {
    return this.drums.list(query);
  }

  @Answered(drumLifeAnswer)
  @Get('drums/:number')
  get(@Param('number', { schema: drumNumber }) number: string) {
    return this.drums.get(number);
  }

  @Answered(pageOf(raisedNowAnswer))
  @Get('raised')
  toLookAt(@Query({ schema: raisedQuery }) query: RaisedQuery) {
    return this.raised.list(query);
  }

  /** Somebody has looked at it, or wants it looked at again. The id is the sender's. */
  @Act('look at raised', 'enter')
  @Answered(raisedActAnswer)
  @Put('raised-acts/:id')
  lookedAt(
    @Param('id', { schema: movementId }) id: string,
    @Body({ schema: raisedActSchema }) request: RaisedActRequest,
    @Me() me: Account,
  ) {
    return this.raised.act(id, request, me);
  }
}
