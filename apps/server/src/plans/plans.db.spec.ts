import { type ChildProcess, spawn } from 'node:child_process';
import { randomUUID } from 'node:crypto';
import { join } from 'node:path';
import type { ListedPlan, PlanDifferencesAnswer } from '@drumline/contract';
import { afterAll, beforeAll, describe, expect, it, vi } from 'vitest';
import { rootFolder } from '../config.js';
import type { Client } from '../testing/client.js';
import { createTestServer, type TestServer } from '../testing/create-test-server.js';
import { PlanQueueService, planQueue } from './plan-queue.service.js';
import type { PlanAcceptance, PlanRun } from './plan-run.table.js';

type Shown = PlanRun & { readonly accepted: PlanAcceptance | null };

const ask = { endTarget: 'operator', seconds: 3, seed: 7 } as const;

const read = async (client: Client, id: string): Promise<Shown> =>
  (await client.get<Shown>(`/api/plans/${id}`)).body;

const isOver = ({ state }: Shown): boolean => state !== 'queued' && state !== 'solving';

const until = async (client: Client, id: string, isSo: (run: Shown) => boolean): Promise<Shown> => {
  for (;;) {
    const run = await read(client, id);
    if (isSo(run)) return run;
    if (isOver(run)) throw new Error(`The run is over and was never so: ${run.state}.`);
    await new Promise((resolve) => setTimeout(resolve, 100));
  }
};

describe('a plan request', () => {
  let server: TestServer;
  let manager: Client;
  beforeAll(async () => {
    server = await createTestServer({ workers: true });
    manager = await server.as('operations manager');
  });
  afterAll(() => server.close());

  it('returns flights that each say what they protect, with cost, bound and gap, and keeps its scenario', async () => {
    const id = randomUUID();
    const asked = await manager.put<Shown>(`/api/plans/${id}`, ask);
    expect(asked.status).toBe(202);
    expect(asked.body.state).toBe('queued');
    const run = await until(manager, id, isOver);
    expect(run.outcome).toMatchObject({ status: 'solved', proof: { seed: 7 } });
    const plan = run.outcome?.status === 'solved' ? run.outcome.plan : null;
    expect(plan?.flights.length).toBeGreaterThan(5);
    expect(plan?.flights.every(({ reason }) => reason.text !== '')).toBe(true);
    expect(Object.keys(run.progress ?? {})).toEqual(expect.arrayContaining(['best', 'bound', 'gap']));
    const { body } = await manager.get<{ drums: unknown[] }>(`/api/plans/${id}/scenario`);
    expect(body.drums).toHaveLength(186);
    const differences = await manager.get<{ added: unknown[]; removed: unknown[] }>(
      `/api/plans/${id}/differences`,
    );
    expect(differences.body.removed).toEqual([]);
    expect(differences.body.added).toHaveLength(plan?.flights.filter(({ drums }) => drums > 0).length ?? -1);
  });

  it('shows a first plan while the search goes on', async () => {
    const id = randomUUID();
    await manager.put(`/api/plans/${id}`, { ...ask, seconds: 60 });
    const early = await until(manager, id, ({ firstPlan }) => firstPlan !== null);
    expect(early.state).toBe('solving');
    expect(early.firstPlan?.flights.length).toBeGreaterThan(5);
    await manager.post(`/api/plans/${id}/cancel`, {});
    await until(manager, id, isOver);
  });

  it('sent again is the same run; another request under its id is refused', async () => {
    const id = randomUUID();
    const answers = await Promise.all([1, 2, 3].map(() => manager.put<Shown>(`/api/plans/${id}`, ask)));
    expect(answers.map(({ status }) => status)).toEqual([202, 202, 202]);
    const other = await manager.put(`/api/plans/${id}`, { ...ask, seed: 8 });
    expect(other.status).toBe(409);
    const run = await until(manager, id, isOver);
    expect(run.attempt).toBe(1);
  });

  it('takes its own price of change, and says how far it is', async () => {
    const id = randomUUID();
    await manager.put(`/api/plans/${id}`, { ...ask, changePrice: 25_000 });
    const { body } = await manager.get<{ policy: { changePrice: number } }>(`/api/plans/${id}/scenario`);
    expect(body.policy.changePrice).toBe(25_000);
    const { outcome } = await until(manager, id, isOver);
    const { body: listed } = await manager.get<{ items: ListedPlan[] }>('/api/plans');
    expect(listed.items.find((each) => each.id === id)).toMatchObject({
      state: 'solved',
      asOf: expect.stringMatching(/^2027-06-14T06/),
      cost: { total: outcome?.status === 'solved' ? outcome.plan.cost.total : null },
      acceptedByName: null,
      number: null,
    });
    const progress = await manager.get<ListedPlan>(`/api/plans/${id}/progress`);
    expect(progress.body.secondsGone).toBeGreaterThan(1);
    expect(progress.body.progress?.best).toBeGreaterThan(0);
    expect((await manager.get(`/api/plans/${randomUUID()}/progress`)).status).toBe(404);
  });

  it('is cancelled within a second, and keeps the best checked plan', async () => {
    const id = randomUUID();
    await manager.put(`/api/plans/${id}`, { ...ask, seconds: 300 });
    await until(manager, id, ({ progress }) => typeof progress?.best === 'number');
    const cancelled = await manager.post<Shown>(`/api/plans/${id}/cancel`, {});
    expect(cancelled.status).toBe(202);
    expect(cancelled.body.cancelAskedAt).not.toBeNull();
    const run = await until(manager, id, isOver);
    expect(run.state).toBe('cancelled');
    expect(run.outcome).toMatchObject({ status: 'cancelled', plan: { flights: expect.any(Array) } });
  });

  it('is discarded at once: no plan is kept, also when its worker hears of it later; the next run is solved', async () => {
    const id = randomUUID();
    await manager.put(`/api/plans/${id}`, { ...ask, seconds: 300 });
    await until(manager, id, ({ firstPlan }) => firstPlan !== null);
    const discarded = await manager.post<Shown>(`/api/plans/${id}/discard`, {});
    const nothing = { status: 'cancelled', plan: null, proof: null };
    expect(discarded.status).toBe(200);
    expect(discarded.body).toMatchObject({ state: 'cancelled', firstPlan: null, outcome: nothing });
    const next = randomUUID();
    await manager.put(`/api/plans/${next}`, ask);
    expect((await until(manager, next, isOver)).state).toBe('solved');
    expect((await manager.post<Shown>(`/api/plans/${next}/discard`, {})).body.state).toBe('solved');
    const { body } = await manager.get<Shown>(`/api/plans/${id}`);
    expect(body).toMatchObject({ state: 'cancelled', firstPlan: null, outcome: nothing });
  });

  it('from now keeps what is approved: the re-plan is accepted and the approved flight stays byte for byte', async () => {
    const first = randomUUID();
    await manager.put(`/api/plans/${first}`, ask);
    const { outcome } = await until(manager, first, isOver);
    const accepted = await manager.post<PlanAcceptance>(`/api/plans/${first}/accept`, {});
    expect(accepted.status).toBe(200);
    const [{ flight } = { flight: '' }] = accepted.body.flights;
    const version = { headers: { 'If-Match': '"1"' } };
    expect((await manager.post(`/api/flights/${flight}/approve`, {}, version)).status).toBe(200);
    const row = await server.database.query('select * from flights where id = $1', [flight]);

    const second = randomUUID();
    await manager.put(`/api/plans/${second}`, { ...ask, seed: 11 });
    const run = await until(manager, second, isOver);
    const plan = run.outcome?.status === 'solved' ? run.outcome.plan : null;
    expect(plan?.flights.find(({ id }) => id === flight)?.state).toBe('approved');
    const again = await manager.post<PlanAcceptance>(`/api/plans/${second}/accept`, {});
    expect(again.status).toBe(200);
    const { body: compared } = await manager.get<PlanDifferencesAnswer>(`/api/plans/${second}/differences`);
    // The second week, which no flight stands for yet, is compared with what the first plan had in mind.
    const days = [...compared.removed, ...compared.same.map(({ before }) => before)].map(({ date }) => date);
    expect(days.some((date) => date > compared.lastOfferedDay)).toBe(true);
    const firstPlan = outcome?.status === 'solved' ? outcome.plan : null;
    expect(compared.totals.before.drums).toBe(firstPlan?.flights.reduce((sum, { drums }) => sum + drums, 0));
    expect(await server.database.query('select * from flights where id = $1', [flight])).toEqual(row);
    const { body } = await manager.get<{ items: { id: string }[] }>('/api/flights?state=offered&limit=500');
    const offered = again.body.flights.map((each) => each.flight);
    expect(body.items.map(({ id }) => id).sort()).toEqual([...offered].sort());
  });

  it('is never changed once it is finished, by anybody', async () => {
    const id = randomUUID();
    await manager.put(`/api/plans/${id}`, ask);
    await until(manager, id, isOver);
    for (const sql of [
      `update plan_runs set outcome = '{}' where id = $1`,
      `update plan_runs set state = 'queued', outcome = null where id = $1`,
      'delete from plan_runs where id = $1',
    ]) {
      await expect(server.database.query(sql, [id])).rejects.toThrow(
        /never changed|append-only|permission denied/,
      );
    }
  });

  it('says what is missing where no plan can be made', async () => {
    await server.database.query(
      `update territory_entries set removed = true, version = version + 1 where kind = 'hand-plan'`,
    );
    const id = randomUUID();
    await manager.put(`/api/plans/${id}`, { ...ask, endTarget: 'hand plan' });
    const run = await until(manager, id, isOver);
    expect(run.outcome).toMatchObject({
      status: 'infeasible',
      reasons: [expect.stringContaining('choose "operator"')],
    });
  });

  it('is refused for another day than today: stock is known for now only', async () => {
    const answer = await manager.put<{ faults: { path: string }[] }>(`/api/plans/${randomUUID()}`, {
      ...ask,
      from: '2027-01-01',
    });
    expect(answer.status).toBe(422);
    expect(answer.body.faults[0]?.path).toBe('from');
  });

  it('is for those who may: a pilot is refused, a dispatcher plans the week and no more', async () => {
    const pilot = await server.as('pilot');
    expect((await pilot.put(`/api/plans/${randomUUID()}`, ask)).status).toBe(403);
    expect((await pilot.get('/api/plans')).status).toBe(403);
    expect((await server.stranger().get('/api/plans')).status).toBe(401);
    const dispatcher = await server.as('dispatcher');
    const beyond = await dispatcher.put(`/api/plans/${randomUUID()}`, { ...ask, offeredDays: 10 });
    expect(beyond.status).toBe(403);
    const accounts = await server.as('accounts');
    expect((await accounts.get('/api/plans')).status).toBe(200);
    expect((await accounts.put(`/api/plans/${randomUUID()}`, ask)).status).toBe(403);
  });
});

describe('a queue that fails', () => {
  let server: TestServer;
  let manager: Client;
  const workers: ChildProcess[] = [];
  beforeAll(async () => {
    server = await createTestServer();
    manager = await server.as('operations manager');
  });
  afterAll(async () => {
    for (const worker of workers) worker.kill('SIGKILL');
    await server.close();
  });

  it('emptied, is filled again from the database; a worker killed in the middle is replaced, and the run ends once', async () => {
    const id = randomUUID();
    await manager.put(`/api/plans/${id}`, { ...ask, seconds: 8 });
    await server.queues.queue(planQueue).obliterate({ force: true });
    expect(await server.queues.queue(planQueue).getJobCountByTypes('waiting', 'active')).toBe(0);
    await server.app.get(PlanQueueService).sweep();
    expect(await server.queues.queue(planQueue).getJobCountByTypes('waiting', 'active')).toBe(1);

    const worker = spawn(process.execPath, [join(rootFolder, 'apps/server/dist/worker.js')], {
      env: { ...process.env, DATABASE_URL: server.databaseUrl, LOG_LEVEL: 'error' },
      stdio: 'ignore',
    });
    workers.push(worker);
    await until(manager, id, ({ progress }) => typeof progress?.best === 'number');
    worker.kill('SIGKILL');

    server.queues.startWorkers();
    const run = await until(manager, id, isOver);
    expect(run.state).toBe('solved');
    expect(run.attempt).toBe(2);
  }, 120_000);

  it('and does not answer keeps nobody waiting: the plan is in the database and is solved once it answers', async () => {
    const queue = server.queues.queue(planQueue);
    const add = vi.spyOn(queue, 'add').mockReturnValue(new Promise(() => {}));
    const id = randomUUID();
    const asked = await manager.put<Shown>(`/api/plans/${id}`, ask);
    expect([asked.status, asked.body.state]).toEqual([202, 'queued']);
    add.mockRestore();
    await server.app.get(PlanQueueService).sweep();
    expect(await queue.getJob(id)).toBeDefined();
    await manager.post(`/api/plans/${id}/cancel`, undefined);
  }, 60_000);

  it('leaves a worker that was taken for dead no way to overwrite', async () => {
    const id = randomUUID();
    await manager.put(`/api/plans/${id}`, { ...ask, seconds: 2 });
    const first = await until(manager, id, ({ state }) => state === 'solving');
    // Somebody else has taken it up meanwhile.
    await server.database.query('update plan_runs set attempt = attempt + 1 where id = $1', [id]);
    await new Promise((resolve) => setTimeout(resolve, 3_000));
    const run = await read(manager, id);
    expect(run.attempt).toBe(first.attempt + 1);
    expect(run.state).toBe('solving');
    expect(run.outcome).toBeNull();
    const again = await until(manager, id, isOver);
    expect(again.attempt).toBe(first.attempt + 2);
  }, 120_000);
});
