import { healthAnswer } from '@drumline/contract/answers';
import { Controller, Get, Inject, Res } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import type { Response } from 'express';
import { DataSource } from 'typeorm';
import { Answered } from '../http/answers.js';
import { errorFields, type Log } from '../log.js';
import { Public } from '../people/access.js';
import { askSolver } from '../plans/run-solve.js';
import { LOG } from '../platform.module.js';
import { Queues } from '../queue/queues.js';
import { withinSeconds } from '../within-seconds.js';

type Word = 'up' | 'down';

@ApiTags('health')
@Controller('health')
export class HealthController {
  constructor(
    private readonly database: DataSource,
    private readonly queues: Queues,
    @Inject(LOG) private readonly log: Log,
  ) {}

  /** 503 while something is down; says which, and nothing else to a stranger. */
  @Public()
  @Answered(healthAnswer)
  @Get()
  async health(@Res({ passthrough: true }) response: Response) {
    const [database, queue, solver] = await Promise.all([
      this.ask('database', () => this.database.query('select 1')),
      this.ask('queue', () => this.queues.check()),
      this.ask('solver', askSolver),
    ]);
    const isUp = [database, queue, solver].every((word) => word === 'up');
    response.status(isUp ? 200 : 503).set('Cache-Control', 'no-store');
    return { status: isUp ? 'up' : 'down', database, queue, solver };
  }

  private async ask(part: string, question: () => Promise<unknown>): Promise<Word> {
    try {
      await withinSeconds(5, question());
      return 'up';
    } catch (error) {
      this.log.warn('A part is down.', { part, ...errorFields(error) });
      return 'down';
    }
  }
}
