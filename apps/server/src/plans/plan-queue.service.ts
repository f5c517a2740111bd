import { Inject, Injectable, type OnApplicationBootstrap, type OnModuleDestroy } from '@nestjs/common';
import { DataSource } from 'typeorm';
import { againAndAgain, type Stop } from '../again-and-again.js';
import { errorFields, type Log } from '../log.js';
import { LOG } from '../platform.module.js';
import { Queues } from '../queue/queues.js';
import { withinSeconds } from '../within-seconds.js';

export const planQueue = 'plans';

/** A worker that was silent for so long is taken for dead. */
export const silentSeconds = 10;

const sweepMs = 5_000;
/** A queue that is out of reach keeps nobody waiting longer. */
const ringSeconds = 2;

interface Waiting {
  readonly id: string;
  readonly attempt: number;
}

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

  /** Where the queue cannot be reached the run waits in the database, and the sweep rings for it. */
  async ring(run: Waiting): Promise<void> {
    await this.add(run).catch((error: unknown) =>
      this.log.warn('The queue could not be rung; the plan waits.', { plan: run.id, ...errorFields(error) }),
    );
  }

  /** The same attempt rung for twice is one job; a job that finds nothing to do does nothing. */
  private async add({ id, attempt }: Waiting): Promise<void> {
    const jobId = attempt === 0 ? id : `${id}.${attempt}`;
    const added = this.queues
      .queue(planQueue)
      .add('plan', { planId: id }, { jobId, removeOnComplete: true, removeOnFail: true });
    await withinSeconds(ringSeconds, added);
  }

  /** Rows that wait and have no job, because the queue was emptied or their worker died, get one. */
  async sweep(): Promise<void> {
    const waiting: Waiting[] = await this.database.query(
      `select id, attempt from plan_runs
       where state = 'queued'
         or (state = 'solving' and heartbeat_at < now() - make_interval(secs => $1))
       order by requested_at limit 100`,
      [silentSeconds],
    );
    for (const run of waiting) await this.add(run);
  }
}
