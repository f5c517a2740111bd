import { Inject, Injectable, type OnApplicationBootstrap, type OnModuleDestroy } from '@nestjs/common';
import { DataSource } from 'typeorm';
import { againAndAgain, type Stop } from '../again-and-again.js';
import { errorFields, type Log } from '../log.js';
import { LOG } from '../platform.module.js';
import { Queues } from '../queue/queues.js';

export const planQueue = 'plans';

/** A worker that was silent for so long is taken for dead. */
export const silentSeconds = 10;

const sweepMs = 5_000;

/** Rings for runs that wait: the row in the database is the order, the job only says that there is one. */
@Injectable()
export class PlanQueueService implements OnApplicationBootstrap, OnModuleDestroy {
  private stop: Stop | undefined;

  constructor(
    private readonly database: DataSource,
    private readonly queues: Queues,
    @Inject(LOG) private readonly log: Log,
  ) {}

  onApplicationBootstrap(): void {
    this.stop = againAndAgain(
      sweepMs,
      () => this.sweep(),
      (error) => this.log.warn('Waiting plans could not be looked for.', errorFields(error)),
    );
  }

  async onModuleDestroy(): Promise<void> {
    await this.stop?.();
  }

  /** The same attempt rung for twice is one job; a job that finds nothing to do does nothing. */
  async ring({ id, attempt }: { readonly id: string; readonly attempt: number }): Promise<void> {
    const jobId = attempt === 0 ? id : `${id}.${attempt}`;
    await this.queues
      .queue(planQueue)
      .add('plan', { planId: id }, { jobId, removeOnComplete: true, removeOnFail: true });
  }

  /** Rows that wait and have no job, because the queue was emptied or their worker died, get one. */
  async sweep(): Promise<void> {
    const waiting: { id: string; attempt: number }[] = await this.database.query(
      `select id, attempt from plan_runs
       where state = 'queued'
         or (state = 'solving' and heartbeat_at < now() - make_interval(secs => $1))
       order by requested_at limit 100`,
      [silentSeconds],
    );
    for (const run of waiting) await this.ring(run);
  }
}
