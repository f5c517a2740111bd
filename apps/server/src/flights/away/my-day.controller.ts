import { myDayAnswer } from '@drumline/contract/answers';
import { Controller, Get } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import { Answered } from '../../http/answers.js';
import { Me, OfTheOperator } from '../../people/access.js';
import type { Account } from '../../people/account.table.js';
import { MyDayService } from './my-day.service.js';

@ApiTags('flights')
@Controller('api/my-day')
export class MyDayController {
  constructor(private readonly days: MyDayService) {}

  /** What the phone of a crew keeps for when it has no line: its own flights, whole. */
  @OfTheOperator()
  @Answered(myDayAnswer)
  @Get()
  get(@Me() me: Account) {
    return this.days.of(me);
  }
}
