import { join } from 'node:path';
import { type Config, rootFolder } from '../config.js';
import type { Running } from '../entry.js';
import { startEmbeddedPostgres } from './embedded-postgres.js';
import { findServerAccount, isReachable } from './server-account.js';

/** Starts the database of `npm start` and returns its address. */
export const openEmbeddedDatabase = async ({ config, log, onStop }: Running): Promise<string> => {
  const dataDir = chooseDataDir(config);
  log.info('The embedded database is started.', { dataDir });
  const server = await startEmbeddedPostgres({ dataDir, fsync: true, log });
  onStop(server.stop);
  return server.databaseUrl('drumline');
};

/** In the checkout, unless root keeps that to itself: the database does not run as root. */
export const chooseDataDir = ({ dataDir }: Pick<Config, 'dataDir'>): string => {
  if (dataDir !== undefined) return dataDir;
  const account = findServerAccount();
  const isOpen = account === null || isReachable(rootFolder, account);
  return isOpen ? join(rootFolder, '.drumline') : '/var/lib/drumline';
};
