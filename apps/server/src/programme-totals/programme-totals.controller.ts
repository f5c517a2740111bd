import { programmeTotalsAnswer } from '@drumline/contract/answers';
import { Controller, Get, Query } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import { z } from 'zod';
import { Answered } from '../http/answers.js';
import { Act } from '../people/access.js';
import { ProgrammeTotalsService } from './programme-totals.service.js';

const days = z.strictObject({
  from: z.iso.date().meta({ description: 'First day', examples: ['2027-06-01'] }),
  until: z.iso.date().meta({ description: 'Last day', examples: ['2027-06-30'] }),
});

@ApiTags('programmes')
@Controller('api/programme-totals')
export class ProgrammeTotalsController {
  constructor(private readonly totals: ProgrammeTotalsService) {}

  /** Hours and litres planned and drawn by programme, and what is charged on for them. */
  @Act('programme', 'view')
  @Answered(programmeTotalsAnswer)
  @Get()
  between(@Query({ schema: days }) query: z.output<typeof days>) {
    return this.totals.between(query);
  }
}
