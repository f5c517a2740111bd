import { existsSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { parseArgs } from 'node:util';
import { writeBackup } from './backup/write-backup.js';
import { ConfigError } from './config.js';
import {
  chooseDataDir,
  openEmbeddedDatabase,
  runningDatabaseUrl,
} from './embedded-postgres/open-embedded-database.js';
import { type Running, runEntry } from './entry.js';

const openKept = (running: Running): Promise<string> => {
  const dataDir = chooseDataDir(running.config);
  if (existsSync(join(dataDir, 'postgres'))) return openEmbeddedDatabase(running);
  throw new ConfigError(`There is no database in ${dataDir} to back up. Set DATA_DIR or DATABASE_URL.`);
};

// npm run backup [folder]: everything the database holds, whether the program runs or not.
const backup = async (running: Running): Promise<void> => {
  const { positionals } = parseArgs({ allowPositionals: true, args: process.argv.slice(2) });
  const stamp = new Date().toISOString().slice(0, 19).replaceAll(':', '');
  const folder = resolve(process.env.INIT_CWD ?? '.', positionals[0] ?? `drumline-backup-${stamp}Z`);
  if (existsSync(folder)) throw new ConfigError(`${folder} is there already: name another folder.`);
  const { config } = running;
  const databaseUrl = config.databaseUrl ?? (await runningDatabaseUrl(config)) ?? (await openKept(running));
  const { tables } = await writeBackup(databaseUrl, folder);
  const lines = tables.reduce((sum, { rows }) => sum + rows, 0);
  process.stdout.write(`Backed up to ${folder}: ${tables.length} tables, ${lines} lines.\n`);
};

await runEntry(backup, { once: true });
