// Measures the stock ledger under load: node tests/bench/stock.mjs [seconds=300] [requests per second=200].
// Build first: npx tsc -b apps/server. Nothing here passes or fails; it prints what it measured.
import 'reflect-metadata';
import { randomUUID } from 'node:crypto';
import { mkdtemp, readFile, rm } from 'node:fs/promises';
import { cpus, tmpdir } from 'node:os';
import { join } from 'node:path';
import { Worker } from 'node:worker_threads';
import { largeLedger, largeTerritory } from './large-ledger.mjs';

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

const [seconds = 300, perSecond = 200] = process.argv.slice(2).map(Number);
const password = 'a password for the bench';
const names = Array.from({ length: 20 }, (_, index) => `person-${index + 1}`);
const say = (line) => process.stdout.write(`${line}\n`);
const timed = async (what, work) => {
  const from = performance.now();
  const answer = await work();
  say(`${what}: ${((performance.now() - from) / 1000).toFixed(2)} s`);
  return answer;
};

const dataDir = await mkdtemp(join(tmpdir(), 'drumline-bench-'));
const log = createLog('error');
const postgres = await startEmbeddedPostgres({ dataDir, fsync: true, log });
const closers = [() => rm(dataDir, { recursive: true, force: true }), postgres.stop];
process.on('uncaughtException', async (error) => {
  process.stderr.write(`${error.stack}\n`);
  for (const close of closers.reverse()) await close();
  process.exit(1);
});
const databaseUrl = await postgres.databaseUrl('drumline');
const config = readConfig({ DATABASE_URL: databaseUrl, PORT: '0', LOG_LEVEL: 'error' });
const platform = await openPlatform({ config, log, onStop: (close) => closers.push(close) }, databaseUrl);
const app = await createApp(platform);
closers.push(() => app.close());

const people = app.get(PeopleService);
for (const name of names) {
  const person = personSchema.parse({ name, fullName: name, roles: ['helicopter crew'] });
  await people.insert(platform.database.manager, { id: randomUUID(), ...person }, password, false);
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
await platform.database.query('analyze');
await app.listen(0, '127.0.0.1');
const url = await app.getUrl();
say(`${cpus().length} cores, ${places.length} caches, ${perSecond} requests a second for ${seconds} s`);

const drums = movements.filter(({ kind }) => kind === 'filled').map(({ drum }) => drum);
const measured = await new Promise((resolve, reject) => {
  const workerData = { url, names, password, seconds, perSecond, places, drums: [...new Set(drums)] };
  const worker = new Worker(new URL('./load.worker.mjs', import.meta.url), { workerData });
  worker.on('message', resolve);
  worker.on('error', reject);
});
say(JSON.stringify(measured, null, 2));
const differences = await timed('check of the stock against all movements', () =>
  app.get(StockCheckService).differences(),
);
say(`differences: ${differences.length}`);
for (const close of closers.reverse()) await close();
