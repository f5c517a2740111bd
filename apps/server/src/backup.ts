import { existsSync } from 'node:fs';
import { resolve } from 'node:path';
import { parseArgs } from 'node:util';
import { writeBackup } from './backup/write-backup.js';
import { ConfigError } from './config.js';
import { openKeptDatabase } from './embedded-postgres/open-embedded-database.js';
import { type Running, runEntry } from './entry.js';

// npm run backup [folder]: everything the database holds, whether the program runs or not.
const backup = async (running: Running): Promise<void> => {
  const { positionals } = parseArgs({ allowPositionals: true, args: process.argv.slice(2) });
  const stamp = new Date().toISOString().slice(0, 19).replaceAll(':', '');
  const folder = resolve(process.env.INIT_CWD ?? '.', positionals[0] ?? `drumline-backup-${stamp}Z`);
  if (existsSync(folder)) throw new ConfigError(`${folder} is there already: name another folder.`);
  const { config } = running;
  const databaseUrl = config.databaseUrl ?? (await openKeptDatabase(running, 'to back up'));
  const { tables } = await writeBackup(databaseUrl, folder);
  const lines = tables.reduce((sum, { rows }) => sum + rows, 0);
  process.stdout.write(`Backed up to ${folder}: ${tables.length} tables, ${lines} lines.\n`);
};

await runEntry(backup, { once: true });
