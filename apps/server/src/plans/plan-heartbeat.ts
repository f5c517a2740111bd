import type { FlightPlan } from '@drumline/planning';
import type { DataSource } from 'typeorm';
import { errorFields, type Log } from '../log.js';
import type { PlanRun } from './plan-run.table.js';
import type { SolveProgress } from './solve-messages.js';

const heartbeatMs = 250;

/** After a cancel, to hand in the best plan so far. */
const finishMs = 15_000;

/** Says four times a second that a run is alive and how far it is, and hears whether a cancel was asked for. */
export class PlanHeartbeat {
  private readonly lostIt = new AbortController();
  private readonly askedFor = new AbortController();
  /** What is not written down yet. */
  private progress: SolveProgress | null = null;
  private plan: FlightPlan | null = null;
  private unsaved: FlightPlan | null = null;
  private last: Promise<void> = Promise.resolve();
  private late: NodeJS.Timeout | undefined;
  private readonly timer: NodeJS.Timeout;

  constructor(
    private readonly database: DataSource,
    private readonly run: Pick<PlanRun, 'id' | 'attempt'>,
    private readonly log: Log,
  ) {
    this.timer = setInterval(() => this.soon(), heartbeatMs);
  }

  /** Aborted: another worker has the run, or the best plan took too long to hand in. */
  readonly lost: AbortSignal = this.lostIt.signal;

  /** Aborted: somebody cancels; the best plan so far is wanted. */
  readonly cancelAsked: AbortSignal = this.askedFor.signal;

  /** The first plan, once there is one. */
  get first(): FlightPlan | null {
    return this.plan;
  }

  readonly tell = (progress: SolveProgress): void => {
    this.progress = progress;
  };

  readonly show = (plan: FlightPlan): void => {
    this.plan = plan;
    this.unsaved = plan;
    this.soon();
  };

  /** A search that ends between two beats keeps its last figures too. */
  async stop(): Promise<void> {
    clearInterval(this.timer);
    if (this.progress !== null) this.soon();
    await this.last;
    clearTimeout(this.late);
  }

  private soon(): void {
    const { id } = this.run;
    this.last = this.last
      .then(() => this.beat())
      .catch((error: unknown) => this.log.warn('A heartbeat failed.', { plan: id, ...errorFields(error) }));
  }

  private async beat(): Promise<void> {
    const { id, attempt } = this.run;
    const { progress, unsaved } = this;
    // Before the write: what comes while it is under way belongs to the next beat.
    this.progress = null;
    this.unsaved = null;
    const [rows]: [{ cancelled: boolean }[], number] = await this.database
      .query(
        `update plan_runs set heartbeat_at = now(), progress = coalesce($3::jsonb, progress),
           first_plan = coalesce($4::jsonb, first_plan)
         where id = $1 and attempt = $2 and state = 'solving'
         returning cancel_asked_at is not null as cancelled`,
        [id, attempt, jsonOrNull(progress), jsonOrNull(unsaved)],
      )
      .catch((error: unknown) => {
        this.unsaved ??= unsaved;
        throw error;
      });
    if (rows[0] === undefined) this.lostIt.abort();
    else if (rows[0].cancelled && !this.cancelAsked.aborted) {
      this.askedFor.abort();
      this.late = setTimeout(() => this.lostIt.abort(), finishMs);
    }
  }
}

const jsonOrNull = (value: unknown): string | null => (value === null ? null : JSON.stringify(value));
