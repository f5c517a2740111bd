import { type Closing, closingSchema } from '@drumline/contract';
import { awayFlightAnswer, shownFlightAnswer, wholeList } from '@drumline/contract/answers';
import { Body, Controller, Get, HttpCode, Param, Post, Res } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import type { Response } from 'express';
import { Answered } from '../../http/answers.js';
import { type Expected, ExpectedVersion } from '../../http/etag.js';
import { Act, Me } from '../../people/access.js';
import type { Account } from '../../people/account.table.js';
import { shownFlight } from '../flights.controller.js';
import { CloseFlightService } from '../office/close-flight.service.js';
import { flightId } from '../store/flight-query.js';
import { AwayFlightsService } from './away-flights.service.js';

/** Flights that have left. */
@ApiTags('flights')
@Controller('api/flights')
export class FlownFlightsController {
  constructor(
    private readonly away: AwayFlightsService,
    private readonly closings: CloseFlightService,
  ) {}

  /** Who is away and when each is expected back, and who is down and well today. */
  @Act('approve flight', 'view', { conditions: 'asked by the route' })
  @Answered(wholeList(awayFlightAnswer))
  @Get('away')
  async list(@Me() me: Account) {
    return { items: await this.away.list(me), next: null };
  }

  /** Its hours and costs are in. */
  @Act('close flight', 'decide')
  @Answered(shownFlightAnswer)
  @Post(':id/close')
  @HttpCode(200)
  async close(
    @Param('id', { schema: flightId }) id: string,
    @Body({ schema: closingSchema }) closing: Closing,
    @ExpectedVersion() expected: Expected,
    @Me() by: Account,
    @Res({ passthrough: true }) response: Response,
  ) {
    return shownFlight(response, await this.closings.close(id, closing, expected, by));
  }
}
