import { type LetGo, letGoSchema, optionalReasonSchema } from '@drumline/contract';
import { flightAnswer, shownFlightAnswer, wholeList } from '@drumline/contract/answers';
import { Body, Controller, Delete, HttpCode, Param, Post, Put, Res } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import type { Response } from 'express';
import { z } from 'zod';
import { Answered } from '../../http/answers.js';
import { type Expected, ExpectedVersion } from '../../http/etag.js';
import { Act, Me } from '../../people/access.js';
import type { Account } from '../../people/account.table.js';
import { shownFlight } from '../flights.controller.js';
import { flightId } from '../store/flight-query.js';
import { FlightActsService } from './flight-acts.service.js';

/** What a re-plan may move and what it may not. */
@ApiTags('flights')
@Controller('api/flights')
export class ReleaseFlightsController {
  constructor(private readonly acts: FlightActsService) {}

  /** Approved flights that a re-plan may change again: several in one named action, all or none. */
  @Act('let go flight', 'decide')
  @Answered(wholeList(flightAnswer))
  @Post('let-go')
  @HttpCode(200)
  async letGo(@Body({ schema: letGoSchema }) { flights, reason }: LetGo, @Me() by: Account) {
    const moved = await this.acts.letGo(flights, reason, by);
    return { items: moved.map(({ flight }) => flight), next: null };
  }

  @Act('approve flight', 'decide')
  @Answered(shownFlightAnswer)
  @Put(':id/hold')
  async hold(
    @Param('id', { schema: flightId }) id: string,
    @Body({ schema: optionalReasonSchema }) body: z.output<typeof optionalReasonSchema>,
    @ExpectedVersion() expected: Expected,
    @Me() by: Account,
    @Res({ passthrough: true }) response: Response,
  ) {
    return shownFlight(response, await this.acts.hold({ id, expected, ...body }, true, by));
  }

  @Act('approve flight', 'decide')
  @Answered(shownFlightAnswer)
  @Delete(':id/hold')
  @HttpCode(200)
  async free(
    @Param('id', { schema: flightId }) id: string,
    @ExpectedVersion() expected: Expected,
    @Me() by: Account,
    @Res({ passthrough: true }) response: Response,
  ) {
    return shownFlight(response, await this.acts.hold({ id, expected }, false, by));
  }
}
