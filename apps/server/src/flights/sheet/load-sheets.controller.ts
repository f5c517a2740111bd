import { type Positions, positionsSchema, type TypedTotal, typedTotalSchema } from '@drumline/contract';
import {
  checkCodeAnswer,
  loadAnswer,
  loadStandingAnswer,
  shownFlightAnswer,
  totalsAnswer,
} from '@drumline/contract/answers';
import { Body, Controller, Get, HttpCode, Param, Post, Put, Res } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import type { Response } from 'express';
import { Answered } from '../../http/answers.js';
import { type Expected, ExpectedVersion } from '../../http/etag.js';
import { Act, Me } from '../../people/access.js';
import type { Account } from '../../people/account.table.js';
import { shownFlight } from '../flights.controller.js';
import { flightId } from '../store/flight-query.js';
import { LoadSheetsService } from './load-sheets.service.js';
import { PositionsService } from './positions.service.js';

/** Load, positions and totals of a flight. */
@ApiTags('flights')
@Controller('api/flights')
export class LoadSheetsController {
  constructor(
    private readonly sheets: LoadSheetsService,
    private readonly positions: PositionsService,
  ) {}

  /** As it is loaded, without the totals of load and take-off weight. */
  @Act('approve flight', 'view', { conditions: 'asked by the route' })
  @Answered(loadAnswer)
  @Get(':id/sheet')
  sheet(@Param('id', { schema: flightId }) id: string, @Me() me: Account) {
    return this.sheets.answer(id, me);
  }

  /** As it stands in the corner of base's own sheet, also after its day. */
  @Act('approve flight', 'view', { conditions: 'asked by the route' })
  @Answered(checkCodeAnswer)
  @Get(':id/check-code')
  checkCode(@Param('id', { schema: flightId }) id: string, @Me() me: Account) {
    return this.sheets.checkCode(id, me);
  }

  /** The sheet's total beside the one that somebody has added without sight of it. */
  @Act('approve flight', 'view', { conditions: 'asked by the route' })
  @Answered(totalsAnswer)
  @Post(':id/totals')
  @HttpCode(200)
  totals(
    @Param('id', { schema: flightId }) id: string,
    @Body({ schema: typedTotalSchema }) typed: TypedTotal,
    @Me() me: Account,
  ) {
    return this.sheets.compare(id, typed, me);
  }

  /** Whether the drums may stand so; nothing is changed. */
  @Act('approve flight', 'view', { conditions: 'asked by the route' })
  @Answered(loadStandingAnswer)
  @Post(':id/load/check')
  @HttpCode(200)
  check(
    @Param('id', { schema: flightId }) id: string,
    @Body({ schema: positionsSchema }) positions: Positions,
    @Me() me: Account,
  ) {
    return this.sheets.check(id, positions, me);
  }

  @Act('load', 'enter', { conditions: 'asked by the route' })
  @Answered(shownFlightAnswer)
  @Put(':id/positions')
  async put(
    @Param('id', { schema: flightId }) id: string,
    @Body({ schema: positionsSchema }) positions: Positions,
    @ExpectedVersion() expected: Expected,
    @Me() by: Account,
    @Res({ passthrough: true }) response: Response,
  ) {
    return shownFlight(response, await this.positions.set(id, positions, expected, by));
  }
}
