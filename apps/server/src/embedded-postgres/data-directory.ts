import { execFile } from 'node:child_process';
import { randomBytes } from 'node:crypto';
import { existsSync, mkdirSync } from 'node:fs';
import { chmod, chown, mkdir, readFile, rename, rm, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { promisify } from 'node:util';
import { ConfigError } from '../config.js';
import { isReachable, type ServerAccount } from './server-account.js';

const run = promisify(execFile);

export const superuser = 'drumline';

/** The environment of PostgreSQL's programs: none of the caller's PG variables. */
export const serverEnvironment = { PATH: process.env.PATH ?? '', LANG: 'C', TZ: 'UTC' };

export const asAccount = (account: ServerAccount | null) =>
  account === null ? {} : { uid: account.uid, gid: account.gid };

/** The data directory, the account that owns the database in it, and the program that is to use it. */
export interface DataDirectory {
  readonly cluster: string;
  readonly serverLog: string;
  readonly password: string;
}

/** Where the files of the database are. */
export const clusterIn = (dataDir: string): string => join(dataDir, 'postgres');

/** Makes the database cluster where there is none yet, and returns its password. */
export const prepareDataDirectory = async (
  dataDir: string,
  account: ServerAccount | null,
  binaries: string,
): Promise<DataDirectory> => {
  const cluster = clusterIn(dataDir);
  const passwordFile = join(dataDir, 'database-password');
  if (!existsSync(cluster)) await makeCluster(cluster, passwordFile, account, binaries);
  const password = await readFile(passwordFile, 'utf8').catch(() => {
    throw new ConfigError(
      `${passwordFile} is missing, so the database in ${cluster} cannot be opened. Put the file back from a backup.`,
    );
  });
  return { cluster, serverLog: join(cluster, 'server.log'), password: password.trim() };
};

/** Makes the folder, open for passing through only. */
export const makeDataDir = async (dataDir: string, account: ServerAccount | null): Promise<void> => {
  mkdirSync(dataDir, { recursive: true });
  await chmod(dataDir, 0o711);
  if (account === null || isReachable(dataDir, account)) return;
  throw new ConfigError(
    `The account ${account.name} runs the embedded database and cannot reach ${dataDir}. ` +
      'Set DATA_DIR to a folder that it can enter, such as /var/lib/drumline.',
  );
};

// Made beside and then renamed: a cluster is either whole or not there.
const makeCluster = async (
  cluster: string,
  passwordFile: string,
  account: ServerAccount | null,
  binaries: string,
): Promise<void> => {
  const unfinished = `${cluster}.unfinished`;
  await rm(unfinished, { recursive: true, force: true });
  await mkdir(unfinished, { recursive: true, mode: 0o700 });
  const password = randomBytes(32).toString('base64url');
  await writeFile(passwordFile, password, { mode: 0o600 });
  // initdb wants an empty folder, so its own copy of the password stands beside it for a moment.
  const handedOver = `${passwordFile}.initdb`;
  await writeFile(handedOver, password, { mode: 0o600 });
  if (account !== null) {
    await chown(unfinished, account.uid, account.gid);
    await chown(handedOver, account.uid, account.gid);
  }
  try {
    await run(
      join(binaries, 'initdb'),
      [
        `--pgdata=${unfinished}`,
        `--username=${superuser}`,
        `--pwfile=${handedOver}`,
        '--auth=scram-sha-256',
        '--encoding=UTF8',
        '--locale=C',
      ],
      { ...asAccount(account), env: serverEnvironment },
    );
  } finally {
    await rm(handedOver, { force: true });
  }
  await rename(unfinished, cluster);
};
