import { myPlacesAnswer } from '@drumline/contract/answers';
import { Controller, Get } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import { Answered } from '../http/answers.js';
import { Me, OfTheOperator } from '../people/access.js';
import type { Account } from '../people/account.table.js';
import { MyPlacesService } from './my-places.service.js';

@ApiTags('projections')
@Controller('api/my-places')
export class MyPlacesController {
  constructor(private readonly places: MyPlacesService) {}

  /** What the phone of a helicopter crew keeps for when it has no line: the caches, drum by drum, and its own tasks. */
  @OfTheOperator()
  @Answered(myPlacesAnswer)
  @Get()
  get(@Me() me: Account) {
    return this.places.of(me);
  }
}
