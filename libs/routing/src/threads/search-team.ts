import { Worker } from 'node:worker_threads';
import type { Plan, Problem, SearchNews, SearchOptions, SearchResult } from '../index.js';
import { type SharedProblem, shareProblem } from './shared-problem.js';

/** What a search worker is given. */
export interface SearchTask {
  readonly problem: SharedProblem;
  readonly from: Plan;
  readonly seed: number;
  readonly budget: SearchOptions['budget'];
  readonly routes: readonly number[] | null;
  readonly isNear: boolean;
  readonly bound: number | null;
  /** Its first figure is set to 1 to end the search. */
  readonly stop: Int32Array<SharedArrayBuffer>;
}

/** What it sends: its best plan when there is a better one, now and then, and at the end. It is sent `SearchNews`. */
export interface SearchMessage {
  readonly kind: 'better' | 'done';
  readonly plan: Plan;
  readonly cost: number;
  readonly iterations: number;
}

/** The worker always runs from the build, also when this file is run from source. */
const workerFile = new URL('../../dist/threads/search.worker.js', import.meta.url);

/** Milliseconds between two looks at the clock. */
const WATCH_EVERY = 100;

/** Milliseconds within which a worker must end when it is told to: after that its last message counts. */
const GRACE = 600;

/** Milliseconds between two exchanges of plans. */
const EXCHANGE_EVERY = 3000;

interface Member {
  readonly worker: Worker;
  latest: SearchMessage | null;
  /** Cost of the cheapest plan it has been sent. */
  sent: number;
}

/** Search workers on one problem that tell each other of their best plans. */
export class SearchTeam {
  private readonly members: Member[] = [];
  private readonly stop = new Int32Array(new SharedArrayBuffer(4));
  private readonly began: number;
  private readonly finished: Promise<void>;
  private settle!: { done: () => void; fail: (error: Error) => void };
  private exchanged: number;
  private stoppedAt: number | null = null;

  constructor(
    private readonly problem: Problem,
    private readonly options: SearchOptions,
  ) {
    this.began = options.clock();
    this.exchanged = this.began;
    this.finished = new Promise((done, fail) => {
      this.settle = { done, fail };
    });
  }

  get size(): number {
    return this.members.length;
  }

  /** The cheapest plan that a worker has told of. */
  get bestPlan(): Plan | null {
    return this.best()?.latest?.plan ?? null;
  }

  /** One more worker, with the next seed; `isNear`: the plan it begins from is a good one. */
  join(from: Plan, { routes, isNear, bound }: Pick<SearchTask, 'routes' | 'isNear' | 'bound'>): void {
    const { options, problem, stop } = this;
    const seed = options.seed + this.members.length;
    const budget =
      'seconds' in options.budget
        ? { seconds: Math.max(0, options.budget.seconds - (options.clock() - this.began) / 1000) }
        : options.budget;
    const task: SearchTask = {
      problem: shareProblem(problem),
      from,
      seed,
      budget,
      routes,
      isNear,
      bound,
      stop,
    };
    const member: Member = {
      worker: new Worker(workerFile, { workerData: task }),
      latest: null,
      sent: Number.POSITIVE_INFINITY,
    };
    member.worker.on('message', (message: SearchMessage) => this.hear(member, message));
    member.worker.on('error', (error) => this.settle.fail(error));
    this.members.push(member);
  }

  /** To all workers. */
  tell(news: SearchNews): void {
    for (const { worker } of this.members) worker.postMessage(news);
  }

  fail(error: Error): void {
    this.settle.fail(error);
  }

  /** The best plan of all, when all are done. */
  async finish(from: Plan): Promise<SearchResult> {
    const watch = setInterval(() => this.watch(), WATCH_EVERY);
    try {
      await this.finished;
      return {
        plan: this.bestPlan ?? from,
        iterations: this.members.reduce((sum, { latest }) => sum + (latest?.iterations ?? 0), 0),
      };
    } finally {
      clearInterval(watch);
      for (const { worker } of this.members) void worker.terminate();
    }
  }

  get isOver(): boolean {
    return this.stoppedAt !== null || this.members.every(({ latest }) => latest?.kind === 'done');
  }

  private hear(member: Member, message: SearchMessage): void {
    member.latest = message;
    const { plan, cost: best, iterations } = message;
    const seconds = (this.options.clock() - this.began) / 1000;
    this.options.onProgress?.({ plan, best, iterations, seconds });
    if (this.members.every(({ latest }) => latest?.kind === 'done')) this.settle.done();
  }

  private watch(): void {
    const { budget, clock, shouldStop } = this.options;
    const now = clock();
    const isLate = 'seconds' in budget && now - this.began > budget.seconds * 1000;
    if (this.stoppedAt === null && (shouldStop?.() || isLate)) {
      this.stoppedAt = now;
      Atomics.store(this.stop, 0, 1);
    }
    if (this.stoppedAt !== null && 'seconds' in budget && now - this.stoppedAt > GRACE) this.settle.done();
    const news = this.options.news?.();
    if (news && 'seconds' in budget) this.tell(news);
    if ('seconds' in budget && now - this.exchanged > EXCHANGE_EVERY) {
      this.exchanged = now;
      this.exchange();
    }
  }

  /** Sends the best plan to all whose own is dearer. */
  private exchange(): void {
    const best = this.best();
    if (!best?.latest) return;
    const { plan, cost } = best.latest;
    for (const member of this.members) {
      if (member === best || Math.min(member.sent, member.latest?.cost ?? Number.POSITIVE_INFINITY) <= cost)
        continue;
      member.sent = cost;
      member.worker.postMessage({ plan } satisfies SearchNews);
    }
  }

  private best(): Member | null {
    return this.members.reduce<Member | null>(
      (best, member) =>
        member.latest && (!best?.latest || member.latest.cost < best.latest.cost) ? member : best,
      null,
    );
  }
}
