import { spawn } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { open, readFile } from 'node:fs/promises';
import { createServer } from 'node:net';
import { join } from 'node:path';
import { setTimeout as wait } from 'node:timers/promises';
import { asAccount, type DataDirectory, serverEnvironment } from './data-directory.js';
import type { ServerAccount } from './server-account.js';

/** A server that runs on the cluster: as its own file says. */
export interface RunningServer {
  readonly pid: number;
  readonly port: number;
}

/** The server that runs on this cluster now, whoever started it; null: none. */
export const findRunningServer = async (cluster: string): Promise<RunningServer | null> => {
  const text = await readFile(join(cluster, 'postmaster.pid'), 'utf8').catch(() => '');
  const lines = text.split('\n');
  const pid = Number(lines[0]);
  const port = Number(lines[3]);
  if (!(pid > 0) || !(port > 0) || !isPostgres(pid)) return null;
  return { pid, port };
};

/** After a power cut the number in the file may belong to another program by now. */
const isPostgres = (pid: number): boolean =>
  isAlive(pid) && (process.platform !== 'linux' || processLine(pid).includes('(postgres)'));

export const isAlive = (pid: number): boolean => {
  try {
    process.kill(pid, 0);
  } catch (error) {
    return (error as NodeJS.ErrnoException).code === 'EPERM';
  }
  // In a container nobody may collect a dead process that its parent left behind: it keeps its number.
  return process.platform !== 'linux' || !processLine(pid).includes(') Z ');
};

const processLine = (pid: number): string => {
  try {
    return readFileSync(`/proc/${pid}/stat`, 'utf8');
  } catch {
    return '';
  }
};

/**
 * Starts a server that outlives this program: stopping it is this program's business, and where the program is
 * killed its next start takes the server over. Returns its process number.
 */
export const spawnServer = async (
  binaries: string,
  directory: DataDirectory,
  account: ServerAccount | null,
  port: number,
  fsync: boolean,
): Promise<number> => {
  const log = await open(directory.serverLog, 'a', 0o600);
  const settings = {
    listen_addresses: '127.0.0.1',
    port,
    unix_socket_directories: '',
    max_connections: 100,
    fsync: fsync ? 'on' : 'off',
    synchronous_commit: fsync ? 'on' : 'off',
    full_page_writes: fsync ? 'on' : 'off',
    log_timezone: 'UTC',
    timezone: 'UTC',
  };
  const server = spawn(
    join(binaries, 'postgres'),
    [
      '-D',
      directory.cluster,
      ...Object.entries(settings).flatMap(([name, value]) => ['-c', `${name}=${value}`]),
    ],
    { ...asAccount(account), env: serverEnvironment, detached: true, stdio: ['ignore', log.fd, log.fd] },
  );
  server.on('error', () => {}); // a program that cannot be run is found by its missing pid below
  server.unref();
  await log.close();
  if (server.pid === undefined) throw new Error(`PostgreSQL could not be run from ${binaries}.`);
  return server.pid;
};

/** SIGINT is PostgreSQL's fast stop: open transactions are rolled back, everything committed is on disk. */
export const stopServer = async (pid: number): Promise<void> => {
  if (!isAlive(pid)) return;
  process.kill(pid, 'SIGINT');
  while (isAlive(pid)) await wait(20);
};

/** The last lines of the server's own log, for an error message. */
export const tailOf = async (file: string): Promise<string> => {
  const text = await readFile(file, 'utf8').catch(() => '');
  return text.trimEnd().split('\n').slice(-8).join('\n');
};

export const freePort = (): Promise<number> =>
  new Promise((resolve, reject) => {
    const probe = createServer();
    probe.once('error', reject);
    probe.listen(0, '127.0.0.1', () => {
      const address = probe.address();
      const port = typeof address === 'object' && address !== null ? address.port : 0;
      probe.close(() => resolve(port));
    });
  });
