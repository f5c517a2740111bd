import { scenarioSchema } from '@drumline/contract';
import { checkedLimitsAnswer } from '@drumline/contract/answers';
import { Body, Controller, HttpCode, Post } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import { z } from 'zod';
import { Answered } from '../http/answers.js';
import { OfTheOperator } from '../people/access.js';
import { PayloadService } from './payload.service.js';

const checkSchema = z.strictObject({
  stripLimits: z
    .array(scenarioSchema.shape.stripLimits.element)
    .max(1000)
    .meta({ description: 'Limits as they would be; none: those in force' }),
});

@ApiTags('strip-limits')
@OfTheOperator()
@Controller('api/payload')
export class PayloadController {
  constructor(private readonly payload: PayloadService) {}

  /** Drums from each base by strip and type, dry and soft; nothing is changed. */
  @Answered(checkedLimitsAnswer)
  @Post()
  @HttpCode(200)
  check(@Body({ schema: checkSchema }) { stripLimits }: z.output<typeof checkSchema>) {
    return this.payload.check(stripLimits);
  }
}
