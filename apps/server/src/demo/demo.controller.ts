import { Body, Controller, Get, Header, HttpCode, Post } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import { z } from 'zod';
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
  @Get()
  state() {
    return this.demo.state();
  }

  @OfTheOperator()
  @Get('example')
  @Header('Content-Type', 'application/json; charset=utf-8')
  example() {
    return this.demo.example();
  }

  @Act('import and export', 'enter')
  @Post('load')
  @HttpCode(200)
  load(@Me() by: Account) {
    return this.demo.load(by);
  }

  @Act('import and export', 'decide')
  @Post('remove')
  @HttpCode(204)
  async remove(
    @Body({ schema: removeSchema }) _: z.output<typeof removeSchema>,
    @Me() by: Account,
  ): Promise<void> {
    await this.demo.remove(by);
  }
}
