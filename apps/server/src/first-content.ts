import { randomBytes } from 'node:crypto';
import { existsSync } from 'node:fs';
import { mkdir, readFile, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import type { INestApplicationContext } from '@nestjs/common';
import { theProgram } from './audit/audit.service.js';
import { DemoService } from './demo/demo.service.js';
import { chooseDataDir } from './embedded-postgres/open-embedded-database.js';
import { demoPeople, makeAdministrator, makeDemoAccounts } from './people/first-accounts.js';
import { PeopleService } from './people/people.service.js';
import type { Platform } from './platform.module.js';
import { StockService } from './stock/stock.service.js';

/** What an empty database gets: its first account, or the demo's accounts and territory. */
export const fillFirst = (app: INestApplicationContext, platform: Platform): Promise<void> =>
  platform.database.transaction(async (turn) => {
    await turn.query('select pg_advisory_xact_lock(872364004)'); // two programs may start on one new database
    await fill(app, platform);
  });

const fill = async (app: INestApplicationContext, platform: Platform): Promise<void> => {
  const { config } = platform;
  const people = app.get(PeopleService);
  const isEmpty = await people.isEmpty();
  if (!config.demo) {
    if (!isEmpty) return;
    const password = await makeAdministrator(people, platform.database);
    print(
      'This is a new installation. Sign in as administrator with the one-time password',
      password,
      'It is shown this once, and you choose your own when you sign in.',
    );
    return;
  }
  const password = config.demoPassword ?? (await demoPassword(chooseDataDir(config)));
  if (isEmpty) await makeDemoAccounts(people, platform.database, password);
  if (await app.get(StockService).isEmpty()) {
    await app.get(DemoService).load(theProgram);
  }
  print(
    `Demo accounts, all with the password ${password}`,
    ...demoPeople.map(([name, role]) => `  ${name.padEnd(20)} ${role}`),
  );
};

/** Drawn once for an installation, and readable to whoever started it. */
const demoPassword = async (dataDir: string): Promise<string> => {
  const file = join(dataDir, 'demo-password');
  if (existsSync(file)) return (await readFile(file, 'utf8')).trim();
  const password = randomBytes(9).toString('base64url');
  await mkdir(dataDir, { recursive: true });
  await writeFile(file, password, { mode: 0o600 });
  return password;
};

// To the terminal, not to the log: a log is kept and sent about, and these are passwords.
const print = (...lines: readonly string[]): void => {
  process.stderr.write(`\n${lines.join('\n')}\n\n`);
};
