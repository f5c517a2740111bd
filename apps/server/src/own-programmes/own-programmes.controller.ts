import { ownLitresAnswer, ownProgrammesAnswer, ownTasksAnswer } from '@drumline/contract/answers';
import { Controller, Get, Param } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import { z } from 'zod';
import { Answered } from '../http/answers.js';
import { Act, Me } from '../people/access.js';
import type { Account } from '../people/account.table.js';
import { refuseUnlessMay } from '../people/permission.js';
import { OwnProgrammesService } from './own-programmes.service.js';

const code = { schema: z.string().min(1).max(100) };

/** What a customer's field leader sees, besides the levels of caches in words. */
@ApiTags('own programmes')
@Act('own programme and litres', 'view', { conditions: 'asked by the route' })
@Controller('api/own-programmes')
export class OwnProgrammesController {
  constructor(private readonly programmes: OwnProgrammesService) {}

  @Answered(ownProgrammesAnswer)
  @Get()
  async list(@Me() me: Account) {
    return { items: await this.programmes.list(me.programmes), next: null };
  }

  /** The helicopter work ahead and behind that draws for it. */
  @Answered(ownTasksAnswer)
  @Get(':code/tasks')
  async tasks(@Param('code', code) programme: string, @Me() me: Account) {
    refuseUnlessOwn(me, programme);
    return { items: await this.programmes.tasks(programme), next: null };
  }

  /** What has been drawn for it, latest first, and the sum. */
  @Answered(ownLitresAnswer)
  @Get(':code/litres')
  async litres(@Param('code', code) programme: string, @Me() me: Account) {
    refuseUnlessOwn(me, programme);
    return { ...(await this.programmes.drawn(programme)), next: null };
  }
}

const refuseUnlessOwn = (me: Account, programme: string): void =>
  refuseUnlessMay(me, 'own programme and litres', { to: 'view', own: me.programmes.includes(programme) });
