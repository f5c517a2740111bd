import { clockAnswer } from '@drumline/contract/answers';
import { Controller, Get } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import { Answered } from '../http/answers.js';
import { OfTheOperator } from '../people/access.js';
import { ClockService } from './clock.service.js';

@ApiTags('settings')
@Controller('api/clock')
export class ClockController {
  constructor(private readonly clock: ClockService) {}

  @OfTheOperator()
  @Answered(clockAnswer)
  @Get()
  async read() {
    return { settings: await this.clock.settings() };
  }
}
