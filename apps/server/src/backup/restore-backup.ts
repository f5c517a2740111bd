import { createReadStream } from 'node:fs';
import { pipeline } from 'node:stream/promises';
import { createGunzip } from 'node:zlib';
import pg from 'pg';
import { from as copyFrom } from 'pg-copy-streams';
import { ConfigError } from '../config.js';
import { isKnownMigration, migrate } from '../database/data-source.js';
import { keptTables } from './kept-tables.js';
import { type Manifest, readManifest, tableFile } from './manifest.js';
import { columnsOf } from './write-backup.js';

/**
 * Puts a backup into a database, whole or not at all. What is there already stays, unless `replace` says that it is
 * to go; it goes when the backup is in.
 */
export const restoreBackup = async (
  databaseUrl: string,
  folder: string,
  { replace }: { readonly replace: boolean },
): Promise<Manifest> => {
  const manifest = await readManifest(folder);
  refuseNewer(manifest);
  const client = new pg.Client({ connectionString: databaseUrl, application_name: 'drumline-restore' });
  await client.connect();
  try {
    await refuseInUse(client);
    if (!replace) await refuseFilled(client);
    await setAside(client);
    try {
      await migrate(databaseUrl, manifest.migrations); // the tables as they were when the backup was made
      await load(client, folder, manifest);
      await migrate(databaseUrl);
    } catch (error) {
      await putBack(client);
      throw error;
    }
    await client.query('drop schema public_before_restore cascade');
    await client.query('drop schema if exists bullmq cascade'); // jobs of what was there before
  } finally {
    await client.end();
  }
  return manifest;
};

const refuseNewer = ({ migrations }: Manifest): void => {
  if (migrations.every(isKnownMigration)) return;
  throw new ConfigError(
    'The backup was made by a newer Drumline. Restore it with that version, or a later one.',
  );
};

const refuseInUse = async (client: pg.Client): Promise<void> => {
  const { rowCount } = await client.query(
    `select 1 from pg_stat_activity where datname = current_database() and application_name = 'drumline'`,
  );
  if (rowCount === 0) return;
  throw new ConfigError('Drumline runs on this database. Stop it (API and workers), and restore again.');
};

const refuseFilled = async (client: pg.Client): Promise<void> => {
  for (const { name } of await keptTables(client)) {
    const { rowCount } = await client.query(`select 1 from public.${pg.escapeIdentifier(name)} limit 1`);
    if (rowCount === 0) continue;
    throw new ConfigError(
      `The database is not empty (${name} has lines), and nothing was changed. ` +
        'Restore into a new one, or add --replace: what it holds now is then gone.',
    );
  }
};

const setAside = async (client: pg.Client): Promise<void> => {
  await client.query('alter schema public rename to public_before_restore');
  await client.query('create schema public');
};

const putBack = async (client: pg.Client): Promise<void> => {
  await client.query('rollback');
  await client.query('drop schema public cascade');
  await client.query('alter schema public_before_restore rename to public');
};

const load = async (client: pg.Client, folder: string, { tables }: Manifest): Promise<void> => {
  await client.query('begin');
  for (const table of tables) {
    const name = `public.${pg.escapeIdentifier(table.name)}`;
    await client.query(`alter table ${name} disable trigger user`); // what the triggers wrote is in the backup
    const copy = client.query(copyFrom(`copy ${columnsOf(table)} from stdin`));
    await pipeline(createReadStream(tableFile(folder, table.name)), createGunzip(), copy);
    if (copy.rowCount !== table.rows)
      throw new Error(`${table.name} has ${copy.rowCount} lines, not ${table.rows}`);
    await client.query(`alter table ${name} enable trigger user`);
  }
  await countOn(client);
  await client.query('commit');
};

/** Numbers that the database draws go on after the highest that is there. */
const countOn = async (client: pg.Client): Promise<void> => {
  const { rows } = await client.query<{ table: string; column: string }>(
    `select attrelid::regclass::text as table, attname as column from pg_attribute join pg_class on attrelid = pg_class.oid
     where relnamespace = 'public'::regnamespace and relkind = 'r' and attidentity <> '' and relname <> 'migrations'`,
  );
  for (const { table, column } of rows) {
    const name = pg.escapeIdentifier(column);
    await client.query(
      `select setval(pg_get_serial_sequence($1, $2), coalesce(max(${name}), 0) + 1, false) from ${table}`,
      [table, column],
    );
  }
};
