import { createWriteStream } from 'node:fs';
import { mkdir, rename, rm, writeFile } from 'node:fs/promises';
import { pipeline } from 'node:stream/promises';
import { createGzip } from 'node:zlib';
import pg from 'pg';
import { to as copyTo } from 'pg-copy-streams';
import { type KeptTable, keptTables } from './kept-tables.js';
import { type Manifest, manifestFile, sha256, tableFile } from './manifest.js';

/**
 * Writes everything the database holds at one moment into a new folder, while the program may go on. The folder has
 * its name only once it is whole.
 */
export const writeBackup = async (databaseUrl: string, folder: string): Promise<Manifest> => {
  const unfinished = `${folder}.unfinished`;
  await rm(unfinished, { recursive: true, force: true });
  await mkdir(unfinished, { recursive: true, mode: 0o700 });
  const manifest = await atOneMoment(databaseUrl, async (client) => ({
    format: 'drumline-backup/1' as const,
    madeAt: new Date().toISOString(),
    migrations: await migrationsOf(client),
    tables: await writeTables(client, unfinished),
  }));
  await writeFile(manifestFile(unfinished), JSON.stringify(manifest, null, 2), { mode: 0o600 });
  await rename(unfinished, folder);
  return manifest;
};

const atOneMoment = async <T>(databaseUrl: string, read: (client: pg.Client) => Promise<T>): Promise<T> => {
  const client = new pg.Client({ connectionString: databaseUrl, application_name: 'drumline-backup' });
  await client.connect();
  try {
    await client.query('begin isolation level repeatable read read only');
    return await read(client);
  } finally {
    await client.end();
  }
};

const migrationsOf = async (client: pg.Client): Promise<string[]> => {
  const { rows } = await client.query<{ name: string }>('select name from public.migrations order by id');
  return rows.map(({ name }) => name);
};

const writeTables = async (client: pg.Client, folder: string): Promise<Manifest['tables']> => {
  const written: Manifest['tables'] = [];
  for (const table of await keptTables(client)) {
    const file = tableFile(folder, table.name);
    const copy = client.query(copyTo(`copy ${columnsOf(table)} to stdout`));
    await pipeline(copy, createGzip(), createWriteStream(file, { mode: 0o600 }));
    written.push({
      name: table.name,
      columns: [...table.columns],
      rows: copy.rowCount,
      sha256: await sha256(file),
    });
  }
  return written;
};

export const columnsOf = ({ name, columns }: KeptTable): string =>
  `public.${pg.escapeIdentifier(name)} (${columns.map((column) => pg.escapeIdentifier(column)).join(', ')})`;
