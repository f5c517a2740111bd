// Measures the server under load: node tests/bench/stock.mjs [seconds=300] [requests per second=200] [kinds of request].
// Build first: npx tsc -b apps/server. Nothing here passes or fails; it prints what it measured. With kinds, like
// `event,stock`, only those are sent. CPU_PROFILE=file writes what the server was busy with.
import 'reflect-metadata';
import { fork } from 'node:child_process';
import { randomUUID } from 'node:crypto';
import { mkdtemp, readdir, readFile, rm, writeFile } from 'node:fs/promises';
import { Session } from 'node:inspector/promises';
import { cpus, tmpdir } from 'node:os';
import { join } from 'node:path';
import pg from 'pg';
import { largeLedger, largeTerritory, standingAt } from './large-ledger.mjs';
import { enterWeek, largeWeek } from './large-week.mjs';

const server = '../../apps/server/dist';
const { startEmbeddedPostgres } = await import(`${server}/embedded-postgres/embedded-postgres.js`);
const { openPlatform } = await import(`${server}/open-platform.js`);
const { createApp } = await import(`${server}/create-app.js`);
const { readConfig } = await import(`${server}/config.js`);
const { createLog } = await import(`${server}/log.js`);
const { theProgram } = await import(`${server}/audit/audit.service.js`);
const { PeopleService } = await import(`${server}/people/people.service.js`);
const { personSchema } = await import(`${server}/people/person.schema.js`);
const { ScenariosService } = await import(`${server}/scenarios/scenarios.service.js`);
const { LedgerService } = await import(`${server}/stock/ledger.service.js`);
const { StockCheckService } = await import(`${server}/stock/stock-check.service.js`);

const [seconds = 300, perSecond = 200] = process.argv.slice(2, 4).map(Number);
const kinds = process.argv[4]?.split(',') ?? [];
const password = 'a password for the bench';
const names = Array.from({ length: 20 }, (_, index) => `person-${index + 1}`);
const say = (line) => process.stdout.write(`${line}\n`);
const timed = async (what, work) => {
  const from = performance.now();
  const answer = await work();
  say(`${what}: ${((performance.now() - from) / 1000).toFixed(2)} s`);
  return answer;
};

/** Of all its processes; Linux only, elsewhere 0. */
const postgresCpuMs = async () => {
  try {
    const found = (await readdir(dataDir, { recursive: true })).find((name) =>
      name.endsWith('postmaster.pid'),
    );
    const [parent] = (await readFile(join(dataDir, found), 'utf8')).split('\n');
    const ids = (await readdir('/proc')).filter((name) => /^\d+$/.test(name));
    const stats = await Promise.all(ids.map((id) => readFile(`/proc/${id}/stat`, 'utf8').catch(() => '')));
    const fields = stats.map((stat) => stat.slice(stat.lastIndexOf(')') + 2).split(' '));
    // Those that have ended are counted by their parent.
    const own = fields.flatMap((field, index) => {
      if (field[1] === parent) return [field[11], field[12]];
      return ids[index] === parent ? field.slice(11, 15) : [];
    });
    return own.reduce((sum, ticks) => sum + Number(ticks) * 10, 0);
  } catch {
    return 0;
  }
};

const dataDir = await mkdtemp(join(tmpdir(), 'drumline-bench-'));
const log = createLog('error');
const postgres = await startEmbeddedPostgres({ dataDir, fsync: true, log });
const closers = [() => rm(dataDir, { recursive: true, force: true }), postgres.stop];
process.once('uncaughtException', async (error) => {
  process.stderr.write(`${error.stack}\n`);
  for (const close of closers.reverse()) await close();
  process.exit(1);
});
const databaseUrl = await postgres.databaseUrl('drumline');
const config = readConfig({ DATABASE_URL: databaseUrl, PORT: '0', LOG_LEVEL: 'error' });
const platform = await openPlatform({ config, log, onStop: (close) => closers.push(close) }, databaseUrl);
const app = await createApp(platform);
closers.push(() => app.close());

/** Only where it is asked for: it costs a tenth. */
const profiled = async (file, work) => {
  if (file === undefined) return work();
  const session = new Session();
  session.connect();
  await session.post('Profiler.enable');
  await session.post('Profiler.start');
  const answer = await work();
  const { profile } = await session.post('Profiler.stop');
  await writeFile(file, JSON.stringify(profile));
  return answer;
};

const people = app.get(PeopleService);
const ids = names.map(() => randomUUID());
for (const [index, name] of names.entries()) {
  const person = personSchema.parse({ name, fullName: name, roles: ['dispatcher'] });
  await people.insert(platform.database.manager, { id: ids[index], ...person }, password, false);
}
const seed = JSON.parse(await readFile(new URL('../../seeds/hollowtarn.json', import.meta.url), 'utf8'));
const territory = largeTerritory(seed, 60);
await app.get(ScenariosService).import(territory, false, theProgram);
const places = territory.caches.map(({ place }) => place);
const movements = largeLedger(places, 5000, 20);
await timed(`${movements.length} movements entered and their stock made`, () =>
  platform.database.transaction((transaction) =>
    app.get(LedgerService).open(transaction, movements, theProgram),
  ),
);
const flights = largeWeek(seed, 4);
await enterWeek(platform.database, flights, ids[0]);
const owner = new pg.Client({ connectionString: databaseUrl });
await owner.connect();
await owner.query('vacuum analyze'); // the database does so by itself, but only after a minute
await owner.end();
await app.listen(0, '127.0.0.1');
const url = await app.getUrl();
const sizes = `${places.length} caches, ${movements.length} movements, ${flights.length} flights`;
say(`${cpus().length} cores, ${sizes}, ${perSecond} requests a second for ${seconds} s`);

const cpuBefore = [process.cpuUsage(), await postgresCpuMs()];
const week = { from: '2027-06-14', until: '2027-06-20' };
const load = { url, names, password, seconds, perSecond, kinds, places, drums: standingAt(movements), week };
const { generatorCpuMs, ...measured } = await profiled(
  process.env.CPU_PROFILE,
  () =>
    new Promise((resolve, reject) => {
      const child = fork(new URL('./load.child.mjs', import.meta.url));
      child.on('message', resolve);
      child.on('error', reject);
      child.send(load);
    }),
);
const { user, system } = process.cpuUsage(cpuBefore[0]);
const requests = Object.values(measured.latencyMs).reduce((sum, kind) => sum + kind.requests, 0);
// On a machine that does other work as well, this says more than a latency.
const cpuMsPerRequest = {
  server: (user + system) / 1000 / requests,
  postgres: ((await postgresCpuMs()) - cpuBefore[1]) / requests,
  generator: generatorCpuMs / requests,
};
say(JSON.stringify({ ...measured, cpuMsPerRequest }, null, 2));
const differences = await timed('check of the stock against all movements', () =>
  app.get(StockCheckService).differences(),
);
say(`differences: ${differences.length}`);
for (const close of closers.reverse()) await close();
