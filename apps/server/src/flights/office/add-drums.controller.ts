import { type AddDrums, addDrumsSchema, type BookedLoadQuery, bookedLoadQuery } from '@drumline/contract';
import { bookedLoadAnswer, shownFlightAnswer } from '@drumline/contract/answers';
import { Body, Controller, Get, HttpCode, Param, Post, Query, Res } from '@nestjs/common';
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
@Controller('api/booked-flights')
export class AddDrumsController {
  constructor(private readonly added: AddDrumsService) {}

  /** What it carries, which drums it could take, and what follows from those asked; nothing is changed. */
  @Act('programme', 'view')
  @Answered(bookedLoadAnswer)
  @Get(':id/load')
  load(
    @Param('id', { schema: flightId }) id: string,
    @Query({ schema: bookedLoadQuery }) asked: BookedLoadQuery,
  ) {
    return this.added.look(id, asked);
  }

  @Act('approve flight', 'decide')
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
