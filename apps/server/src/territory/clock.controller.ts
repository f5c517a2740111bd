import { clockAnswer } from '@drumline/contract/answers';
import { Controller, Get } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import { Answered } from '../http/answers.js';
import { OfTheOperator } from '../people/access.js';
import { ClockService } from './clock.service.js';
import { TerritoryService } from './territory.service.js';

@ApiTags('settings')
@Controller('api/clock')
export class ClockController {
  constructor(
    private readonly clock: ClockService,
    private readonly territory: TerritoryService,
  ) {}

  @OfTheOperator()
  @Answered(clockAnswer)
  @Get()
  async read() {
    const [settings, timeZone] = await Promise.all([this.clock.settings(), this.territory.timeZone()]);
    return { settings, timeZone };
  }
}
