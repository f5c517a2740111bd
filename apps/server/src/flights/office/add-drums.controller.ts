import { type AddDrums, addDrumsSchema } from '@drumline/contract';
import { addDrumsAnswer, shownFlightAnswer } from '@drumline/contract/answers';
import { Body, Controller, HttpCode, Param, Post, Res } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import type { Response } from 'express';
import { Answered } from '../../http/answers.js';
import { Act, Me } from '../../people/access.js';
import type { Account } from '../../people/account.table.js';
import { shownFlight } from '../flights.controller.js';
import { flightId } from '../store/flight-query.js';
import { AddDrumsService } from './add-drums.service.js';

/** Drums for a flight that flies anyway. */
@ApiTags('booked-flights')
@Act('approve flight', 'decide')
@Controller('api/booked-flights')
export class AddDrumsController {
  constructor(private readonly added: AddDrumsService) {}

  /** What stands in the way, and which legs could take drums; nothing is changed. */
  @Answered(addDrumsAnswer)
  @Post(':id/drums/check')
  @HttpCode(200)
  check(@Param('id', { schema: flightId }) id: string, @Body({ schema: addDrumsSchema }) wanted: AddDrums) {
    return this.added.check(id, wanted);
  }

  @Answered(shownFlightAnswer)
  @Post(':id/drums')
  @HttpCode(200)
  async add(
    @Param('id', { schema: flightId }) id: string,
    @Body({ schema: addDrumsSchema }) wanted: AddDrums,
    @Me() by: Account,
    @Res({ passthrough: true }) response: Response,
  ) {
    return shownFlight(response, await this.added.add(id, wanted, by));
  }
}
