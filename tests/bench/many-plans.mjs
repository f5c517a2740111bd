// Many plans at once through worker processes: node tests/bench/many-plans.mjs [plans=8] [seconds each=10] [workers=1,2,4].
// PostgreSQL is the embedded one, the queue is in a Redis of its own (`apt install redis-server`). Build first:
// npx tsc -b apps/server. Nothing here passes or fails; it prints what it measured, the load of the machine with it.
import { spawn } from 'node:child_process';
import { randomUUID } from 'node:crypto';
import { mkdtemp, readdir, readFile, rm } from 'node:fs/promises';
import { createServer } from 'node:net';
import { cpus, loadavg, tmpdir } from 'node:os';
import { join } from 'node:path';
import { setTimeout as wait } from 'node:timers/promises';
import { fileURLToPath } from 'node:url';
import pg from 'pg';

const dist = new URL('../../apps/server/dist/', import.meta.url);
const { startEmbeddedPostgres } = await import(new URL('embedded-postgres/embedded-postgres.js', dist));
const { createLog } = await import(new URL('log.js', dist));
const { Client } = await import(new URL('testing/client.js', dist));

const [plans = 8, seconds = 10] = process.argv.slice(2, 4).map(Number);
const rounds = (process.argv[4] ?? '1,2,4').split(',').map(Number);
const password = 'a password for benches';
const say = (line) => process.stdout.write(`${line}\n`);

/** Closed in the reverse of the order given, however this ends. */
const closers = [];
const closeAll = async () => {
  for (const close of closers.splice(0).reverse()) await close();
};
const stop = async (child) => {
  if (child.exitCode !== null) return;
  const ended = new Promise((resolve) => child.once('exit', resolve));
  child.kill('SIGTERM');
  await ended;
};

/** A process that has said what it says when it is ready; resolves with the words found. */
const start = (command, args, { env = {}, ready }) =>
  new Promise((resolve, reject) => {
    const child = spawn(command, args, {
      env: { PATH: process.env.PATH, ...env },
      stdio: ['ignore', 'pipe', 'inherit'],
    });
    closers.push(() => stop(child));
    let said = '';
    child.stdout.on('data', (text) => {
      said = (said + text).slice(-20_000);
      const found = ready.exec(said);
      if (found !== null) resolve({ child, found });
    });
    child.once('error', reject);
    child.once('exit', (code) => reject(new Error(`${command} ended with ${code}: ${said}`)));
  });

const program = (name, env, ready) =>
  start(process.execPath, [fileURLToPath(new URL(`${name}.js`, dist))], { env, ready });

const freePort = () =>
  new Promise((resolve) => {
    const server = createServer().listen(0, '127.0.0.1', () => {
      const { port } = server.address();
      server.close(() => resolve(port));
    });
  });

const startRedis = async () => {
  const port = await freePort();
  const args = ['--bind', '127.0.0.1', '--port', String(port), '--save', '', '--appendonly', 'no'];
  await start('redis-server', args, { ready: /Ready to accept connections/ });
  return `redis://127.0.0.1:${port}`;
};

/** Most memory that a process has had in use; Linux only, elsewhere nothing. */
const mostMegabytes = async (pid) => {
  const status = await readFile(`/proc/${pid}/status`, 'utf8').catch(() => '');
  return Number(/VmHWM:\s+(\d+) kB/.exec(status)?.[1] ?? 0) / 1024;
};
const childrenOf = async (pid) => {
  const tasks = await readdir(`/proc/${pid}/task`).catch(() => []);
  const lists = await Promise.all(
    tasks.map((task) => readFile(`/proc/${pid}/task/${task}/children`, 'utf8').catch(() => '')),
  );
  return lists.flatMap((list) => list.split(' ').filter(Boolean));
};

const median = (values) => [...values].sort((a, b) => a - b)[Math.floor(values.length / 2)];
const seconds1 = (value) => `${value.toFixed(1)} s`;

/** All plans are asked for at once; what becomes of them is read from the database ten times a second. */
const measure = async (workers, { databaseUrl, redisUrl }) => {
  const env = {
    DATABASE_URL: databaseUrl,
    REDIS_URL: redisUrl,
    DEMO: 'yes',
    DEMO_PASSWORD: password,
    PORT: '0',
  };
  const api = await program('api', env, /"address":"([^"]+)"/);
  const workersAt = [];
  for (let count = 0; count < workers; count++)
    workersAt.push(await program('worker', env, /The worker runs/));
  const database = new pg.Client({ connectionString: databaseUrl });
  await database.connect();
  closers.push(() => database.end());

  const person = new Client(api.found[1]);
  await person.signIn('operations-manager', password);
  const ids = Array.from({ length: plans }, () => randomUUID());
  const began = performance.now();
  for (const [index, id] of ids.entries()) {
    const { status, body } = await person.put(`/api/plans/${id}`, { seconds, seed: index + 1 });
    if (status !== 202) throw new Error(`a plan was refused: ${JSON.stringify(body)}`);
  }
  const firstFlights = new Map();
  const memory = { worker: 0, solver: 0 };
  const load = [];
  for (let open = plans; open > 0; await wait(100)) {
    const { rows } = await database.query(
      'select id, finished_at is not null as ended, first_plan is not null or outcome is not null as shown from plan_runs',
    );
    const now = (performance.now() - began) / 1000;
    for (const { id, shown } of rows) if (shown && !firstFlights.has(id)) firstFlights.set(id, now);
    open = rows.filter(({ ended }) => !ended).length;
    for (const { child } of workersAt) {
      memory.worker = Math.max(memory.worker, await mostMegabytes(child.pid));
      for (const solver of await childrenOf(child.pid))
        memory.solver = Math.max(memory.solver, await mostMegabytes(solver));
    }
    load.push(loadavg()[0]);
  }
  const all = (performance.now() - began) / 1000;
  const { rows } = await database.query(
    `select state, attempt, (outcome -> 'proof' ->> 'gap')::float8 as gap,
       (outcome -> 'plan' -> 'cost' ->> 'total')::float8 / 100 as cost from plan_runs`,
  );
  await closeAll();
  const first = [...firstFlights.values()];
  const gaps = rows.flatMap(({ gap }) => (gap === null ? [] : [gap]));
  return {
    workers: String(workers),
    'all done': seconds1(all),
    'plans an hour': ((3600 * plans) / all).toFixed(0),
    'first flights, median': seconds1(median(first)),
    'first flights, last': seconds1(Math.max(...first)),
    'gap, mean':
      gaps.length === 0 ? '-' : `${((100 * gaps.reduce((a, b) => a + b, 0)) / gaps.length).toFixed(2)} %`,
    'gap, worst': gaps.length === 0 ? '-' : `${(100 * Math.max(...gaps)).toFixed(2)} %`,
    'worker, most': `${memory.worker.toFixed(0)} MiB`,
    'its solver, most': `${memory.solver.toFixed(0)} MiB`,
    solved: `${rows.filter(({ state }) => state === 'solved').length} of ${plans}`,
    'taken up twice': String(rows.filter(({ attempt }) => attempt > 1).length),
    load: Math.max(...load).toFixed(1),
  };
};

const row = (cells) => `| ${cells.join(' | ')} |`;
const dataDir = await mkdtemp(join(tmpdir(), 'drumline-bench-'));
const postgres = await startEmbeddedPostgres({ dataDir, fsync: true, log: createLog('error') });
try {
  say(
    `${plans} plans of the demo, ${seconds} s each, asked for at once. ${cpus().length} cores (${cpus()[0].model}), ` +
      `load ${loadavg()[0].toFixed(1)} before it, Node ${process.version}.\n`,
  );
  let isFirst = true;
  for (const workers of rounds) {
    const databaseUrl = await postgres.databaseUrl(`plans_${workers}`);
    const measured = await measure(workers, { databaseUrl, redisUrl: await startRedis() });
    if (isFirst) {
      say(row(Object.keys(measured)));
      say(row(Object.keys(measured).map(() => '---:')));
    }
    isFirst = false;
    say(row(Object.values(measured)));
  }
} finally {
  await closeAll();
  await postgres.stop();
  await rm(dataDir, { recursive: true, force: true });
}
