import 'reflect-metadata';
import { resolve } from 'node:path';
import { parseArgs } from 'node:util';
import { restoreBackup } from './backup/restore-backup.js';
import { ConfigError } from './config.js';
import { openEmbeddedDatabase } from './embedded-postgres/open-embedded-database.js';
import { type Running, runEntry } from './entry.js';

// npm run restore <folder> [-- --replace]: the program has to be stopped.
const restore = async (running: Running): Promise<void> => {
  const { positionals, values } = parseArgs({
    allowPositionals: true,
    options: { replace: { type: 'boolean', default: false } },
  });
  const [named] = positionals;
  if (named === undefined) throw new ConfigError('Name the folder of the backup: npm run restore <folder>.');
  const folder = resolve(process.env.INIT_CWD ?? '.', named);
  const databaseUrl = running.config.databaseUrl ?? (await openEmbeddedDatabase(running));
  const { madeAt, tables } = await restoreBackup(databaseUrl, folder, values);
  process.stdout.write(`Restored ${tables.length} tables as they were at ${madeAt}.\n`);
};

await runEntry(restore, { once: true });
