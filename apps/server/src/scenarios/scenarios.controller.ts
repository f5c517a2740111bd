import { scenarioSchema } from '@drumline/contract';
import { importedAnswer, missingAnswer, wholeList } from '@drumline/contract/answers';
import { Body, Controller, Get, HttpCode, Post, Query } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import { z } from 'zod';
import { Answered } from '../http/answers.js';
import { Act, Me, OfTheOperator } from '../people/access.js';
import type { Account } from '../people/account.table.js';
import { refuseUnlessMay } from '../people/permission.js';
import { ScenariosService } from './scenarios.service.js';

const importQuery = z.strictObject({
  dryRun: z
    .enum(['true', 'false'])
    .default('false')
    .meta({ description: 'true: says every fault and doubt, and writes nothing' }),
  clock: z.enum(['document', 'time of day']).default('document').meta({
    description: "document: the clock goes on from the document's own moment, as in a demo or a drill",
  }),
});
/** Read whole by parseScenario, which says every fault at once. */
const documentSchema = z.record(z.string(), z.unknown());

@ApiTags('scenario')
@Controller('api/scenario')
export class ScenariosController {
  constructor(private readonly scenarios: ScenariosService) {}

  @Act('import and export', 'enter', { conditions: 'asked by the route' })
  @Answered(scenarioSchema)
  @Get()
  current(@Me() me: Account) {
    refuseUnlessMay(me, 'import and export', { to: 'enter', within: ['export'] });
    return this.scenarios.current();
  }

  /** What the territory still needs before a plan can be made, in the words of the trade. */
  @OfTheOperator()
  @Answered(wholeList(missingAnswer))
  @Get('missing')
  async missing() {
    return { items: await this.scenarios.missing(), next: null };
  }

  @Act('import and export', 'enter')
  @Answered(importedAnswer)
  @Post('import')
  @HttpCode(200)
  import(
    @Body({ schema: documentSchema }) document: unknown,
    @Query({ schema: importQuery }) { dryRun, clock }: z.output<typeof importQuery>,
    @Me() by: Account,
  ) {
    return this.scenarios.import(document, { dryRun: dryRun === 'true', clock }, by);
  }
}
