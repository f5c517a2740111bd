import {
  type PlanAccept,
  type PlanRequest,
  planAcceptSchema,
  planRequestSchema,
  scenarioSchema,
} from '@drumline/contract';
import {
  listedPlanAnswer,
  pageOf,
  planAcceptanceAnswer,
  planDifferencesAnswer,
  planRunAnswer,
} from '@drumline/contract/answers';
import { Body, Controller, Get, HttpCode, Param, Post, Put, Query } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import { z } from 'zod';
import { Answered } from '../http/answers.js';
import { type PageQuery, pageQuery } from '../http/page.js';
import { Act, Me } from '../people/access.js';
import type { Account } from '../people/account.table.js';
import { refuseUnlessMay } from '../people/permission.js';
import { AcceptPlanService } from './accept-plan.service.js';
import { ListedPlansService } from './listed-plans.service.js';
import { PlanDifferencesService } from './plan-differences.service.js';
import type { PlanAcceptance, PlanRun } from './plan-run.table.js';
import { PlansService } from './plans.service.js';

const idSchema = z.uuid();
const listQuery = pageQuery.extend({ after: z.uuid().optional() });
const withoutQuery = z.strictObject({
  without: z
    .string()
    .max(10_000)
    .default('')
    .transform((text) => text.split(',').filter((line) => line !== ''))
    .meta({ description: 'Keys of lines to leave out, with commas between' }),
});
const daysOfAWeek = 7;
const insideTheWeek = { within: ['from now, inside the week'] } as const;

@ApiTags('plans')
@Act('run plan', 'view')
@Controller('api/plans')
export class PlansController {
  constructor(
    private readonly plans: PlansService,
    private readonly acceptances: AcceptPlanService,
    private readonly listed: ListedPlansService,
    private readonly compared: PlanDifferencesService,
  ) {}

  @Answered(pageOf(listedPlanAnswer))
  @Get()
  list(@Query({ schema: listQuery }) query: PageQuery) {
    return this.listed.list(query);
  }

  /** How far it is while it runs (best cost, bound, gap), without the plan itself: read it again every second. */
  @Answered(listedPlanAnswer)
  @Get(':id/progress')
  progress(@Param('id', { schema: idSchema }) id: string) {
    return this.listed.one(id);
  }

  /** How it ended, with the plan; while it runs, with the first plan that was found. */
  @Answered(planRunAnswer)
  @Get(':id')
  async get(@Param('id', { schema: idSchema }) id: string) {
    return shown(await this.plans.get(id), await this.plans.acceptance(id));
  }

  /** The scenario it was made from, as the command line reads it. */
  @Answered(scenarioSchema)
  @Get(':id/scenario')
  async scenario(@Param('id', { schema: idSchema }) id: string) {
    return (await this.plans.get(id)).scenario;
  }

  /** The plan beside what stood when it was asked for; with lines left out, what it would come to without them. */
  @Answered(planDifferencesAnswer)
  @Get(':id/differences')
  differences(
    @Param('id', { schema: idSchema }) id: string,
    @Query({ schema: withoutQuery }) { without }: z.output<typeof withoutQuery>,
  ) {
    return this.compared.of(id, without);
  }

  /** The id is made by the sender, so that a retry is harmless. */
  @Act('run plan', 'decide', { conditions: 'asked by the route' })
  @Answered(planRunAnswer, 202)
  @Put(':id')
  @HttpCode(202)
  async put(
    @Param('id', { schema: idSchema }) id: string,
    @Body({ schema: planRequestSchema }) request: PlanRequest,
    @Me() by: Account,
  ) {
    const isInside = (request.offeredDays ?? daysOfAWeek) <= daysOfAWeek;
    refuseUnlessMay(by, 'run plan', { to: 'decide', ...(isInside ? insideTheWeek : {}) });
    return shown(await this.plans.request(id, request, by), null);
  }

  /** Answers at once; the best checked plan so far is handed in a few seconds later. */
  @Act('run plan', 'decide', { conditions: 'asked by the route' })
  @Answered(planRunAnswer, 202)
  @Post(':id/cancel')
  @HttpCode(202)
  async cancel(@Param('id', { schema: idSchema }) id: string, @Me() by: Account) {
    refuseUnlessMay(by, 'run plan', { to: 'decide', ...insideTheWeek });
    return shown(await this.plans.cancel(id, by), await this.plans.acceptance(id));
  }

  /** Ends it at once and keeps no plan; a run that is over stays as it is. */
  @Act('run plan', 'decide', { conditions: 'asked by the route' })
  @Answered(planRunAnswer)
  @Post(':id/discard')
  @HttpCode(200)
  async discard(@Param('id', { schema: idSchema }) id: string, @Me() by: Account) {
    refuseUnlessMay(by, 'run plan', { to: 'decide', ...insideTheWeek });
    return shown(await this.plans.discard(id, by), await this.plans.acceptance(id));
  }

  @Act('accept plan', 'decide', { conditions: 'asked by the route' })
  @Answered(planAcceptanceAnswer)
  @Post(':id/accept')
  @HttpCode(200)
  accept(
    @Param('id', { schema: idSchema }) id: string,
    @Body({ schema: planAcceptSchema }) { without }: PlanAccept,
    @Me() by: Account,
  ) {
    return this.acceptances.accept(id, without, by);
  }
}

const shown = (
  { scenario: _, flightRevisions: __, heartbeatAt: ___, ...run }: PlanRun,
  accepted: PlanAcceptance | null,
) => ({ ...run, accepted });
