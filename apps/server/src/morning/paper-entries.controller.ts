import { paperEntriesAnswer } from '@drumline/contract/answers';
import { Controller, Get, Query } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import { z } from 'zod';
import { Answered } from '../http/answers.js';
import { OfTheOperator } from '../people/access.js';
import { PaperEntriesService } from './paper-entries.service.js';

const paperQuery = z.strictObject({
  since: z.iso
    .datetime({ error: 'an instant is written YYYY-MM-DDTHH:MM:SSZ' })
    .meta({ description: 'Entered from here on', examples: ['2027-06-15T17:00:00Z'] }),
});

@ApiTags('morning')
@OfTheOperator()
@Controller('api/paper-entries')
export class PaperEntriesController {
  constructor(private readonly entries: PaperEntriesService) {}

  /** What was entered by radio and from paper, each with when it was written and by whom it was entered. */
  @Answered(paperEntriesAnswer)
  @Get()
  list(@Query({ schema: paperQuery }) { since }: z.output<typeof paperQuery>) {
    return this.entries.since(since);
  }
}
