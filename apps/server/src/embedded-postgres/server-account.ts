import { readFileSync, statSync } from 'node:fs';
import { dirname } from 'node:path';
import { ConfigError } from '../config.js';

/** The system account that runs the server where the program itself is root: PostgreSQL refuses root. */
export interface ServerAccount {
  readonly name: string;
  readonly uid: number;
  readonly gid: number;
}

/** Null: the server runs as whoever started the program. No account is ever created. */
export const findServerAccount = (): ServerAccount | null => {
  if (process.getuid?.() !== 0) return null;
  const accounts = readFileSync('/etc/passwd', 'utf8')
    .split('\n')
    .map((line) => line.split(':'))
    .map(([name = '', , uid, gid]) => ({ name, uid: Number(uid), gid: Number(gid) }));
  const found = ['postgres', 'nobody'].map((name) => accounts.find((account) => account.name === name));
  const account = found.find((candidate) => candidate !== undefined);
  if (account === undefined) {
    throw new ConfigError(
      'The embedded database does not run as root, and there is no account postgres or nobody. ' +
        'Start the program as another person, or set DATABASE_URL.',
    );
  }
  return account;
};

/** Whether the account may enter every folder down to this path. */
export const isReachable = (path: string, account: ServerAccount): boolean => {
  const entry = statSync(path);
  const bit = entry.uid === account.uid ? 0o100 : entry.gid === account.gid ? 0o010 : 0o001;
  const enters = !entry.isDirectory() || (entry.mode & bit) !== 0;
  const parent = dirname(path);
  return enters && (parent === path || isReachable(parent, account));
};
