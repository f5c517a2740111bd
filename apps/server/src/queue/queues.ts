import {
  createPostgresBackend,
  type Job,
  Queue,
  type QueueOptions,
  runMigrations,
  setDefaultBackendFactory,
  Worker,
} from 'bullmq';
import pg from 'pg';
import { errorFields, type Log } from '../log.js';
import { withinSeconds } from '../within-seconds.js';

export type Work = (job: Job) => Promise<void>;

/**
 * Every queue of this process. With `redisUrl` they live in Redis, else in the database itself. Work is registered
 * by the features and taken up only where `startWorkers` is called: in `start` and `worker`, not in `api`.
 */
export class Queues {
  private readonly queues = new Map<string, Queue>();
  private readonly work = new Map<string, { readonly work: Work; readonly atOnce: number }>();
  private readonly workers: Worker[] = [];

  constructor(
    private readonly connection: QueueOptions['connection'],
    private readonly log: Log,
  ) {}

  queue(name: string): Queue {
    const known = this.queues.get(name);
    if (known !== undefined) return known;
    const queue = new Queue(name, { connection: this.connection });
    queue.on('error', (error) =>
      this.log.warn('The queue reports an error.', { queue: name, ...errorFields(error) }),
    );
    this.queues.set(name, queue);
    return queue;
  }

  /** Says what is to be done with the jobs of a queue, and how many at once. */
  handle(name: string, work: Work, atOnce = 1): void {
    if (this.work.has(name)) throw new Error(`the queue ${name} has its work already`);
    this.work.set(name, { work, atOnce });
  }

  startWorkers(): void {
    for (const [name, { work, atOnce }] of this.work) {
      const worker = new Worker(name, work, { connection: this.connection, concurrency: atOnce });
      worker.on('error', (error) =>
        this.log.warn('A worker reports an error.', { queue: name, ...errorFields(error) }),
      );
      worker.on('failed', (job, error) =>
        this.log.error('A job failed.', { queue: name, job: job?.id, ...errorFields(error) }),
      );
      this.workers.push(worker);
    }
  }

  async check(): Promise<void> {
    await this.queue('health').getJobCounts('waiting');
  }

  /** Jobs under way are finished first. */
  async close(): Promise<void> {
    const queues = [...this.queues.values()];
    await Promise.all([...this.workers, ...queues].map(opened));
    await Promise.all(this.workers.map((worker) => worker.close()));
    await Promise.all(queues.map((queue) => queue.close()));
  }
}

const openSeconds = 2;

/** One that is closed while it is being opened would leave a connection behind. One that cannot open is not waited for. */
const opened = (one: Queue | Worker): Promise<unknown> =>
  withinSeconds(openSeconds, one.waitUntilReady()).catch(() => {});

/** The backend is a setting of the whole process: one process, one kind of queue. */
export const openQueues = async (
  { databaseUrl, redisUrl }: { readonly databaseUrl: string; readonly redisUrl: string | undefined },
  log: Log,
): Promise<Queues> => {
  if (redisUrl !== undefined) {
    setDefaultBackendFactory();
    return new Queues({ url: redisUrl, maxRetriesPerRequest: null }, log);
  }
  setDefaultBackendFactory(createPostgresBackend);
  const client = new pg.Client({ connectionString: databaseUrl });
  await client.connect();
  await runMigrations(client).finally(() => client.end());
  return new Queues({ connectionString: databaseUrl, max: 3 }, log);
};
