import pg from 'pg';
import { DataSource, type Logger } from 'typeorm';
import { migrations } from './migrations/index.js';
import { SnakeNames } from './snake-names.js';
import { tables } from './tables.js';

/** What the program itself is inside the database: it may append to a ledger, never change it. */
export const appRole = 'drumline_app';

/**
 * Brings the database up to date, then opens it as the lesser role. Several programs may start at once: one
 * migrates, the others wait for it.
 */
export const openDatabase = async (url: string, poolSize = 20): Promise<DataSource> => {
  await migrate(url);
  const source = new DataSource({
    ...common(url),
    entities: [...tables],
    poolSize,
    // Every question is a small one: starting workers or compiling for it would take longer than the answer.
    extra: {
      options: `-c role=${appRole} -c max_parallel_workers_per_gather=0 -c jit=off`,
      application_name: 'drumline',
    },
  });
  return source.initialize();
};

/** Brings the tables up to date, or only as far as these migrations go. */
export const migrate = async (
  url: string,
  upTo: readonly string[] = migrations.map(({ name }) => name),
): Promise<void> => {
  const wanted = migrations.filter(({ name }) => upTo.includes(name));
  const turn = new pg.Client({ connectionString: url });
  await turn.connect();
  try {
    await turn.query('select pg_advisory_lock(872364002)');
    const source = await new DataSource({ ...common(url), migrations: wanted }).initialize();
    await source.runMigrations({ transaction: 'each' }).finally(() => source.destroy());
  } finally {
    await turn.end();
  }
};

export const isKnownMigration = (name: string): boolean =>
  migrations.some((migration) => migration.name === name);

const nothing = (): void => {};
const silent: Logger = {
  logQuery: nothing,
  logQueryError: nothing,
  logQuerySlow: nothing,
  logSchemaBuild: nothing,
  logMigration: nothing,
  log: nothing,
};

const common = (url: string) =>
  ({
    type: 'postgres',
    url,
    driver: pg,
    synchronize: false,
    installExtensions: false,
    namingStrategy: new SnakeNames(),
    connectTimeoutMS: 10_000,
    logger: silent, // what fails is thrown, and logged by whoever catches it
  }) as const;
