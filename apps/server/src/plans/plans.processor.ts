import { Inject, Injectable, type OnModuleDestroy, type OnModuleInit } from '@nestjs/common';
import { DataSource } from 'typeorm';
import type { Log } from '../log.js';
import { LOG } from '../platform.module.js';
import { Queues } from '../queue/queues.js';
import { PlanHeartbeat } from './plan-heartbeat.js';
import { planQueue, silentSeconds } from './plan-queue.service.js';
import { type PlanOutcome, type PlanRun, planRunTable } from './plan-run.table.js';
import { runSolve } from './run-solve.js';
import type { SolveOutcome } from './solve-messages.js';
import { weather } from './weather.js';

/** Beyond the time of the search: building the problem, making the plan steadier, reading and checking it. */
const graceSeconds = 120;

/** Solves planning runs, one at a time in each worker, every solve in a process of its own. */
@Injectable()
export class PlansProcessor implements OnModuleInit, OnModuleDestroy {
  private readonly stopping = new AbortController();
  private atWork: Promise<void> = Promise.resolve();

  constructor(
    private readonly database: DataSource,
    private readonly queues: Queues,
    @Inject(LOG) private readonly log: Log,
  ) {}

  onModuleInit(): void {
    this.queues.handle(planQueue, (job) => {
      this.atWork = this.work((job.data as { readonly planId: string }).planId);
      return this.atWork;
    });
  }

  /** The run goes back to the others; whoever starts next takes it up. */
  async onModuleDestroy(): Promise<void> {
    this.stopping.abort();
    await this.atWork.catch(() => {});
  }

  /** Nothing claimed, nothing done: it is finished, cancelled, or with a worker that is alive. */
  async work(planId: string): Promise<void> {
    const run = this.stopping.signal.aborted ? null : await this.claim(planId);
    if (run === null) return;
    const beat = new PlanHeartbeat(this.database, run, this.log);
    try {
      const outcome = await runSolve({
        scenario: run.scenario,
        options: {
          endTarget: run.request.endTarget,
          seed: run.request.seed,
          budget: { seconds: run.request.seconds },
          weather,
        },
        cancel: AbortSignal.any([beat.lost, this.stopping.signal]),
        finish: beat.cancelAsked,
        atMostSeconds: run.request.seconds + graceSeconds,
        onProgress: beat.tell,
        onFirst: beat.show,
      });
      await beat.stop();
      if (this.stopping.signal.aborted) await this.giveBack(run);
      else if (!beat.lost.aborted || beat.cancelAsked.aborted) await this.save(run, outcomeOf(outcome, beat));
    } finally {
      await beat.stop();
    }
  }

  /** One statement, so that of two workers one gets it. */
  private async claim(planId: string): Promise<PlanRun | null> {
    const [claimed]: [{ id: string }[], number] = await this.database.query(
      `update plan_runs set state = 'solving', attempt = attempt + 1, heartbeat_at = now(),
         started_at = coalesce(started_at, now())
       where id = $1 and (state = 'queued'
         or (state = 'solving' and heartbeat_at < now() - make_interval(secs => $2)))
       returning id`,
      [planId, silentSeconds],
    );
    if (claimed.length === 0) return null;
    return this.database.getRepository(planRunTable).findOneByOrFail({ id: planId });
  }

  /** Only where the attempt still matches: a worker that was taken for dead cannot overwrite. */
  private async save({ id, attempt }: PlanRun, outcome: PlanOutcome): Promise<void> {
    const [rows]: [unknown[], number] = await this.database.query(
      `update plan_runs set state = $3, outcome = $4, first_plan = null, finished_at = now()
       where id = $1 and attempt = $2 and state = 'solving' returning id`,
      [id, attempt, outcome.status, JSON.stringify(outcome)],
    );
    if (rows.length === 0) this.log.warn('A result came too late and was left out.', { plan: id, attempt });
    if (outcome.status === 'failed') this.log.error('A plan failed.', { plan: id, error: outcome.error });
  }

  private async giveBack({ id, attempt }: PlanRun): Promise<void> {
    await this.database.query(
      `update plan_runs set state = 'queued', heartbeat_at = null
       where id = $1 and attempt = $2 and state = 'solving'`,
      [id, attempt],
    );
  }
}

const outcomeOf = (outcome: SolveOutcome, { cancelAsked, first }: PlanHeartbeat): PlanOutcome => {
  const cancelled = cancelAsked.aborted || outcome.status === 'cancelled';
  const plan = outcome.status === 'solved' ? outcome.plan : first;
  if (cancelled) return { status: 'cancelled', plan, proof: plan?.proof ?? null };
  return outcome.status === 'solved' ? { ...outcome, proof: outcome.plan.proof } : outcome;
};
