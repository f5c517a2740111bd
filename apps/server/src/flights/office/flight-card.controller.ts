import { cardAnswer } from '@drumline/contract/answers';
import { Controller, Get, Param } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import { Answered } from '../../http/answers.js';
import { Act, Me } from '../../people/access.js';
import type { Account } from '../../people/account.table.js';
import { flightId } from '../store/flight-query.js';
import { FlightCardService } from './flight-card.service.js';

@ApiTags('flights')
@Controller('api/flights')
export class FlightCardController {
  constructor(private readonly cards: FlightCardService) {}

  /** For, heard, load, limits, crew, if declined, cost: by the facts of today. */
  @Act('approve flight', 'view', { conditions: 'asked by the route' })
  @Answered(cardAnswer)
  @Get(':id/card')
  read(@Param('id', { schema: flightId }) id: string, @Me() me: Account) {
    return this.cards.read(id, me);
  }
}
