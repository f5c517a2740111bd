import { morningAnswer } from '@drumline/contract/answers';
import { Controller, Get, Query } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import { z } from 'zod';
import { Answered } from '../http/answers.js';
import { Act, Me } from '../people/access.js';
import type { Account } from '../people/account.table.js';
import { MorningService } from './morning.service.js';

const morningQuery = z.strictObject({
  since: z
    .string()
    .regex(
      /^(19|20|21)\d\d-\d\d-\d\dT\d\d:\d\d(:\d\d(\.\d{3})?)?Z$/,
      'an instant is written YYYY-MM-DDTHH:MMZ in UTC',
    )
    .refine((text) => !Number.isNaN(Date.parse(text)), 'there is no such moment')
    .optional()
    .meta({ description: 'From when changes are told; absent: 17:00 of the day before' }),
});

@ApiTags('morning')
@Act('approve flight', 'view')
@Controller('api/morning')
export class MorningController {
  constructor(private readonly morning: MorningService) {}

  /** What to decide, what has changed, who has not been heard from; strips, who is away, where fuel can be drawn. */
  @Answered(morningAnswer)
  @Get()
  read(@Query({ schema: morningQuery }) { since }: z.output<typeof morningQuery>, @Me() me: Account) {
    return this.morning.read(me, since);
  }
}
