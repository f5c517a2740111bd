import { scenarioSchema } from '@drumline/contract';
import { demoStateAnswer, importedAnswer } from '@drumline/contract/answers';
import { Body, Controller, Get, Header, HttpCode, Post } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import { z } from 'zod';
import { Answered, AnsweredBy } from '../http/answers.js';
import { Act, Me, OfTheOperator } from '../people/access.js';
import type { Account } from '../people/account.table.js';
import { DemoService } from './demo.service.js';

const removeSchema = z.strictObject({
  word: z.literal('remove', 'type the word remove').meta({
    description: 'Typed by the person: everything entered since goes with the demo',
  }),
});

@ApiTags('demo')
@Controller('api/demo')
export class DemoController {
  constructor(private readonly demo: DemoService) {}

  @OfTheOperator()
  @Answered(demoStateAnswer)
  @Get()
  state() {
    return this.demo.state();
  }

  @OfTheOperator()
  @AnsweredBy({ 200: scenarioSchema })
  @Get('example')
  @Header('Content-Type', 'application/json; charset=utf-8')
  example() {
    return this.demo.example();
  }

  @Act('import and export', 'enter')
  @Answered(importedAnswer)
  @Post('load')
  @HttpCode(200)
  load(@Me() by: Account) {
    return this.demo.load(by);
  }

  @Act('import and export', 'decide')
  @AnsweredBy({ 204: 'nothing' })
  @Post('remove')
  @HttpCode(204)
  async remove(
    @Body({ schema: removeSchema }) _: z.output<typeof removeSchema>,
    @Me() by: Account,
  ): Promise<void> {
    await this.demo.remove(by);
  }
}
